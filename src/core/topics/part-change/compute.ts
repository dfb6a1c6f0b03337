import { isOver, isUnder } from '../../thresholds/index.ts';
import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { failure, gamma, meanLife, meanRemainingLife, survival, type Life } from '../../chance/index.ts';
import type { Result, Value, VerdictValue } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { ageToChange, costOfChangingNow, costOfLeaving, costOfMending, wearToReplace } from './costs.ts';
import { fields } from './fields.ts';
import {
  changeNow,
  leave,
  mendFailed,
  newLasts,
  oldLasts,
  reopening,
  replaceFailed,
  scaleFromMean,
} from './formulas.ts';

type PartInputs = InputsOf<typeof fields>;

const cent = (x: number) => Math.round(x * 100) / 100;

export const compute = guarded(fields, (inputs): Result => {
  const working: WorkingStep[] = [];
  const life = readLife(inputs, working);
  const reopen = (inputs.reopenMinutes / 60) * inputs.labourRate + inputs.stopCost;
  working.push(step(reopening, { k: inputs.reopenMinutes, w: inputs.labourRate, s: inputs.stopCost }, reopen));
  const values = [
    ...neighbour(inputs, life, reopen, working),
    ...(inputs.mend ? mendOrReplace(inputs, life, reopen, working) : []),
    ...shapeNote(life),
    ...horizonNote(life, inputs.horizon),
  ];
  return { ok: true, values, working, cautions: [{ hazard: 'unexpected-start', level: 'danger' }] };
});

function readLife(inputs: PartInputs, working: WorkingStep[]): Life {
  const b = inputs.shape;
  if (inputs.lifeAs === 'scale') return { shape: b, scale: inputs.scale ?? 1 };
  const m = inputs.mean ?? 1;
  const eta = m / gamma(1 + 1 / b);
  working.push(step(scaleFromMean, { m, b }, eta));
  return { shape: b, scale: eta };
}

function neighbour(inputs: PartInputs, life: Life, reopen: number, working: WorkingStep[]): Value[] {
  const { partCost: c, age: T, horizon: H } = inputs;
  const { shape: b, scale: eta } = life;
  const [fresh, worn] = [survival(life, H), survival(life, H, T)];
  const now = costOfChangingNow(c, reopen, life, H);
  const later = costOfLeaving(c, reopen, life, H, T);
  working.push(
    step(newLasts, { H, eta, b }, fresh),
    step(oldLasts, { T, H, eta, b }, worn),
    step(changeNow, { c, S_n: fresh, o: reopen }, now),
    step(leave, { S_o: worn, c, o: reopen }, later),
  );
  const verdict: VerdictValue = {
    kind: 'verdict',
    key: 'verdict',
    label: 'While it is open',
    code: isOver(later, now) ? 'change-now' : 'leave-it',
    level: isOver(later, now) ? 'caution' : 'good',
    data: { between: cent(Math.abs(later - now)) },
    main: true,
  };
  const share = (key: string, label: string, value: number): Value => ({
    kind: 'quantity',
    key,
    label,
    value,
    units: ['%', '%'],
    decimals: [0, 0],
  });
  const flip = ageToChange(c, reopen, life, H);
  return [
    verdict,
    {
      kind: 'money',
      key: 'costNow',
      label: 'Changing it now costs',
      value: cent(now),
      main: true,
      note: 'With the chance that the new one fails too.',
    },
    {
      kind: 'money',
      key: 'costLeave',
      label: 'Leaving it costs',
      value: cent(later),
      main: true,
      note: 'The chance of opening the machine again, times what that costs.',
    },
    share('oldFails', 'Chance that it fails before then', failure(life, H, T)),
    share('newFails', 'Chance that a new one fails before then', failure(life, H)),
    {
      kind: 'quantity',
      key: 'remaining',
      label: 'Mean life still in it',
      value: meanRemainingLife(life, T),
      units: ['h', 'h'],
      decimals: [0, 0],
    },
    ...(flip === undefined
      ? [
          {
            kind: 'verdict',
            key: 'ageToChange',
            label: 'Age from which changing pays',
            code: 'no-age-pays',
            level: 'note',
          } as const,
        ]
      : [
          {
            kind: 'quantity',
            key: 'ageToChange',
            label: 'Age from which changing pays',
            value: flip,
            units: ['h', 'h'],
            decimals: [0, 0],
          } as const,
        ]),
    ageTable(c, reopen, life, H, now),
  ];
}

/** Both costs at ages in steps of a quarter of the scale: what a drawing needs. */
function ageTable(c: number, reopen: number, life: Life, H: number, now: number): Value {
  const ages = Array.from({ length: 9 }, (_, k) => (k / 4) * life.scale);
  return {
    kind: 'table',
    key: 'ageTable',
    label: 'Both costs against the age of the part',
    columns: [
      { key: 'age', label: 'Hours run', units: ['h', 'h'], decimals: 0 },
      { key: 'leave', label: 'Leave it', money: true },
      { key: 'now', label: 'Change it now', money: true },
    ],
    rows: ages.map((age) => [age, cent(costOfLeaving(c, reopen, life, H, age)), cent(now)]),
  };
}

function mendOrReplace(inputs: PartInputs, life: Life, reopen: number, working: WorkingStep[]): Value[] {
  const [c_r, c_f, p, H] = [inputs.replaceCost ?? 0, inputs.mendCost ?? 0, inputs.mendWear ?? 1, inputs.horizon];
  const replaced = costOfChangingNow(c_r, reopen, life, H);
  const mended = costOfMending(c_f, c_r, reopen, life, H, p);
  working.push(
    step(replaceFailed, { c_r, S_n: survival(life, H), o: reopen }, replaced),
    step(mendFailed, { c_f, p, H, eta: life.scale, b: life.shape, c_r, o: reopen }, mended),
  );
  const flip = wearToReplace(c_f, c_r, reopen, life, H);
  return [
    {
      kind: 'verdict',
      key: 'mendVerdict',
      label: 'Mend or replace',
      code: isOver(replaced, mended) ? 'mend-it' : 'replace-it',
      level: 'note',
      data: { between: cent(Math.abs(replaced - mended)) },
      main: true,
    },
    { kind: 'money', key: 'costReplace', label: 'Replacing costs', value: cent(replaced) },
    { kind: 'money', key: 'costMend', label: 'Mending costs', value: cent(mended) },
    ...(flip === undefined
      ? []
      : [
          {
            kind: 'number',
            key: 'wearToReplace',
            label: 'Replace if it would wear this many times as fast',
            value: flip,
            decimals: 2,
          } as const,
        ]),
  ];
}

/** The sum counts one failure at most: past the mean life of a new part it counts too few. */
function horizonNote(life: Life, horizon: number): Value[] {
  if (!isOver(horizon, meanLife(life))) return [];
  return [
    {
      kind: 'verdict',
      key: 'horizonNote',
      label: 'How far it looks',
      code: 'looks-too-far',
      level: 'note',
      data: { lives: Math.round((horizon / meanLife(life)) * 10) / 10 },
    },
  ];
}

function shapeNote(life: Life): Value[] {
  if (isOver(life.shape, 1)) return [];
  return [
    {
      kind: 'verdict',
      key: 'shapeNote',
      label: 'Wear',
      code: isUnder(life.shape, 1) ? 'fails-early' : 'fails-by-chance',
      level: 'note',
    },
  ];
}
