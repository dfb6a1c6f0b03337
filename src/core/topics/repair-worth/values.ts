/** What the page shows of the comparison: both yearly costs, what would flip the answer, how sure it is, the rules of thumb. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { TableValue, Value, VerdictValue } from '../../contract/result.ts';
import { roundMoney } from '../../money/index.ts';
import { isOver } from '../../thresholds/index.ts';
import {
  comebackTime,
  comebackToFlip,
  mostWorthPaying,
  newPriceToFlip,
  newYearly,
  pays,
  repairYearly,
  serviceToFlip,
  type Comparison,
} from './comparison.ts';
import { comebackFlip, halfRule, perHour, threeQuarterRule } from './formulas.ts';
import type { WorthInputs } from './read-quote.ts';
import { simulate } from './simulate.ts';

/** Values with the lines of working they add. */
export interface Shown {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

/** Yearly cost of both ways and of a cutting hour [currency]. */
export function yearly(c: Comparison, inputs: WorthInputs): Shown {
  // The verdict counts the chance of a worn engine; these figures do not, and would seem to contradict it.
  const sound = inputs.engine === 'unknown' ? { note: 'With a sound engine.' } : {};
  const [repaired, replaced, H] = [repairYearly(c), newYearly(c), inputs.hoursPerYear];
  const steps = [step(perHour, { C: repaired, H }, repaired / H), step(perHour, { C: replaced, H }, replaced / H)];
  const values: Value[] = [
    {
      kind: 'money',
      key: 'repairYearly',
      label: 'Repair and keep, a year',
      value: roundMoney(repaired),
      main: true,
      ...sound,
    },
    { kind: 'money', key: 'newYearly', label: 'Buy new, a year', value: roundMoney(replaced), main: true },
    {
      kind: 'money',
      key: 'repairHour',
      label: 'Repair and keep, a cutting hour',
      value: roundMoney(repaired / H),
      ...sound,
    },
    { kind: 'money', key: 'newHour', label: 'Buy new, a cutting hour', value: roundMoney(replaced / H) },
  ];
  return { values, steps };
}

/** Where the answer would turn: service, price of new, chance of a comeback. */
export function flips(c: Comparison, inputs: WorthInputs): Shown {
  const most = mostWorthPaying(c);
  const service = serviceToFlip(c);
  const price = newPriceToFlip(c, inputs.newPrice);
  const comebacks = comebackToFlip(c);
  const t = comebackTime(c.service);
  const steps =
    comebacks === undefined
      ? []
      : [
          step(
            comebackFlip,
            { p: c.comebackChance, Q_m: most, Q: c.repair, r: c.rate, t, C_c: c.comebackCost },
            comebacks,
          ),
        ];
  const values: Value[] = [
    ...(service === undefined
      ? [
          {
            kind: 'verdict',
            key: 'crossing',
            label: 'Years of service at which both cost the same',
            code: pays(c) ? 'repair-at-any-service' : 'new-at-any-service',
            level: 'note',
          } as const,
        ]
      : [
          {
            kind: 'number',
            key: 'crossing',
            label: 'Years of service at which both cost the same',
            value: service,
            decimals: 1,
          } as const,
        ]),
    ...(price === undefined
      ? []
      : [
          {
            kind: 'money',
            key: 'newPriceToFlip',
            label: 'New price at which both cost the same',
            value: roundMoney(price),
          } as const,
        ]),
    ...(comebacks === undefined || comebacks < 0 || comebacks > 1
      ? []
      : [
          {
            kind: 'quantity',
            key: 'comebackToFlip',
            label: 'Chance of a comeback at which both cost the same',
            value: comebacks,
            units: ['%', '%'],
            decimals: [0, 0],
          } as const,
        ]),
    flipTable(c, inputs.newPrice),
  ];
  return { values, steps };
}

/** @param worn chance that the engine is worn out [1]; 0 where it is known to be good or renewed */
export function chance(c: Comparison, inputs: WorthInputs, worn: number): Value[] {
  const doubt = {
    repair: inputs.spreadQuote,
    service: inputs.spreadService,
    newFirst: inputs.spreadPrice,
    newLife: inputs.spreadLife,
    worn,
  };
  const drawn = simulate(c, doubt, inputs.draws, inputs.seed);
  const reach = 2 * drawn.error;
  return [
    {
      kind: 'quantity',
      key: 'chance',
      label: 'Chance that repair is cheaper',
      value: drawn.chance,
      low: Math.max(0, drawn.chance - reach),
      high: Math.min(1, drawn.chance + reach),
      units: ['%', '%'],
      decimals: [0, 0],
      source: 'park-miller-generator',
      note: `From ${inputs.draws} draws over the ranges given${worn > 0 ? ', the chance of a worn engine among them' : ''}. The range is the sampling error.`,
    },
    {
      kind: 'money',
      key: 'savingDrawn',
      label: 'Saved a year by repairing, middle of the draws',
      value: roundMoney(drawn.saving.middle),
      low: roundMoney(drawn.saving.low),
      high: roundMoney(drawn.saving.high),
      note: 'One draw in ten lies below the range and one in ten above it.',
    },
    {
      kind: 'money',
      key: 'repairYearlyDrawn',
      label: 'Repair and keep, a year, over many such repairs',
      value: roundMoney(drawn.repairYearly),
      note: 'All the money over all the service: a short life costs more but also ends sooner.',
    },
  ];
}

/** Rules of thumb beside the answer: share of the new price and, with a working value, of that [1]. */
export function rulesOfThumb(inputs: WorthInputs, total: number): Shown {
  const half = total / inputs.newPrice;
  const halfStep = step(halfRule, { Q_t: total, P: inputs.newPrice }, half);
  const rule = (key: string, label: string, share: number, limit: number, source: string): VerdictValue => ({
    kind: 'verdict',
    key,
    label,
    code: isOver(share, limit) ? 'rule-against' : 'rule-for',
    level: 'note',
    source,
    data: { share: Math.round(share * 100), limit: Math.round(limit * 100) },
  });
  const rules: Value[] = [
    rule('halfRule', 'Rule of thumb, not the answer: half the price of new', half, 0.5, 'fifty-percent-rule'),
  ];
  if (inputs.workingValue === undefined) return { values: rules, steps: [halfStep] };
  const worth = total / inputs.workingValue;
  const label = 'Rule of thumb, not the answer: three quarters of its worth in working order';
  return {
    values: [...rules, rule('threeQuarterRule', label, worth, 0.75, 'three-quarter-rule')],
    steps: [halfStep, step(threeQuarterRule, { Q_t: total, V_w: inputs.workingValue }, worth)],
  };
}

/** Difference of two yearly costs as they are shown, so that every table says the same of it. */
function saved(replaced: number, repaired: number): number {
  return roundMoney(roundMoney(replaced) - roundMoney(repaired));
}

/** Service years shown: whole years to twice the service given, at least 6 and at most 15, the given one among them. */
export function serviceSteps(service: number): number[] {
  const last = Math.min(15, Math.max(6, Math.ceil(2 * service)));
  const whole = Array.from({ length: last }, (_, k) => k + 1);
  return [...new Set([...whole, Number(service.toFixed(2))])].sort((a, b) => a - b);
}

/** Yearly cost of both ways over years of service [currency], as a table. */
export function serviceTable(c: Comparison): TableValue {
  const replaced = newYearly(c);
  return {
    kind: 'table',
    key: 'serviceTable',
    label: 'Yearly cost against years of service after the repair',
    columns: [
      { key: 'years', label: 'Years of service' },
      { key: 'repair', label: 'Repair, a year', money: true },
      { key: 'new', label: 'New, a year', money: true },
      { key: 'saved', label: 'Saved by repairing, a year', money: true },
    ],
    rows: serviceSteps(c.service).map((years) => {
      const repaired = repairYearly({ ...c, service: years });
      return [years, roundMoney(repaired), roundMoney(replaced), saved(replaced, repaired)];
    }),
  };
}

const serviceShares = [0.5, 0.75, 1, 1.5, 2];
const priceShares = [0.8, 0.9, 1, 1.1, 1.2];

/** Saved by repairing [currency a year] over service (down) and new price (across); below zero, new is cheaper. */
export function flipTable(c: Comparison, price: number): TableValue {
  return {
    kind: 'table',
    key: 'flipTable',
    label: 'What would flip the answer: saved a year by repairing (below zero, new is cheaper)',
    columns: [
      { key: 'years', label: 'Years of service', decimals: 1 },
      ...priceShares.map((s) => ({
        key: `price${Math.round(s * 100)}`,
        label:
          s === 1 ? 'At the new price given' : `New price ${s < 1 ? '−' : '+'}${Math.round(Math.abs(s - 1) * 100)} %`,
        money: true,
      })),
    ],
    rows: serviceShares.map((share) => {
      const at = { ...c, service: c.service * share };
      return [
        Number(at.service.toFixed(2)),
        ...priceShares.map((s) =>
          saved(newYearly({ ...at, newFirst: c.newFirst + (s - 1) * price }), repairYearly(at)),
        ),
      ];
    }),
  };
}
