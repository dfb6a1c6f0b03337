import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { ageToChange, costOfChangingNow, costOfLeaving, costOfMending, wearToReplace } from './costs.ts';

const money = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'money', min: 0, max: 1e9 }) as const;
const hours = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'time', units: ['h', 'h'], min: 0 }) as const;
const common = [
  { ...money('part', 'Part'), above: true },
  money('reopen', 'Opening the machine again'),
  { key: 'shape', label: 'Weibull shape', kind: 'number', default: 2, min: 0.1, max: 20 },
  { ...hours('scale', 'Hours by which 63 % have failed'), above: true },
  { ...hours('horizon', 'Hours it must last'), above: true },
] as const;

export const blocks = {
  'healthy-part': block({
    what: 'change a healthy part while the machine is open, or leave it',
    source: 'hasidi-kalech-2021',
    fields: defineFields([...common, hours('age', 'Hours it has run')]),
    gives: {
      now: { label: 'Changing it now' },
      leave: { label: 'Leaving it' },
      changeFrom: { label: 'Age from which changing pays', units: ['h', 'h'] },
    },
    run: (i) => {
      const life = { shape: i.shape, scale: i.scale };
      const from = ageToChange(i.part, i.reopen, life, i.horizon);
      return {
        now: costOfChangingNow(i.part, i.reopen, life, i.horizon),
        leave: costOfLeaving(i.part, i.reopen, life, i.horizon, i.age),
        ...(from === undefined ? {} : { changeFrom: from }),
      };
    },
  }),
  'mend-or-replace': block({
    what: 'mend a failed part or replace it',
    source: 'hasidi-kalech-2021',
    fields: defineFields([
      ...common,
      money('mend', 'Mending'),
      { key: 'wear', label: 'Wears this many times as fast', kind: 'number', min: 0, above: true, max: 1000 },
    ]),
    gives: {
      replace: { label: 'Replacing' },
      mend: { label: 'Mending' },
      wearToReplace: { label: 'Wear at which both are equal' },
    },
    run: (i) => {
      const life = { shape: i.shape, scale: i.scale };
      const flip = wearToReplace(i.mend, i.part, i.reopen, life, i.horizon);
      return {
        replace: costOfChangingNow(i.part, i.reopen, life, i.horizon),
        mend: costOfMending(i.mend, i.part, i.reopen, life, i.horizon, i.wear),
        ...(flip === undefined ? {} : { wearToReplace: flip }),
      };
    },
  }),
};
