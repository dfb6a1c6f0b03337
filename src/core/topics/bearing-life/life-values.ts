import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import { cleanliness, levels, type Level } from './contamination.ts';
import { factor, modified } from './formulas.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { branchOf, greatestFactor, kappaLimits, lifeFactor } from './life.ts';

export interface Running {
  readonly kappa: number;
  readonly Cu: number;
  readonly load: number;
  /** Basic life [s]. */
  readonly life: number;
  readonly pitch: number;
  readonly dirt: Level;
}

const hours = ['h', 'h'] as const;
/** Lives of like bearings scatter far more than tenfold: two figures are plenty. */
export const hourFigures = 2;

/** Life in the dirt it has, and in every other, so that a seal can be priced in hours. */
export function lifeValues(r: Running): { readonly values: Value[]; readonly steps: WorkingStep[] } {
  const here = lifeIn(r, r.dirt);
  const sealed = lifeIn(r, 'high');
  const kappa = Math.min(r.kappa, kappaLimits.most);
  const [c, q] = branchOf(kappa);
  const capped = !isUnder(here.factors[1], greatestFactor);
  const steps = [
    ...(capped
      ? []
      : [step(factor, { c, kappa_e: kappa, q, e_C: here.clean[1], C_u: r.Cu, P: r.load }, here.factors[1])]),
    step(modified, { a: here.factors[1], L: r.life }, here.high),
  ];
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'life',
      label: 'Life as it is kept, about',
      figures: hourFigures,
      value: middle(here),
      low: here.low,
      high: here.high,
      units: hours,
      main: counts(here),
      source: 'iso-281-contamination',
    },
    {
      kind: 'quantity',
      key: 'sealedLife',
      label: 'Life with whole seals, about',
      figures: hourFigures,
      value: middle(sealed),
      low: sealed.low,
      high: sealed.high,
      units: hours,
      main: counts(sealed),
      source: 'iso-281-contamination',
    },
    worth(middle(here), middle(sealed), r.dirt),
    ...(r.dirt === 'severe' || r.dirt === 'very-severe'
      ? [
          {
            kind: 'verdict',
            key: 'wear',
            label: 'Wear',
            code: 'wear-not-counted',
            level: 'caution',
            source: 'common-practice',
          } as const,
        ]
      : []),
    {
      kind: 'table',
      key: 'byDirt',
      label: 'Life from clean to slurry',
      source: 'iso-281-contamination',
      rows: levels.map(({ value, label }) => {
        const l = lifeIn(r, value);
        return [label, l.clean[0], l.clean[1], l.low, l.high];
      }),
      columns: [
        { key: 'level', label: 'What gets in' },
        { key: 'cleanLow', label: 'Cleanliness, low', decimals: 1 },
        { key: 'cleanHigh', label: 'high', decimals: 1 },
        { key: 'low', label: 'Life, low', units: hours, decimals: [0, 0] },
        { key: 'high', label: 'Life, high', units: hours, decimals: [0, 0] },
      ],
    },
  ];
  return { values, steps };
}

function lifeIn(r: Running, level: Level) {
  const clean = cleanliness(level, r.pitch);
  const factors = clean.map((e) => lifeFactor(r.kappa, (e * r.Cu) / r.load) ?? 0.1) as [number, number];
  return { clean, factors, low: factors[0] * r.life, high: factors[1] * r.life };
}

function middle({ low, high }: { readonly low: number; readonly high: number }): number {
  return (low + high) / 2;
}

/** Beyond this something else ends the bearing: a figure would only look exact. Our choice. */
const longEnough = 100_000 * 3600;

/** A life something else ends is no figure for the head of an answer: the verdict says it. */
function counts(life: { readonly low: number; readonly high: number }): boolean {
  return isUnder(middle(life), longEnough);
}

function worth(here: number, sealed: number, dirt: Level): Value {
  const base = { kind: 'verdict', key: 'worth', label: 'What seals and clean water are worth', main: true } as const;
  const data = { here, gain: Math.min(sealed, longEnough) - here, times: sealed / here };
  if (!isUnder(here, longEnough)) return { ...base, code: 'life-beyond', level: 'good' };
  if (dirt === 'high' || dirt === 'extreme') return { ...base, code: 'seal-whole', level: 'good' };
  if (!isOver(sealed, here)) return { ...base, code: 'seal-no-gain', level: 'note' };
  return isOver(sealed, longEnough)
    ? { ...base, code: 'seal-worth-most', level: 'note', data }
    : { ...base, code: 'seal-worth', level: 'note', data };
}
