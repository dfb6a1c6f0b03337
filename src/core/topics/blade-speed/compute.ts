import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { depthValues } from './depth-values.ts';
import { fields, type BladeInputs } from './fields.ts';
import { limitHere, rimSpeed, shaftSpeed, shareOfLimit } from './formulas.ts';
import { marksOf, markVerdicts } from './mark-values.ts';
import { drivenRotation, surfaceSpeed } from './surface-speed.ts';

/** Above this share the reading error of a pulley or a rev counter could hide an overspeed. Our choice. */
const nearLimit = 0.95;

export const compute = guarded(fields, (inputs): Result => {
  const { diameter, flange } = inputs;
  if (flange >= diameter) return refuse('flange', 'flange-too-large', { got: flange, max: diameter });

  const working: WorkingStep[] = [];
  const rotation = shaftRotation(inputs, working);
  const speed = surfaceSpeed(diameter, rotation);
  working.push(step(rimSpeed, { D: diameter, n_b: rotation }, speed));

  const marks = marksOf(inputs, working);
  if (!marks) return refuse('markedAs', 'no-mark');
  const limitSpeed = surfaceSpeed(diameter, marks.lowest);
  working.push(step(limitHere, { D: diameter, n_m: marks.lowest }, limitSpeed));
  // Compared as shaft speeds, so that not even the last bit of pi softens the marking.
  const share = rotation / marks.lowest;
  working.push(step(shareOfLimit, { v: speed, v_max: limitSpeed }, share));

  const free = freeRotation(inputs);
  const verdicts = markVerdicts(inputs, marks, free);
  const isStop = (v: Value) => v.kind === 'verdict' && v.level === 'stop';
  // What forbids the blade is read first, not below a good word about its speed.
  const values = [
    ...verdicts.filter(isStop),
    ...speedValues(speed, rotation, marks.lowest, share, free / marks.lowest),
    ...verdicts.filter((v) => !isStop(v)),
    ...depthValues(inputs, working),
  ];
  const stop = free > marks.lowest || verdicts.some(isStop);
  return { ok: true, values, working, cautions: cautionsFor(stop) };
});

function shaftRotation(inputs: BladeInputs, working: WorkingStep[]): number {
  if (inputs.known === 'spindle') return inputs.spindle ?? 0;
  const [n_e, d_e, d_b, s] = [inputs.engine ?? 0, inputs.enginePulley ?? 0, inputs.bladePulley ?? 1, inputs.slip ?? 0];
  const rotation = drivenRotation(n_e, d_e, d_b, s);
  working.push(step(shaftSpeed, { n_e, d_e, d_b, s }, rotation));
  return rotation;
}

/** A belt slips only under load. Out of the cut the shaft turns without slip, so the verdicts go by this speed [1/s]. */
function freeRotation(inputs: BladeInputs): number {
  return inputs.known === 'spindle'
    ? (inputs.spindle ?? 0)
    : drivenRotation(inputs.engine ?? 0, inputs.enginePulley ?? 0, inputs.bladePulley ?? 1, 0);
}

function speedValues(
  speed: number,
  rotation: number,
  limitRotation: number,
  share: number,
  freeShare: number,
): Value[] {
  // The marking is the law: a verdict is never softer than it, not even by rounding.
  const code =
    share > 1
      ? 'over-marked'
      : freeShare > 1
        ? 'over-marked-free'
        : freeShare > nearLimit
          ? 'near-marked'
          : 'within-marked';
  return [
    {
      kind: 'verdict',
      key: 'verdict',
      label: 'Verdict',
      code,
      level: freeShare > 1 ? 'stop' : freeShare > nearLimit ? 'caution' : 'good',
      main: true,
    },
    { kind: 'quantity', key: 'speed', label: 'Surface speed', value: speed, units: ['m/s', 'ft/min'], main: true },
    {
      kind: 'quantity',
      key: 'share',
      label: 'Share of the marked limit',
      value: share,
      units: ['%', '%'],
      decimals: [1, 1],
      main: true,
    },
    { kind: 'quantity', key: 'rotation', label: 'Blade-shaft speed', value: rotation, units: ['rpm', 'rpm'] },
    {
      kind: 'quantity',
      key: 'limitRotation',
      label: 'Marked limit as shaft speed',
      value: limitRotation,
      units: ['rpm', 'rpm'],
    },
  ];
}

function cautionsFor(stop: boolean): Caution[] {
  const always: Caution[] = [{ hazard: 'blade-guard-and-flange', level: 'warning' }];
  return stop ? [{ hazard: 'blade-overspeed', level: 'danger' }, ...always] : always;
}
