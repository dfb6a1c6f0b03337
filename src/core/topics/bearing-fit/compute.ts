import { guarded } from '../../contract/guarded.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Caution, type Refusal, type Result, type Value } from '../../contract/result.ts';
import { explainLimits, halfFor, kindOfFit, whyRefused, type Fit } from '../limits-fits/index.ts';
import { adviceValues, nothing, warmHousing, warmToFit } from './advice.ts';
import { isOver } from '../../thresholds/index.ts';
import { fields, type FitInputs } from './fields.ts';
import { housingLeast, housingMost, measuredHousing, measuredShaft, shaftLeast, shaftMost } from './formulas.ts';
import { judgeSeat, type Measured } from './judge.ts';
import { recommend } from './recommend.ts';
import { farReadings, isFor, measuredInterference, ringFit, seatForm, type RingFit, type Seat } from './seat.ts';
import {
  choiceVerdict,
  fitVerdict,
  limitValues,
  readingValues,
  seatTable,
  seatVerdicts,
  type JudgedSeat,
} from './values.ts';

export const compute = guarded(fields, (inputs): Result => {
  const { seat, size, ringClass, turning, load, slides } = inputs;
  const advice = recommend({ seat, size, turning, load, slides, housing: inputs.housing ?? 'solid' });
  const given = inputs.zone === undefined ? undefined : halfFor(inputs.zone, seat === 'housing');
  const name = given ?? advice.zone;
  const refused = refusal(inputs, name);
  if (refused) return refused;
  const made = ringFit(seat, size, name, ringClass);
  const explained = explainLimits(size, name);
  if (!made || !explained) return refuse('size', 'ring-outside-table', { got: size });
  const zone = explained.zone.name;
  const advised = ringFit(seat, size, advice.zone, ringClass);

  const measured = inputs.basis === 'readings' ? measure(inputs, made) : undefined;
  const judged = measured && judge(measured, inputs, zone, made, advised && { zone: advice.zone, made: advised });
  const fit = measured?.fit ?? made.fit;
  const inUse = warmHousing(inputs, fit, advised?.fit);
  // No word on how to fit a ring on a seat that is not to be used as it is.
  const warm = judged?.judged.accepted === false ? nothing : warmToFit(inputs, fit);
  const values: Value[] = [
    ...(measured && judged ? [...seatVerdicts(judged), ...readingValues(measured.form)] : []),
    {
      kind: 'quantity',
      key: 'interference',
      label: measured ? 'Interference as measured' : 'Interference',
      value: fit.mean,
      low: fit.least,
      high: fit.most,
      units: ['µm', 'thou'],
      main: true,
      note: 'Below zero is clearance.',
    },
    fitVerdict(fit, measured),
    ...(given !== undefined && advised ? [choiceVerdict(made.fit, advised.fit, zone, advice.zone)] : []),
    ...(judged?.judged.accepted === false ? [] : clearanceNote(size, fit)),
    ...warm.values,
    ...adviceValues(inputs, advice, name),
    ...inUse.values,
    ...limitValues(size, zone, made),
    seatTable(seat, size, ringClass),
  ];
  const working = [
    ...limitWorking(seat, made),
    ...(measured ? [measuredStep(measured)] : []),
    ...inUse.steps,
    ...warm.steps,
  ];
  return { ok: true, values, working, cautions: warm === nothing ? [] : cautionsFor(inputs, fit) };
});

function refusal({ seat, size, readings, ring }: FitInputs, zone: string): Refusal | undefined {
  const problem = whyRefused(size, zone, { size: 'size', zone: 'zone' });
  if (problem) return { ok: false, problems: [problem] };
  if (!isFor(seat, zone)) return refuse('zone', seat === 'shaft' ? 'zone-of-a-hole' : 'zone-of-a-shaft', { got: zone });
  const far = farReadings(size, readings ?? [], ring);
  return far.length > 0 ? { ok: false, problems: far } : undefined;
}

function limitWorking(seat: Seat, { seat: s, ring, fit }: RingFit): WorkingStep[] {
  return seat === 'shaft'
    ? [
        step(shaftMost, { es: s.upper, t_l: ring.lower }, fit.most),
        step(shaftLeast, { ei: s.lower, t_u: ring.upper }, fit.least),
      ]
    : [
        step(housingMost, { t_u: ring.upper, EI: s.lower }, fit.most),
        step(housingLeast, { t_l: ring.lower, ES: s.upper }, fit.least),
      ];
}

/** The seat as read; the ring as read, or anywhere within its class. */
function measure(
  { seat, size, readings, ring, gauge }: FitInputs,
  made: RingFit,
): Measured & { readonly middle: number } {
  const form = seatForm(readings ?? []);
  const span =
    ring === undefined
      ? { smallest: size + made.ring.lower, largest: size + made.ring.upper }
      : { smallest: ring, largest: ring };
  return {
    seat,
    size,
    form,
    fit: measuredInterference(seat, form, span),
    ringKnown: ring !== undefined,
    gauge: gauge ?? 0,
    middle: (span.smallest + span.largest) / 2,
  };
}

function measuredStep({ seat, form, fit, middle }: ReturnType<typeof measure>): WorkingStep {
  return step(seat === 'shaft' ? measuredShaft : measuredHousing, { d_s: form.mean, d_r: middle }, fit.mean);
}

/** The readings against the zone given, and against the table's where that is another one. */
function judge(
  measured: Measured,
  { material }: FitInputs,
  zone: string,
  made: RingFit,
  advised: { readonly zone: string; readonly made: RingFit } | undefined,
): JudgedSeat {
  return {
    measured,
    material,
    zone,
    tolerance: made.seat.upper - made.seat.lower,
    judged: judgeSeat(measured, made),
    other:
      advised && advised.zone !== zone ? { zone: advised.zone, judged: judgeSeat(measured, advised.made) } : undefined,
  };
}

/** A ring held tightly in the mean takes clearance: the fit follows from the load, and the group from the fit. */
function clearanceNote(size: number, { least, most }: Fit): Value[] {
  // Two sizes are compared, not their difference with nothing: equal ones may differ in the last bit.
  if (!isOver(size + most, size - least)) return [];
  const note = { key: 'clearance', label: 'Clearance in the bearing', code: 'takes-clearance', level: 'note' } as const;
  return [{ kind: 'verdict', ...note, source: 'common-practice' }];
}

function cautionsFor({ seat, material }: FitInputs, fit: Fit): Caution[] {
  if (kindOfFit(fit) === 'clearance') return [];
  return [
    ...(seat === 'housing' && material === 'magnesium' ? [{ hazard: 'magnesium', level: 'warning' } as const] : []),
    { hazard: seat === 'housing' ? 'heating-housings' : 'heating-bearings', level: 'warning' },
    { hazard: 'press-force', level: 'warning' },
    { hazard: 'hot-parts', level: 'caution' },
  ];
}
