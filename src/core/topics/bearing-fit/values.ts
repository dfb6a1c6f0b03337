/** Values and verdicts of a seat: limits, readings, the seat against its zone and against the table's. */
import { ringLimits, type RingClass } from '../bearing-size/index.ts';
import { housingSeats, kindOfFit, shaftSeats, type Fit } from '../limits-fits/index.ts';
import type { Value, VerdictValue } from '../../contract/result.ts';
import { type MaterialKey, materialOf } from '../../materials/index.ts';
import { isOver } from '../../thresholds/index.ts';
import { isCoarse, type Judgement, type Measured, type SeatCode } from './judge.ts';
import { ringFit, type RingFit, type Seat, type SeatForm } from './seat.ts';

const micro = ['µm', 'thou'] as const;
const full = ['mm', 'in'] as const;
const fine = [4, 5] as const;

/** Everything a drawing of the two zones to scale needs. */
export function limitValues(size: number, zone: string, { seat, ring }: RingFit): Value[] {
  const deviation = (key: string, label: string, value: number, source: string): Value => ({
    kind: 'quantity',
    key,
    label,
    value,
    units: micro,
    source,
  });
  const whole = (key: string, label: string, value: number): Value => ({
    kind: 'quantity',
    key,
    label,
    value,
    units: full,
    decimals: fine,
  });
  return [
    { kind: 'text', key: 'seatZone', label: 'Zone of the seat', value: zone },
    deviation('seatUpper', 'Seat, upper limit deviation', seat.upper, 'iso-286-1'),
    deviation('seatLower', 'Seat, lower limit deviation', seat.lower, 'iso-286-1'),
    whole('seatLargest', 'Seat, largest', size + seat.upper),
    whole('seatSmallest', 'Seat, smallest', size + seat.lower),
    deviation('ringUpper', 'Ring, upper deviation', ring.upper, ring.source),
    deviation('ringLower', 'Ring, lower deviation', ring.lower, ring.source),
    whole('ringLargest', 'Ring, largest', size + ring.upper),
    whole('ringSmallest', 'Ring, smallest', size + ring.lower),
  ];
}

/** The seat as measured, its taper and its out-of-round. */
export function readingValues(form: SeatForm): Value[] {
  return [
    {
      kind: 'quantity',
      key: 'measured',
      label: 'Seat as measured',
      value: form.mean,
      low: form.smallest,
      high: form.largest,
      units: full,
      decimals: fine,
    },
    { kind: 'quantity', key: 'taper', label: 'Taper', value: form.taper, units: micro },
    {
      kind: 'quantity',
      key: 'outOfRound',
      label: 'Out of round',
      value: form.outOfRound,
      units: micro,
      note: 'Two-point readings do not show a three-lobed seat.',
    },
  ];
}

/** The usual seats of this size side by side, each with this ring. */
export function seatTable(seat: Seat, size: number, ringClass: RingClass): Value {
  const rows = (seat === 'shaft' ? shaftSeats : housingSeats).flatMap((zone) => {
    const made = ringFit(seat, size, zone, ringClass);
    return made ? [[zone, made.seat.upper, made.seat.lower, made.fit.least, made.fit.mean, made.fit.most]] : [];
  });
  const column = (key: string, label: string) => ({ key, label, units: micro });
  return {
    kind: 'table',
    key: 'seats',
    label: 'Usual seats at this size, with this ring',
    rows,
    source: ringLimits(seat === 'shaft' ? 'bore' : 'outside', size, ringClass)?.source,
    columns: [
      { key: 'zone', label: 'Zone' },
      column('upper', 'Upper'),
      column('lower', 'Lower'),
      column('least', 'Loosest'),
      column('mean', 'Mean'),
      column('most', 'Tightest'),
    ],
  };
}

/** What kind of fit the limits give, or the readings. */
export function fitVerdict(fit: Fit, measured: Measured | undefined): Value {
  const code = `${measured ? 'measured' : 'fit'}-${kindOfFit(fit)}`;
  const data = measured && { ring: measured.ringKnown ? 'measured' : 'class' };
  return { kind: 'verdict', key: 'fitKind', label: 'Kind of fit', code, level: 'note', ...(data && { data }) };
}

/** Two zones this near in the mean hold alike: less than a shop's gauges tell apart [m]; common practice, no source. */
const alike = 3e-6;

/** The zone given against the zone advised, by mean interference. */
export function choiceVerdict(chosen: Fit, advised: Fit, zone: string, advisedZone: string): Value {
  const difference = chosen.mean - advised.mean;
  const base = {
    kind: 'verdict',
    key: 'choice',
    label: "Your zone against the table's",
    data: { zone, advised: advisedZone, difference: Math.abs(difference) },
  } as const;
  if (!isOver(Math.abs(difference), alike)) return { ...base, code: 'zone-as-advised', level: 'good' };
  return difference > 0
    ? { ...base, code: 'zone-tighter', level: 'note' }
    : { ...base, code: 'zone-looser', level: 'caution' };
}

export interface JudgedSeat {
  readonly measured: Measured;
  readonly material: MaterialKey | undefined;
  /** The zone the seat is held to, its tolerance [m], and what the readings say of it. */
  readonly zone: string;
  readonly tolerance: number;
  readonly judged: Judgement;
  /** The table's zone, where another one was given. */
  readonly other?: { readonly zone: string; readonly judged: Judgement } | undefined;
}

const levels: Readonly<Record<SeatCode, VerdictValue['level']>> = {
  good: 'good',
  'near-limit': 'note',
  'at-limit': 'caution',
  'fit-right': 'note',
  crooked: 'caution',
  tight: 'caution',
  loose: 'stop',
  slack: 'stop',
  uneven: 'stop',
};

/** A seat outside its zone that is right for the table's: a question of which zone holds, not of a bad seat. */
export function isOtherZone({ judged, other }: JudgedSeat): boolean {
  return !judged.accepted && judged.code !== 'crooked' && other?.judged.accepted === true;
}

/** The seat, what it needs, how it stands to the table's zone, its shape, and whether the gauge can tell. */
export function seatVerdicts(j: JudgedSeat): Value[] {
  return [seatVerdict(j), ...needs(j), ...againstTable(j), formVerdict(j), ...gaugeVerdict(j)];
}

function seatVerdict(j: JudgedSeat): Value {
  const { measured, zone, judged, other } = j;
  const { code, looseBy, tightBy } = judged;
  const base = { kind: 'verdict', key: 'seatVerdict', label: 'The seat', main: true } as const;
  // Inside a limit the distance to the nearer one is said, outside it the distance past it.
  const by = ['tight', 'loose', 'slack', 'uneven'].includes(code)
    ? pastBy(judged)
    : Math.abs(Math.max(looseBy, tightBy));
  const side = looseBy > tightBy ? 'loose' : 'tight';
  const data = { zone, by, tightBy, side, mean: measured.fit.mean, gauge: measured.gauge, worst: judged.form.worst };
  if (other && isOtherZone(j))
    return { ...base, code: 'seat-other-zone', level: 'caution', data: { ...data, advised: other.zone } };
  return { ...base, code: `seat-${code}`, level: levels[code], data };
}

/** How far past its limit a refused seat is [m]. */
function pastBy({ code, looseBy, tightBy }: Judgement): number {
  return code === 'tight' ? tightBy : looseBy;
}

/** Every seat that can't stay as it is has a way out named; one that is right for the table's zone, under a condition. */
function needs(j: JudgedSeat): Value[] {
  const { judged, measured, material, zone } = j;
  if (judged.accepted) return [];
  const shaft = measured.seat === 'shaft';
  const code = (): string => {
    if (judged.code === 'crooked') return shaft ? 'needs-truing-shaft' : 'needs-truing-housing';
    if (judged.code === 'tight') return shaft ? 'needs-less-shaft' : 'needs-wider-housing';
    if (shaft) return 'needs-shaft';
    return material && materialOf(material).light ? 'needs-light-housing' : 'needs-iron-housing';
  };
  const data = { by: pastBy(judged), zone };
  const label = isOtherZone(j) ? `What it needs, if the drawing names ${zone}` : 'What it needs';
  return [{ kind: 'verdict', key: 'needs', label, code: code(), level: 'note', data }];
}

/** The same readings against the zone the table recommends, where another one was given. */
function againstTable(j: JudgedSeat): Value[] {
  const { other, judged } = j;
  if (!other || isOtherZone(j)) return [];
  const base = { kind: 'verdict', key: 'seatAdvised', label: "The seat against the table's zone" } as const;
  if (other.judged.accepted) return [{ ...base, code: 'advised-met', level: 'note', data: { advised: other.zone } }];
  const data = { advised: other.zone, by: pastBy(other.judged), code: other.judged.code };
  return [{ ...base, code: 'advised-missed', level: judged.accepted ? 'caution' : 'note', data }];
}

/** Common practice: taper and out-of-round each within half the seat's tolerance. */
function formVerdict({ judged, measured }: JudgedSeat): Value {
  const { code, worst, allowed } = judged.form;
  return {
    kind: 'verdict',
    key: 'form',
    label: 'Shape of the seat',
    code: `form-${code}`,
    level: code === 'even' ? 'good' : 'caution',
    data: { worst, allowed, gauge: measured.gauge },
    source: 'common-practice',
  };
}

function gaugeVerdict({ measured: { gauge }, tolerance, zone }: JudgedSeat): Value[] {
  if (!isCoarse(gauge, tolerance)) return [];
  const data = { gauge, tolerance, zone };
  const base = { kind: 'verdict', key: 'gaugeVerdict', label: 'Your gauge', level: 'note', data } as const;
  return [{ ...base, code: 'gauge-coarse', source: 'common-practice' }];
}
