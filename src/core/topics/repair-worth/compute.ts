import { step, type WorkingStep } from '../../contract/formula.ts';
import {
  refuse,
  type Caution,
  type Problem,
  type Result,
  type Value,
  type VerdictValue,
} from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import {
  comebackTime,
  comebackToFlip,
  mostWorthPaying,
  newYearly,
  repairYearly,
  type Comparison,
} from './comparison.ts';
import { newPriceToFlip, serviceToFlip } from './crossing.ts';
import { fields } from './fields.ts';
import { comebackFlip, halfRule, perHour, threeQuarterRule } from './formulas.ts';
import { gate } from './gate.ts';
import { roundMoney } from '../../money/index.ts';
import { comparisonWorking, readComparison } from './read-comparison.ts';
import { readQuote, type WorthInputs } from './read-quote.ts';
import { simulate } from './simulate.ts';
import { flipTable, serviceTable } from './table-values.ts';

/** Closer than this to the limit, and the figures can't tell repair from new. Our choice. */
const close = 0.1;

export const compute = guarded(fields, (inputs): Result => {
  const problems = marginProblems(inputs);
  if (problems.length > 0) return { ok: false, problems };
  const working: WorkingStep[] = [];
  const quote = readQuote(inputs, working);
  if (inputs.quoteAs === 'lines' && quote.total === 0) return refuse('lines', 'empty-quote');
  const c = readComparison(inputs, quote.toPay, working);
  working.push(...comparisonWorking(c, inputs));
  const most = mostWorthPaying(c);
  const values: Value[] = [
    {
      kind: 'money',
      key: 'mostWorth',
      label: 'Most worth paying for this repair',
      value: roundMoney(Math.max(0, most)),
      main: true,
    },
    ...gate(inputs, c, working),
    stand(c, most, inputs.engineChecked ? 0 : (inputs.chanceWorn ?? 0)),
    ...quote.values,
    ...yearly(c, inputs, working),
    serviceTable(c),
    ...flips(c, inputs, most, working),
    ...chance(c, inputs),
    ...rulesOfThumb(inputs, quote.total, working),
    ...(inputs.alreadySpent > 0
      ? [
          {
            kind: 'verdict',
            key: 'spent',
            label: 'Money already spent',
            code: 'already-spent',
            level: 'note',
            data: { spent: inputs.alreadySpent },
            main: true,
          } as const,
        ]
      : []),
  ];
  return { ok: true, values, working, cautions: cautions(inputs) };
});

/** Markup may be any share of the cost; margin is a share of the price and can't reach it. */
function marginProblems(inputs: WorthInputs): Problem[] {
  return (inputs.lines ?? []).flatMap((line, k) =>
    line.basis === 'margin' && line.share >= 1
      ? [
          {
            field: `lines.${k + 1}.share`,
            code: 'margin-too-large',
            data: { got: Number((line.share * 100).toPrecision(6)) },
          },
        ]
      : [],
  );
}

/** @param worn chance that the engine is worn out [1]; 0 once it has been checked */
function stand(c: Comparison, most: number, worn: number): VerdictValue {
  const unchecked = (1 - worn) * most;
  const data = {
    most: roundMoney(most),
    quote: roundMoney(c.repair),
    between: roundMoney(Math.abs(most - c.repair)),
    unchecked: roundMoney(Math.max(0, unchecked)),
  };
  const verdict = (code: string, level: VerdictValue['level']): VerdictValue => ({
    kind: 'verdict',
    key: 'verdict',
    label: 'Where the quote stands',
    code,
    level,
    data,
    main: true,
  });
  if (most <= 0) return verdict('no-repair-worth-it', 'caution');
  if (c.repair <= most && c.repair > unchecked) return verdict('engine-in-doubt', 'caution');
  if (Math.abs(most - c.repair) <= close * most) return verdict('too-close-to-call', 'note');
  return c.repair <= most ? verdict('worth-repairing', 'good') : verdict('buy-new', 'caution');
}

function yearly(c: Comparison, inputs: WorthInputs, working: WorkingStep[]): Value[] {
  const [repaired, replaced, H] = [repairYearly(c), newYearly(c), inputs.hoursPerYear];
  working.push(step(perHour, { C: repaired, H }, repaired / H), step(perHour, { C: replaced, H }, replaced / H));
  return [
    { kind: 'money', key: 'repairYearly', label: 'Repair and keep, a year', value: roundMoney(repaired), main: true },
    { kind: 'money', key: 'newYearly', label: 'Buy new, a year', value: roundMoney(replaced), main: true },
    { kind: 'money', key: 'repairHour', label: 'Repair and keep, a cutting hour', value: roundMoney(repaired / H) },
    { kind: 'money', key: 'newHour', label: 'Buy new, a cutting hour', value: roundMoney(replaced / H) },
  ];
}

function flips(c: Comparison, inputs: WorthInputs, most: number, working: WorkingStep[]): Value[] {
  const service = serviceToFlip(c);
  const price = newPriceToFlip(c, inputs.newPrice);
  const comebacks = comebackToFlip(c);
  const t = comebackTime(c.service);
  if (comebacks !== undefined)
    working.push(
      step(comebackFlip, { p: c.comebackChance, Q_m: most, Q: c.repair, r: c.rate, t, C_c: c.comebackCost }, comebacks),
    );
  return [
    ...(service === undefined
      ? [
          {
            kind: 'verdict',
            key: 'crossing',
            label: 'Years of service at which both cost the same',
            code: most > c.repair ? 'repair-at-any-service' : 'new-at-any-service',
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
}

function chance(c: Comparison, inputs: WorthInputs): Value[] {
  const doubt = {
    repair: inputs.spreadQuote,
    service: inputs.spreadService,
    newFirst: inputs.spreadPrice,
    newLife: inputs.spreadLife,
    worn: inputs.engineChecked ? 0 : (inputs.chanceWorn ?? 0),
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
      note: `From ${inputs.draws} draws over the ranges given${inputs.engineChecked ? '' : ', the chance of a worn engine among them'}. The range is the sampling error.`,
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

function rulesOfThumb(inputs: WorthInputs, total: number, working: WorkingStep[]): Value[] {
  const half = total / inputs.newPrice;
  working.push(step(halfRule, { Q_t: total, P: inputs.newPrice }, half));
  const rule = (key: string, label: string, share: number, limit: number, source: string): VerdictValue => ({
    kind: 'verdict',
    key,
    label,
    code: share > limit ? 'rule-against' : 'rule-for',
    level: 'note',
    source,
    data: { share: Math.round(share * 100), limit: Math.round(limit * 100) },
  });
  const rules: Value[] = [
    rule('halfRule', 'Rule of thumb, not the answer: half the price of new', half, 0.5, 'fifty-percent-rule'),
  ];
  if (inputs.workingValue === undefined) return rules;
  const worth = total / inputs.workingValue;
  working.push(step(threeQuarterRule, { Q_t: total, V_w: inputs.workingValue }, worth));
  return [
    ...rules,
    rule(
      'threeQuarterRule',
      'Rule of thumb, not the answer: three quarters of its worth in working order',
      worth,
      0.75,
      'three-quarter-rule',
    ),
  ];
}

function cautions(inputs: WorthInputs): Caution[] {
  return inputs.engineChecked ? [] : [{ hazard: 'compression-test-spark', level: 'warning' }];
}
