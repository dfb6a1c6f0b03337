import { step, type WorkingStep } from '../../contract/formula.ts';
import { explainLimits, whyRefused, type Fit } from '../limits-fits/index.ts';
import { refuse, type Caution, type Refusal, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { adviceValues } from './advice-values.ts';
import { fields, type FitInputs } from './fields.ts';
import { housingLeast, housingMost, measuredHousing, measuredShaft, shaftLeast, shaftMost } from './formulas.ts';
import { farReadings, measuredInterference, seatForm, type SeatForm } from './readings.ts';
import { isFor, ringFit, type RingFit } from './ring-fit.ts';
import { limitValues, readingValues, seatTable } from './values.ts';
import { choiceVerdict, fitVerdict, seatVerdicts } from './verdicts.ts';
import { warmValues } from './warm-values.ts';

export const compute = guarded(fields, (inputs): Result => {
  const { seat, size, zone, ringClass } = inputs;
  const refused = refusal(inputs);
  if (refused) return refused;
  const made = ringFit(seat, size, zone, ringClass);
  const explained = explainLimits(size, zone);
  if (!made || !explained) return refuse('size', 'ring-outside-table', { got: size });

  const working: WorkingStep[] = limitWorking(seat, made);
  const measured = inputs.basis === 'readings' ? measure(inputs, made, explained.tolerance, working) : undefined;
  const fit = measured?.fit ?? made.fit;
  const advice = adviceValues(inputs, working);
  const values: Value[] = [
    ...(measured?.values ?? []),
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
    fitVerdict(made.fit),
    ...choiceVerdict(made.fit, advice.fit, explained.zone.name, advice.zone),
    ...warmValues(inputs, fit, working),
    ...advice.values,
    ...limitValues(size, explained.zone.name, made),
    seatTable(seat, size, ringClass),
  ];
  return { ok: true, values, working, cautions: cautionsFor(inputs, fit) };
});

function refusal({ seat, size, zone, readings, ring }: FitInputs): Refusal | undefined {
  const problem = whyRefused(size, zone, { size: 'size', zone: 'zone' });
  if (problem) return { ok: false, problems: [problem] };
  if (!isFor(seat, zone)) return refuse('zone', seat === 'shaft' ? 'zone-of-a-hole' : 'zone-of-a-shaft', { got: zone });
  const far = farReadings(size, readings ?? [], ring);
  return far.length > 0 ? { ok: false, problems: far } : undefined;
}

function limitWorking(seat: 'shaft' | 'housing', { seat: s, ring, fit }: RingFit): WorkingStep[] {
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

function measure(
  { seat, size, readings, ring, material }: FitInputs,
  made: RingFit,
  tolerance: number,
  working: WorkingStep[],
): { fit: Fit; values: Value[]; form: SeatForm } {
  const form = seatForm(readings ?? []);
  const span =
    ring === undefined
      ? { smallest: size + made.ring.lower, largest: size + made.ring.upper }
      : { smallest: ring, largest: ring };
  const fit = measuredInterference(seat, form, span);
  const middle = (span.smallest + span.largest) / 2;
  working.push(step(seat === 'shaft' ? measuredShaft : measuredHousing, { d_s: form.mean, d_r: middle }, fit.mean));
  const verdicts = seatVerdicts({
    seat,
    material,
    form,
    measured: fit,
    wanted: made.fit,
    tolerance,
    ringSpread: span.largest - span.smallest,
  });
  return { fit, form, values: [...verdicts, ...readingValues(form)] };
}

function cautionsFor({ seat, material }: FitInputs, fit: Fit): Caution[] {
  if (fit.most <= 0) return [];
  return [
    ...(seat === 'housing' && material === 'magnesium' ? [{ hazard: 'magnesium', level: 'warning' } as const] : []),
    { hazard: 'heating-housings', level: 'warning' },
    { hazard: 'press-force', level: 'warning' },
    { hazard: 'hot-parts', level: 'caution' },
  ];
}
