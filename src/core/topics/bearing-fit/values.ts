import { ringLimits, type RingClass } from '../bearing-size/index.ts';
import { housingSeats, shaftSeats } from '../limits-fits/index.ts';
import type { Value } from '../../contract/result.ts';
import type { SeatForm } from './readings.ts';
import { ringFit, type RingFit, type Seat } from './ring-fit.ts';

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
