import { clearanceLimits, groups } from '../bearing-size/index.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { InputsOf } from '../../contract/field.ts';
import { refuse, type Refusal, type Result, type Value } from '../../contract/result.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { guarded } from '../../contract/guarded.ts';
import { materialOf } from '../../materials/index.ts';
import { fields } from './fields.ts';
import {
  innerLoss,
  innerRacewayGuess,
  leastLeft,
  mostLeft,
  outerLoss,
  outerRacewayGuess,
  warmFit,
  warmthLoss,
} from './formulas.ts';
import { countedShare, racewayGuess } from './loss.ts';
import { lossesAt, totalOf, type Loss, type Setting } from './residual.ts';

type ClearanceInputs = InputsOf<typeof fields>;

const micro = ['µm', 'thou'] as const;
const full = ['mm', 'in'] as const;
/** Thinner walls than these shares of their diameter are slips of the pen, and the sums divide by the wall. */
const leastWall = { innerRing: 0.01, outerRing: 0.005, shaft: 0.02, housing: 0.01 } as const;

export const compute = guarded(fields, (inputs): Result => {
  const { setting, steps } = settingOf(inputs);
  const refused = refusal(inputs, setting);
  if (refused) return refused;
  const start = clearanceLimits(inputs.bore, inputs.group);
  if (!start) return refuse('bore', 'clearance-outside-table', { got: inputs.bore });
  const tight = lossesAt(setting, inputs.shaftMost, inputs.housingMost);
  const loose = lossesAt(setting, inputs.shaftLeast, inputs.housingLeast);
  const mid = lossesAt(
    setting,
    (inputs.shaftLeast + inputs.shaftMost) / 2,
    (inputs.housingLeast + inputs.housingMost) / 2,
  );
  const least = start.least - totalOf(tight);
  const most = start.most - totalOf(loose);
  const mean = (start.least + start.most) / 2 - totalOf(mid);
  const working = [...steps, ...workingOf(setting, inputs, tight, loose, { start, least, most })];
  // Before anything is warm: a cold start with the inner ring heating first is the tightest moment.
  const cold = lossesAt({ ...setting, housingRise: 0 }, inputs.shaftMost, inputs.housingMost);
  const needed = groups.find((g) => !isOver(totalOf(tight), clearanceLimits(inputs.bore, g)?.least ?? -1));
  const rested = lossesAt(
    { ...setting, housingRise: 0, difference: 0 },
    (inputs.shaftLeast + inputs.shaftMost) / 2,
    (inputs.housingLeast + inputs.housingMost) / 2,
  );
  const middle = (start.least + start.most) / 2;

  const values: Value[] = [
    verdict({
      data: {
        ...{ least, mean, most, group: inputs.group, cold: middle - totalOf(rested) },
        ...wayOut(inputs, totalOf(mid), needed),
      },
      // Losses are held against the clearance there is, not their difference against nothing: both have a size.
      mayPreload: isOver(totalOf(tight), start.least),
      usually: isOver(totalOf(mid), middle),
      evenCold: isOver(totalOf(rested), middle),
      always: isOver(totalOf(loose), start.most),
    }),
    span('left', 'Clearance left while running', mean, least, most, true),
    span('innerLoss', 'Lost on the shaft', mid.inner, loose.inner, tight.inner),
    span('outerLoss', 'Lost in the housing, warm', mid.outer, loose.outer, tight.outer),
    {
      kind: 'quantity',
      key: 'heatLoss',
      label: 'Lost because the inner ring is warmer',
      value: tight.heat,
      units: micro,
    },
    {
      ...span('start', 'Clearance before fitting', (start.least + start.most) / 2, start.least, start.most),
      source: start.source,
    },
    {
      kind: 'quantity',
      key: 'coldLeast',
      label: 'Least clearance just after a start, housing still cold',
      value: start.least - totalOf(cold),
      units: micro,
    },
    span('warmHousing', 'Housing interference left when warm', mid.warmFit, loose.warmFit, tight.warmFit),
    ...(mid.looseWarm && inputs.housingMost > 0
      ? [
          {
            kind: 'verdict',
            key: 'housingLoose',
            label: 'Outer ring',
            code: 'outer-loose-warm',
            level: 'note',
          } as const,
        ]
      : []),
    ...(needed
      ? [
          {
            kind: 'text',
            key: 'groupNeeded',
            label: 'Smallest group that always keeps clearance',
            value: needed,
          } as const,
        ]
      : []),
    { kind: 'quantity', key: 'pitch', label: 'Mean diameter', value: (inputs.bore + inputs.outside) / 2, units: full },
    groupTable(inputs.bore, tight, loose),
  ];
  return { ok: true, values, working, cautions: [] };
});

function settingOf(i: ClearanceInputs): { readonly setting: Setting; readonly steps: WorkingStep[] } {
  const guess = racewayGuess(i.bore, i.outside);
  const sizes = { d: i.bore, D: i.outside };
  const steps = [
    ...(i.innerRaceway === undefined ? [step(innerRacewayGuess, sizes, guess.inner)] : []),
    ...(i.outerRaceway === undefined ? [step(outerRacewayGuess, sizes, guess.outer)] : []),
  ];
  const setting = {
    bore: i.bore,
    outside: i.outside,
    innerRaceway: i.innerRaceway ?? guess.inner,
    outerRaceway: i.outerRaceway ?? guess.outer,
    shaftBore: i.shaftBore,
    housingOutside: i.housingOutside ?? Infinity,
    shaft: materialOf(i.shaftMaterial),
    housing: materialOf(i.housingMaterial),
    ring: materialOf('bearing-steel'),
    difference: i.difference,
    housingRise: i.housingRise,
    surface: i.surface,
  };
  return { setting, steps };
}

function refusal(i: ClearanceInputs, s: Setting): Refusal | undefined {
  if (!isUnder(i.bore, i.outside)) return refuse('bore', 'bore-too-large', { bore: i.bore, outside: i.outside });
  if (!isOver(s.innerRaceway, s.bore * (1 + leastWall.innerRing)) || !isUnder(s.innerRaceway, s.outerRaceway))
    return refuse('innerRaceway', 'raceway-order', { inner: s.innerRaceway, outer: s.outerRaceway });
  if (!isUnder(s.outerRaceway, s.outside * (1 - leastWall.outerRing)))
    return refuse('outerRaceway', 'raceway-order', { inner: s.innerRaceway, outer: s.outerRaceway });
  if (!isUnder(s.shaftBore, s.bore * (1 - leastWall.shaft)))
    return refuse('shaftBore', 'no-shaft-wall', { hole: s.shaftBore, bore: s.bore });
  if (!isOver(s.housingOutside, s.outside * (1 + leastWall.housing)))
    return refuse('housingOutside', 'no-housing-wall', { outside: s.housingOutside, bearing: s.outside });
  if (isOver(i.shaftLeast, i.shaftMost)) return refuse('shaftLeast', 'least-above-most');
  return isOver(i.housingLeast, i.housingMost) ? refuse('housingLeast', 'least-above-most') : undefined;
}

interface Left {
  readonly start: { readonly least: number; readonly most: number };
  readonly least: number;
  readonly most: number;
}

function workingOf(
  s: Setting,
  i: ClearanceInputs,
  tight: Loss,
  loose: Loss,
  { start, least, most }: Left,
): WorkingStep[] {
  return [
    step(innerLoss, { p_i: tight.innerPressure, d: s.bore, F: s.innerRaceway, E: s.ring.E }, tight.inner),
    step(
      warmFit,
      {
        k: countedShare(s.outside, s.surface),
        I_h: i.housingMost,
        D: s.outside,
        alpha_h: s.housing.alpha,
        alpha_r: s.ring.alpha,
        dT_h: s.housingRise,
      },
      tight.warmFit,
    ),
    step(outerLoss, { p_o: tight.outerPressure, D: s.outside, G: s.outerRaceway, E: s.ring.E }, tight.outer),
    step(warmthLoss, { alpha_r: s.ring.alpha, G: s.outerRaceway, dT: s.difference }, tight.heat),
    step(leastLeft, { c_l: start.least, u_i: tight.inner, u_o: tight.outer, u_t: tight.heat }, least),
    step(mostLeft, { c_h: start.most, v_i: loose.inner, v_o: loose.outer, u_t: loose.heat }, most),
  ];
}

interface Running {
  readonly data: Readonly<Record<string, number | string>>;
  /** The tightest parts, the mean ones, the loosest ones take more than there is. */
  readonly mayPreload: boolean;
  readonly usually: boolean;
  readonly always: boolean;
  /** The mean parts take more than there is before anything is warm: such a bearing drags when turned by hand. */
  readonly evenCold: boolean;
}

function verdict({ data, mayPreload, usually, always, evenCold }: Running): Value {
  const base = { kind: 'verdict', key: 'verdict', label: 'Running', main: true, data } as const;
  if (always) return { ...base, code: 'always-preloaded', level: 'stop' };
  if (usually) return { ...base, code: evenCold ? 'preloaded' : 'preloaded-warm', level: 'caution' };
  return mayPreload
    ? { ...base, code: 'may-preload', level: 'caution' }
    : { ...base, code: 'runs-clear', level: 'good' };
}

/**
 * The groups that cure it with the fits as they are: the load asks for the fit, and the clearance follows from it.
 * `kept` is the smallest larger group with clearance in the mean, `left` what it has there, `always` the smallest that
 * has some with the tightest parts.
 */
function wayOut(i: ClearanceInputs, taken: number, always: string | undefined): Record<string, number | string> {
  const larger = groups.slice(groups.indexOf(i.group) + 1).flatMap((group) => {
    const c = clearanceLimits(i.bore, group);
    return c && isOver((c.least + c.most) / 2, taken) ? [{ group, left: (c.least + c.most) / 2 - taken }] : [];
  });
  const [first] = larger;
  return { ...(first && { kept: first.group, left: first.left }), ...(always !== undefined && { always }) };
}

function span(key: string, label: string, value: number, low: number, high: number, main = false): Value {
  return { kind: 'quantity', key, label, value, low, high, units: micro, main };
}

function groupTable(bore: number, tight: Loss, loose: Loss): Value {
  const rows = groups.flatMap((g) => {
    const c = clearanceLimits(bore, g);
    return c ? [[g, c.least, c.most, c.least - totalOf(tight), c.most - totalOf(loose)]] : [];
  });
  const column = (key: string, label: string) => ({ key, label, units: micro });
  return {
    kind: 'table',
    key: 'groups',
    label: 'Every group with these fits',
    rows,
    columns: [
      { key: 'group', label: 'Group' },
      column('startLeast', 'New, least'),
      column('startMost', 'New, most'),
      column('least', 'Left, least'),
      column('most', 'Left, most'),
    ],
  };
}
