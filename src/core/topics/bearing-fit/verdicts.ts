/** What the numbers mean for this seat. */
import type { Value } from '../../contract/result.ts';
import { kindOfFit, type Fit } from '../limits-fits/index.ts';
import { type MaterialKey, materialOf } from '../../materials/index.ts';
import type { SeatForm } from './readings.ts';
import type { Seat } from './ring-fit.ts';

/** A tenth of a micrometre: finer than any shop instrument. */
const hair = 1e-7;

export function fitVerdict(fit: Fit): Value {
  return { kind: 'verdict', key: 'fitKind', label: 'Kind of fit', code: `fit-${kindOfFit(fit)}`, level: 'note' };
}

/** The zone chosen against the zone advised, by mean interference. */
export function choiceVerdict(chosen: Fit, advised: Fit | undefined, zone: string, advisedZone: string): Value[] {
  if (!advised) return [];
  const difference = chosen.mean - advised.mean;
  const base = {
    kind: 'verdict',
    key: 'choice',
    label: "Your zone against the table's",
    data: { zone, advised: advisedZone, difference: Math.abs(difference) },
  } as const;
  if (Math.abs(difference) <= 3e-6) return [{ ...base, code: 'zone-as-advised', level: 'good' }];
  return [
    difference > 0
      ? { ...base, code: 'zone-tighter', level: 'note' }
      : { ...base, code: 'zone-looser', level: 'caution' },
  ];
}

export interface Judged {
  readonly seat: Seat;
  readonly material: MaterialKey | undefined;
  readonly form: SeatForm;
  readonly measured: Fit;
  /** What the zone and the class allow. */
  readonly wanted: Fit;
  /** Tolerance of the seat [m]. */
  readonly tolerance: number;
  /** Ring known to a size, or only to its class: then the middle of the class stands for it. */
  readonly ringSpread: number;
}

/** Good, loose or tight, with what a loose or uneven seat needs. */
export function seatVerdicts(j: Judged): Value[] {
  const looseBy = j.wanted.least + j.ringSpread / 2 - j.measured.mean;
  const tightBy = j.measured.mean - (j.wanted.most - j.ringSpread / 2);
  return [seatVerdict(j, looseBy, tightBy), ...(looseBy > hair ? [looseNeeds(j, looseBy)] : []), ...formVerdict(j)];
}

function seatVerdict({ measured }: Judged, looseBy: number, tightBy: number): Value {
  const base = { kind: 'verdict', key: 'seatVerdict', label: 'The seat', main: true } as const;
  const data = { mean: measured.mean };
  if (looseBy > hair)
    return {
      ...base,
      code: measured.mean < 0 ? 'seat-loose' : 'seat-slack',
      level: 'stop',
      data: { ...data, by: looseBy },
    };
  if (tightBy > hair) return { ...base, code: 'seat-tight', level: 'caution', data: { ...data, by: tightBy } };
  return { ...base, code: 'seat-good', level: 'good', data };
}

function looseNeeds({ seat, material }: Judged, by: number): Value {
  const code =
    seat === 'shaft'
      ? 'needs-shaft'
      : material && materialOf(material).light
        ? 'needs-light-housing'
        : 'needs-iron-housing';
  return { kind: 'verdict', key: 'needs', label: 'What it needs', code, level: 'note', data: { by } };
}

/** Common practice: taper and out-of-round each within half the seat's tolerance. */
function formVerdict({ form, tolerance }: Judged): Value[] {
  const allowed = tolerance / 2;
  const worst = Math.max(form.taper, form.outOfRound);
  const base = {
    kind: 'verdict',
    key: 'form',
    label: 'Shape of the seat',
    data: { worst, allowed },
    source: 'common-practice',
  } as const;
  return [
    worst > allowed + hair
      ? { ...base, code: 'form-uneven', level: 'caution' }
      : { ...base, code: 'form-even', level: 'good' },
  ];
}
