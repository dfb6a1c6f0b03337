import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { fields } from './fields.ts';
import { matches, nearest, type Bearing, type Match } from './find.ts';
import { difference, smallestBore, smallestOutside } from './formulas.ts';
import { readNumber, type RingNumber } from './number.ts';
import { clearanceLimits, ringLimits } from './ring.ts';
import { groups, type Group } from './tables/clearance.ts';
import type { RingClass } from './tables/ring-tolerances.ts';

const full = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const fine = [4, 5] as const;

export const compute = guarded(fields, (inputs): Result => {
  const { ringClass, group } = inputs;
  if (inputs.known === 'designation') return fromNumber(inputs.designation ?? '', ringClass, group);
  const readings = { bore: inputs.bore ?? 0, outside: inputs.outside ?? 0, width: inputs.width ?? 0 };
  if (!isUnder(readings.bore, readings.outside))
    return refuse('bore', 'bore-too-large', { bore: readings.bore, outside: readings.outside });
  return fromReadings(readings, inputs.allow ?? 0, ringClass, group);
});

/** The box of a choice can't be told from its default, so a mark on the ring stands against a default and not against a choice. */
function fromNumber(typed: string, ringClass: RingClass, group: Group): Result {
  const read = readNumber(typed);
  if (!read) return refuse('designation', 'no-such-bearing', { got: typed });
  if (read.group && group !== 'CN' && group !== read.group)
    return refuse('group', 'clearance-two-ways', { marked: read.group, chosen: group });
  if (read.ringClass && ringClass !== 'Normal' && ringClass !== read.ringClass)
    return refuse('ringClass', 'class-two-ways', { marked: read.ringClass, chosen: ringClass });
  const limits = limitsOf(read.bearing, read.ringClass ?? ringClass, read.group ?? group);
  return {
    ok: true,
    values: [...about(read.bearing), ...readAs(read), ...limits.values],
    working: limits.steps,
    cautions: [],
  };
}

/** What was taken over from the letters on the ring, and what was left out. */
function readAs({ bearing, group, ringClass, left }: RingNumber): Value[] {
  if (!group && !ringClass && left === '') return [];
  const data = { number: bearing.designation, group: group ?? '', ringClass: ringClass ?? '', left };
  return [{ kind: 'verdict', key: 'readAs', label: 'The number', code: 'number-read', level: 'note', data }];
}

function fromReadings(
  readings: { bore: number; outside: number; width: number },
  allow: number,
  ringClass: RingClass,
  group: Group,
): Result {
  const found = matches(readings, allow);
  const shown = found.length > 0 ? found : nearest(readings);
  const best = shown[0];
  if (!best) return refuse('', 'no-such-bearing', { got: '' });
  const { bearing } = best;
  const compared = [
    step(
      difference,
      {
        d_r: readings.bore,
        d: bearing.bore,
        D_r: readings.outside,
        D: bearing.outside,
        B_r: readings.width,
        B: bearing.width,
      },
      best.worst,
    ),
  ];
  const code = found.length === 0 ? 'none-fits' : found.length === 1 ? 'one-fits' : 'several-fit';
  const verdict: Value = {
    kind: 'verdict',
    key: 'match',
    label: 'Match',
    code,
    level: found.length === 1 ? 'good' : 'caution',
    main: true,
    data: { bearing: bearing.designation, worst: best.worst, count: found.length },
  };
  if (found.length === 0) return { ok: true, values: [verdict, matchTable(shown)], working: compared, cautions: [] };
  const limits = limitsOf(bearing, ringClass, group);
  return {
    ok: true,
    values: [verdict, ...about(bearing), ...wear(best), ...limits.values, matchTable(shown)],
    working: [...compared, ...limits.steps],
    cautions: [],
  };
}

function about(b: Bearing): Value[] {
  return [
    { kind: 'text', key: 'designation', label: 'Bearing', value: b.designation, main: true, source: 'iso-15' },
    { kind: 'quantity', key: 'nominalBore', label: 'Bore', value: b.bore, units: full, source: 'iso-15', main: true },
    {
      kind: 'quantity',
      key: 'nominalOutside',
      label: 'Outside diameter',
      value: b.outside,
      units: full,
      source: 'iso-15',
      main: true,
    },
    {
      kind: 'quantity',
      key: 'nominalWidth',
      label: 'Width',
      value: b.width,
      units: full,
      source: 'iso-15',
      main: true,
    },
    { kind: 'quantity', key: 'pitch', label: 'Mean diameter', value: (b.bore + b.outside) / 2, units: full },
  ];
}

/** What a caliper errs by in a careful hand [m]; common practice. */
const byCaliper = 0.05e-3;

/** A bore read large or an outside read small by more than a caliper errs points to a ring that has turned on its seat. */
function wear(m: Match): Value[] {
  if (!isOver(m.bore, byCaliper) && !isUnder(m.outside, -byCaliper)) return [];
  return [
    {
      kind: 'verdict',
      key: 'wear',
      label: 'Wear',
      code: 'ring-worn',
      level: 'note',
      data: { bore: m.bore, outside: m.outside },
    },
  ];
}

interface RingPart {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

function limitsOf(b: Bearing, ringClass: RingClass, group: Group): RingPart {
  const bore = ringLimits('bore', b.bore, ringClass);
  const outside = ringLimits('outside', b.outside, ringClass);
  const clearance = clearanceLimits(b.bore, group);
  if (!bore || !outside || !clearance) return { values: [], steps: [] };
  const steps = [
    step(smallestBore, { d: b.bore, t_d: bore.lower }, b.bore + bore.lower),
    step(smallestOutside, { D: b.outside, t_D: outside.lower }, b.outside + outside.lower),
  ];
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'boreLimits',
      label: 'Mean bore, new',
      value: b.bore + bore.lower / 2,
      low: b.bore + bore.lower,
      high: b.bore,
      units: full,
      decimals: fine,
      source: bore.source,
    },
    {
      kind: 'quantity',
      key: 'outsideLimits',
      label: 'Mean outside diameter, new',
      value: b.outside + outside.lower / 2,
      low: b.outside + outside.lower,
      high: b.outside,
      units: full,
      decimals: fine,
      source: outside.source,
    },
    {
      kind: 'quantity',
      key: 'clearance',
      label: 'Radial internal clearance, new and unmounted',
      value: (clearance.least + clearance.most) / 2,
      low: clearance.least,
      high: clearance.most,
      units: micro,
      source: clearance.source,
    },
    { kind: 'text', key: 'groupUsed', label: 'Clearance group', value: group },
    { kind: 'text', key: 'classUsed', label: 'Tolerance class', value: ringClass },
    groupTable(b.bore),
  ];
  return { values, steps };
}

function groupTable(bore: number): Value {
  const rows = groups.flatMap((g) => {
    const c = clearanceLimits(bore, g);
    return c ? [[g, c.least, c.most]] : [];
  });
  return {
    kind: 'table',
    key: 'groups',
    label: 'Clearance groups at this bore',
    rows,
    source: clearanceLimits(bore, 'CN')?.source,
    columns: [
      { key: 'group', label: 'Group' },
      { key: 'least', label: 'Least', units: micro },
      { key: 'most', label: 'Most', units: micro },
    ],
  };
}

function matchTable(list: readonly Match[]): Value {
  const diff = (key: string, label: string) => ({ key, label, units: full, decimals: [2, 3] as const });
  return {
    kind: 'table',
    key: 'candidates',
    label: 'Nearest bearings, and reading minus nominal',
    source: 'iso-15',
    rows: list.map((m) => [
      m.bearing.designation,
      m.bearing.bore,
      m.bearing.outside,
      m.bearing.width,
      m.bore,
      m.outside,
      m.width,
    ]),
    columns: [
      { key: 'designation', label: 'Bearing' },
      { key: 'bore', label: 'Bore', units: full },
      { key: 'outside', label: 'Outside', units: full },
      { key: 'width', label: 'Width', units: full },
      diff('boreDifference', 'Bore, difference'),
      diff('outsideDifference', 'Outside, difference'),
      diff('widthDifference', 'Width, difference'),
    ],
  };
}
