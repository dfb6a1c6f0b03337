/** Engine before money: is a look into the cylinder worth its minutes before drive parts are ordered? */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import { mostWorthPaying, type Comparison } from './comparison.ts';
import { blindGain, blindLimit, condemnedGain, lookCost, lookWorth, passedGain } from './formulas.ts';
import { engineCheckValue, type EngineCheck } from './inspection.ts';
import { roundMoney } from '../../money/index.ts';
import type { WorthInputs } from './read-quote.ts';

export function gate(inputs: WorthInputs, c: Comparison, working: WorkingStep[]): Value[] {
  const verdict = (code: string, level: 'good' | 'note' | 'caution', data: Record<string, number> = {}): Value => ({
    kind: 'verdict',
    key: 'engineFirst',
    label: 'Engine first',
    code,
    level,
    main: true,
    data,
  });
  if (inputs.engineChecked) return [verdict('engine-checked', 'good')];
  const most = mostWorthPaying(c);
  const check: EngineCheck = {
    worn: inputs.chanceWorn ?? 0,
    gain: most - c.repair,
    wasted: c.repair,
    finds: inputs.inspectionFinds ?? 1,
    falseAlarm: inputs.inspectionFalse ?? 0,
  };
  const minutes = inputs.inspectionMinutes ?? 0;
  const fee = (minutes / 60) * inputs.labourRate;
  const value = engineCheckValue(check);
  const put = { w: check.worn, B: check.gain, Q: check.wasted };
  const told = { ...put, f: check.falseAlarm, d: check.finds };
  const blind = (1 - check.worn) * most;
  working.push(
    step(blindLimit, { w: check.worn, Q_m: most }, blind),
    step(blindGain, put, value.blind),
    step(passedGain, told, value.ifSound),
    step(condemnedGain, told, value.ifWorn),
    step(lookWorth, { U_s: value.ifSound, U_w: value.ifWorn, U: value.blind }, value.worth),
    step(lookCost, { m: minutes, w: inputs.labourRate }, fee),
  );
  const pays = value.worth > fee;
  return [
    verdict(
      pays ? 'look-first' : value.worth < 0.005 ? 'look-changes-nothing' : 'look-costs-more',
      pays ? 'caution' : 'note',
      { worth: roundMoney(value.worth), fee: roundMoney(fee), minutes },
    ),
    {
      kind: 'money',
      key: 'mostWorthUnchecked',
      label: 'Most worth paying while the engine has not been looked at',
      value: roundMoney(Math.max(0, blind)),
    },
    {
      kind: 'money',
      key: 'lookWorth',
      label: 'What looking first is worth',
      value: roundMoney(value.worth),
      note: 'What a wrong order costs on average, less what it costs after a look that may itself be wrong.',
    },
    { kind: 'money', key: 'lookCost', label: 'What the look costs', value: roundMoney(fee) },
    {
      kind: 'money',
      key: 'knowingWorth',
      label: 'What knowing for certain would be worth',
      value: roundMoney(value.perfect),
    },
  ];
}
