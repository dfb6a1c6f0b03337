import { bearings } from '../bearing-size/index.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { InputsOf } from '../../contract/field.ts';
import { refuse, type Result, type Value, type VerdictValue } from '../../contract/result.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { guarded } from '../../contract/guarded.ts';
import { equivalentLoad, loadFactors } from './equivalent.ts';
import { fields } from './fields.ts';
import {
  basic,
  equivalent,
  fastViscosity,
  limitLoad,
  limitLoadLarge,
  radialLoad,
  ratio,
  slowViscosity,
} from './formulas.ts';
import { basicLife, branchSpeed, fatigueLimit, kappaLimits, largePitch, referenceViscosity } from './life.ts';
import { hourFigures, lifeValues } from './life-values.ts';
import { ratingOf } from './ratings.ts';

type LifeInputs = InputsOf<typeof fields>;

const force = ['N', 'lbf'] as const;
const minute = 1 / 60;

export const compute = guarded(fields, (inputs): Result => {
  const bearing = bearingFigures(inputs);
  if (!bearing) return refuse('bore', 'no-rating', { got: inputs.bore ?? '' });
  const { dynamic, static: still, pitch } = bearing;
  const { speed, axial } = inputs;
  const radial = inputs.share * inputs.belt;
  const { X, Y, V } = loadFactors(radial, axial, still, inputs.outerTurns);
  const load = equivalentLoad(radial, axial, { X, Y, V });
  const life = basicLife(dynamic, load, speed);
  const wanted = referenceViscosity(speed, pitch);
  const kappa = inputs.viscosity / wanted;
  if (isUnder(kappa, kappaLimits.least)) return refuse('viscosity', 'too-thin', { wanted, got: inputs.viscosity });
  const Cu = fatigueLimit(still, pitch);

  const slow = isUnder(speed, branchSpeed);
  const kept = lifeValues({ kappa, Cu, load, life, pitch, dirt: inputs.dirt });
  const working: WorkingStep[] = [
    step(radialLoad, { s: inputs.share, F_b: inputs.belt }, radial),
    step(equivalent, { X, V, F_r: radial, Y, F_a: axial }, load),
    step(basic, { C: dynamic, P: load, n: speed }, life),
    step(
      slow ? slowViscosity : fastViscosity,
      { nu_r: (slow ? 45000 : 4500) * 1e-6, n: speed, n_r: minute, D_pw: pitch, D_r: 1e-3 },
      wanted,
    ),
    step(ratio, { nu: inputs.viscosity, nu_1: wanted }, kappa),
    isOver(pitch, largePitch)
      ? step(limitLoadLarge, { C_0: still, D_100: largePitch, D_pw: pitch }, Cu)
      : step(limitLoad, { C_0: still }, Cu),
    ...kept.steps,
  ];
  const source = inputs.rating === 'textbook' ? 'shigley-ratings' : undefined;
  const verdict = loadVerdict(load, dynamic, still);
  // Dented at once, it has no life to speak of, and no seal is worth anything to it.
  const dents = verdict.level === 'stop';
  const lives = dents ? kept.values.filter((v) => v.key !== 'worth').map((v) => ({ ...v, main: false })) : kept.values;
  const values: Value[] = [
    ...(dents ? [verdict] : []),
    ...lives,
    {
      kind: 'quantity',
      key: 'basicLife',
      label: 'Basic life, about',
      figures: hourFigures,
      value: life,
      units: ['h', 'h'],
      source,
      note: 'Nine in ten reach it in clean oil of the right thickness.',
    },
    ...(dents ? [] : [verdict]),
    { kind: 'quantity', key: 'load', label: 'Equivalent load', value: load, units: force },
    { kind: 'quantity', key: 'dynamic', label: 'Dynamic load rating', value: dynamic, units: ['kN', 'lbf'], source },
    { kind: 'quantity', key: 'static', label: 'Static load rating', value: still, units: ['kN', 'lbf'], source },
    { kind: 'number', key: 'kappa', label: 'Viscosity ratio', value: kappa, decimals: 2 },
  ];
  return { ok: true, values, working, cautions: [] };
});

function bearingFigures({
  rating,
  bore,
  dynamicRating,
  staticRating,
  pitch,
}: LifeInputs): { dynamic: number; static: number; pitch: number } | undefined {
  if (rating === 'own') return { dynamic: dynamicRating ?? 0, static: staticRating ?? 0, pitch: pitch ?? 0 };
  const mm = Number(bore);
  const found = ratingOf(mm);
  const sizes = bearings.find((b) => b.designation.startsWith('62') && Math.round(b.bore * 1000) === mm);
  return found && sizes && { ...found, pitch: (sizes.bore + sizes.outside) / 2 };
}

/** Share of the dynamic rating up to which the life sum holds. Source: iso-281. */
const highShare = 0.5;

/** The life sum holds to half the dynamic rating; above the static rating the balls dent the races. */
function loadVerdict(load: number, dynamic: number, still: number): VerdictValue {
  const base = { kind: 'verdict', key: 'loadVerdict', label: 'Load', data: { share: load / dynamic } } as const;
  if (isOver(load, still)) return { ...base, code: 'load-dents', level: 'stop', main: true };
  return isOver(load, highShare * dynamic)
    ? { ...base, code: 'load-high', level: 'caution' }
    : { ...base, code: 'load-fine', level: 'good' };
}
