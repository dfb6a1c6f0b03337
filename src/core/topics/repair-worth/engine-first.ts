/** Engine before money: is a look into the cylinder worth its minutes before drive parts are ordered? */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value, VerdictValue } from '../../contract/result.ts';
import { roundMoney } from '../../money/index.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { mostWorthPaying, type Comparison } from './comparison.ts';
import { engineCheckValue, type EngineCheck } from './inspection.ts';
import { blindGain, blindLimit, condemnedGain, lookCost, lookWorth, passedGain } from './formulas.ts';
import type { WorthInputs } from './read-quote.ts';

/** The chance of a worn engine is a guess: a look worth within this share of its cost is neither asked for nor ruled out. Our choice. */
export const lookBand = 0.25;

export interface EngineLook {
  /** Chance that the engine is worn out [1]. */
  readonly worn: number;
  /** What the look costs, and what it is worth [currency]. */
  readonly fee: number;
  readonly worth: number;
  readonly perfect: number;
  readonly pays: 'yes' | 'about' | 'no' | 'nothing';
  /** Most worth paying without looking [currency]; 0 or less when no repair is. */
  readonly blindLimit: number;
  readonly steps: readonly WorkingStep[];
}

/** The look into an engine nobody has checked; undefined when it is known to be good or this repair renews it. */
export function engineLook(inputs: WorthInputs, c: Comparison): EngineLook | undefined {
  if (inputs.engine !== 'unknown') return undefined;
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
  return {
    worn: check.worn,
    fee,
    worth: value.worth,
    perfect: value.perfect,
    pays: paysOf(value.worth, fee, Math.abs(most) + c.repair),
    blindLimit: blind,
    steps: [
      step(blindLimit, { w: check.worn, Q_m: most }, blind),
      step(blindGain, put, value.blind),
      step(passedGain, told, value.ifSound),
      step(condemnedGain, told, value.ifWorn),
      step(lookWorth, { U_s: value.ifSound, U_w: value.ifWorn, U: value.blind }, value.worth),
      step(lookCost, { m: minutes, w: inputs.labourRate }, fee),
    ],
  };
}

/** @param scale the amounts the worth is a difference of [currency]: less than a billionth of them is nothing */
function paysOf(worth: number, fee: number, scale: number): EngineLook['pays'] {
  if (!isOver(worth, 1e-9 * scale)) return 'nothing';
  if (isOver(worth, (1 + lookBand) * fee)) return 'yes';
  return isUnder(worth, (1 - lookBand) * fee) ? 'no' : 'about';
}

const codes = {
  yes: 'look-first',
  about: 'look-about-even',
  no: 'look-costs-more',
  nothing: 'look-changes-nothing',
} as const;

/** Whether to look into the engine first: verdict, worth and cost of the look [currency]. */
export function engineValues(inputs: WorthInputs, look: EngineLook | undefined): Value[] {
  const verdict = (code: string, level: VerdictValue['level'], data: VerdictValue['data'] = {}): Value => ({
    kind: 'verdict',
    key: 'engineFirst',
    label: 'Engine first',
    code,
    level,
    main: true,
    data,
  });
  if (!look) return [inputs.engine === 'good' ? verdict('engine-checked', 'good') : verdict('engine-renewed', 'note')];
  return [
    verdict(codes[look.pays], look.pays === 'yes' ? 'caution' : 'note', {
      worth: roundMoney(look.worth),
      fee: roundMoney(look.fee),
      minutes: inputs.inspectionMinutes ?? 0,
    }),
    {
      kind: 'money',
      key: 'mostWorthUnchecked',
      label: 'Most worth paying while the engine has not been looked at',
      value: roundMoney(Math.max(0, look.blindLimit)),
    },
    {
      kind: 'money',
      key: 'lookWorth',
      label: 'What looking first is worth',
      value: roundMoney(look.worth),
      note: 'What a wrong order costs on average, less what it costs after a look that may itself be wrong.',
    },
    { kind: 'money', key: 'lookCost', label: 'What the look costs', value: roundMoney(look.fee) },
    {
      kind: 'money',
      key: 'knowingWorth',
      label: 'What knowing for certain would be worth',
      value: roundMoney(look.perfect),
    },
  ];
}
