import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { rank } from './deviation.ts';
import { fields } from './fields.ts';
import { fitOf, housingSeats, kindOfFit, shaftSeats, type Fit } from './fit.ts';
import { leastInterference, mostInterference } from './formulas.ts';
import { explainLimits, limitsAt, roundedHalf, type Explained, type Limits } from './limits.ts';
import { whyRefused } from './refusal.ts';
import { sizeWorking, zoneWorking } from './working.ts';
import { zonePair } from './zone.ts';

const micro = ['µm', 'thou'] as const;
const full = ['mm', 'in'] as const;
const fine = [4, 5] as const;

export const compute = guarded(fields, (inputs): Result => {
  const { size, halves } = inputs;
  // A whole fit typed into the first box fills both, as long as the other is empty.
  const both = inputs.mate === undefined ? zonePair(inputs.zone) : undefined;
  const zone = both?.hole ?? inputs.zone;
  const mate = both?.shaft ?? inputs.mate;
  const refused =
    whyRefused(size, zone, { size: 'size', zone: 'zone' }) ??
    (mate ? whyRefused(size, mate, { size: 'size', zone: 'mate' }) : undefined);
  if (refused) return { ok: false, problems: [refused] };
  const one = explained(size, zone, halves);
  const other = mate ? explained(size, mate, halves) : undefined;
  if (!one) return refuse('zone', 'not-a-zone', { got: zone });
  if (other?.zone.hole === one.zone.hole)
    return refuse('mate', 'two-of-a-kind', { kind: one.zone.hole ? 'hole' : 'shaft' });

  const together = other ? pairOf(one, other) : undefined;
  return {
    ok: true,
    values: [...limitValues(size, one, !together), ...(together?.values ?? []), seatTable(size, one.zone.hole)],
    working: [...zoneWorking(one), ...sizeWorking(size, one.limits), ...(together?.steps ?? [])],
    cautions: [],
  };
});

function explained(size: number, name: string, halves: string): Explained | undefined {
  const found = explainLimits(size, name);
  if (!found || halves === 'exact' || found.deviation.limit !== 'both') return found;
  const grade = rank(found.zone.grade);
  if (grade < rank('7') || grade > rank('11')) return found;
  const half = roundedHalf(found.tolerance);
  return { ...found, tolerance: 2 * half, limits: { upper: half, lower: -half } };
}

/** The two sizes first: what a micrometer shows. The deviations stand large only where no second part wants the room. */
function limitValues(
  size: number,
  { zone, limits: { upper, lower }, tolerance, over, upTo }: Explained,
  alone: boolean,
): Value[] {
  const edge = (key: string, label: string, value: number): Value => ({
    kind: 'quantity',
    key,
    label,
    value: size + value,
    units: full,
    decimals: fine,
    main: true,
  });
  const deviation = (key: string, label: string, value: number): Value => ({
    kind: 'quantity',
    key,
    label,
    value,
    units: micro,
    main: alone,
    source: 'iso-286-1',
  });
  return [
    { kind: 'text', key: 'zoneName', label: zone.hole ? 'Zone of a hole' : 'Zone of a shaft', value: zone.name },
    edge('largest', 'Largest size allowed', upper),
    edge('smallest', 'Smallest size allowed', lower),
    deviation('upper', 'Upper limit deviation', upper),
    deviation('lower', 'Lower limit deviation', lower),
    { kind: 'quantity', key: 'tolerance', label: 'Tolerance', value: tolerance, units: micro, source: 'iso-286-1' },
    {
      kind: 'text',
      key: 'stepRange',
      label: 'Size step of the table',
      value: `over ${over} up to and including ${upTo} mm`,
    },
  ];
}

/** What the two parts make together, and how it was worked out. */
function pairOf(one: Explained, other: Explained): { readonly values: Value[]; readonly steps: WorkingStep[] } {
  const [hole, shaft] = one.zone.hole ? [one, other] : [other, one];
  const fit = fitOf(hole.limits, shaft.limits);
  const steps = [
    ...zoneWorking(other),
    step(mostInterference, { es: shaft.limits.upper, EI: hole.limits.lower }, fit.most),
    step(leastInterference, { ei: shaft.limits.lower, ES: hole.limits.upper }, fit.least),
  ];
  const values: Value[] = [
    fitVerdict(fit),
    { kind: 'text', key: 'fitName', label: 'Fit', value: `${hole.zone.name}/${shaft.zone.name}` },
    {
      kind: 'quantity',
      key: 'interference',
      label: 'Interference',
      value: fit.mean,
      low: fit.least,
      high: fit.most,
      units: micro,
      main: true,
      note: 'Below zero is clearance.',
    },
    ...mateLimits(other.limits),
  ];
  return { values, steps };
}

function mateLimits({ upper, lower }: Limits): Value[] {
  return [
    {
      kind: 'quantity',
      key: 'mateUpper',
      label: 'Other part, upper limit deviation',
      value: upper,
      units: micro,
      source: 'iso-286-1',
    },
    {
      kind: 'quantity',
      key: 'mateLower',
      label: 'Other part, lower limit deviation',
      value: lower,
      units: micro,
      source: 'iso-286-1',
    },
  ];
}

function fitVerdict(fit: Fit): Value {
  return {
    kind: 'verdict',
    key: 'fitKind',
    label: 'Kind of fit',
    code: `fit-${kindOfFit(fit)}`,
    level: 'note',
    main: true,
  };
}

/** The usual bearing seats of this size side by side. */
function seatTable(size: number, hole: boolean): Value {
  const rows = (hole ? housingSeats : shaftSeats).flatMap((name) => {
    const limits = limitsAt(size, name);
    return limits ? [[name, limits.upper, limits.lower, size + limits.upper, size + limits.lower]] : [];
  });
  return {
    kind: 'table',
    key: 'seats',
    label: hole ? 'Usual housing seats at this size' : 'Usual shaft seats at this size',
    source: 'iso-286-1',
    rows,
    columns: [
      { key: 'zone', label: 'Zone' },
      { key: 'upper', label: 'Upper', units: micro },
      { key: 'lower', label: 'Lower', units: micro },
      { key: 'largest', label: 'Largest', units: full, decimals: fine },
      { key: 'smallest', label: 'Smallest', units: full, decimals: fine },
    ],
  };
}
