import { step } from '../../contract/formula.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver } from '../../thresholds/index.ts';
import { depthValues } from './depth-values.ts';
import { fields, type BladeInputs } from './fields.ts';
import { limitHere, rimSpeed, shaftSpeed, shareOfLimit } from './formulas.ts';
import { marksOf, markVerdicts } from './mark-values.ts';
import { drivenRotation, surfaceSpeed } from './surface-speed.ts';

/** Above this share the reading error of a pulley or a tachometer could hide an overspeed. Our choice. */
export const nearLimit = 0.95;

export const compute = guarded(fields, (inputs): Result => {
  const { diameter, flange } = inputs;
  if (flange >= diameter) return refuse('flange', 'flange-too-large', { got: flange, max: diameter });

  const shaft = shaftRotation(inputs);
  const speed = surfaceSpeed(diameter, shaft.value);
  const marks = marksOf(inputs);
  if (!marks.value) return refuse('markedAs', 'no-mark');
  const { lowest } = marks.value;
  const limitSpeed = surfaceSpeed(diameter, lowest);
  // Compared as shaft speeds, so that not even the last bit of pi softens the marking.
  const share = shaft.value / lowest;

  const free = freeRotation(inputs);
  const verdicts = markVerdicts(inputs, marks.value, free);
  const depth = depthValues(inputs);
  const stop = isOver(free, lowest) || verdicts.some(isStop);
  return {
    ok: true,
    // What forbids the blade is read first, not below a good word about its speed.
    values: [
      ...verdicts.filter(isStop),
      ...speedValues(speed, shaft.value, lowest, free, verdicts.some(isStop)),
      ...verdicts.filter((v) => !isStop(v)),
      ...depth.value,
    ],
    working: [
      ...shaft.steps,
      step(rimSpeed, { D: diameter, n_b: shaft.value }, speed),
      ...marks.steps,
      step(limitHere, { D: diameter, n_m: lowest }, limitSpeed),
      step(shareOfLimit, { v: speed, v_max: limitSpeed }, share),
      ...depth.steps,
    ],
    cautions: cautionsFor(stop),
  };
});

const isStop = (v: Value) => v.kind === 'verdict' && v.level === 'stop';

/** Speed of the blade shaft under load [1/s]. */
function shaftRotation(inputs: BladeInputs): Worked<number> {
  if (inputs.known === 'spindle') return { value: inputs.spindle ?? 0, steps: [] };
  const [n_e, d_e, d_b, s] = [inputs.engine ?? 0, inputs.enginePulley ?? 0, inputs.bladePulley ?? 1, inputs.slip ?? 0];
  const value = drivenRotation(n_e, d_e, d_b, s);
  return { value, steps: [step(shaftSpeed, { n_e, d_e, d_b, s }, value)] };
}

/** A belt slips only under load. Out of the cut the shaft turns without slip, so the verdicts go by this speed [1/s]. */
function freeRotation(inputs: BladeInputs): number {
  return inputs.known === 'spindle'
    ? (inputs.spindle ?? 0)
    : drivenRotation(inputs.engine ?? 0, inputs.enginePulley ?? 0, inputs.bladePulley ?? 1, 0);
}

/** @param forbidden something else forbids the blade: then its speed is a figure, and no good word. */
function speedValues(speed: number, rotation: number, limit: number, free: number, forbidden: boolean): Value[] {
  const over = isOver(free, limit);
  const near = isOver(free, nearLimit * limit);
  const code = over
    ? isOver(rotation, limit)
      ? 'over-marked'
      : 'over-marked-free'
    : near
      ? 'near-marked'
      : 'within-marked';
  return [
    {
      kind: 'verdict',
      key: 'verdict',
      label: 'Verdict',
      code,
      level: over ? 'stop' : near ? 'caution' : forbidden ? 'note' : 'good',
      main: true,
    },
    { kind: 'quantity', key: 'speed', label: 'Surface speed', value: speed, units: ['m/s', 'ft/min'], main: true },
    {
      kind: 'quantity',
      key: 'share',
      label: 'Share of the marked limit',
      value: rotation / limit,
      units: ['%', '%'],
      decimals: [1, 1],
      main: true,
    },
    { kind: 'quantity', key: 'rotation', label: 'Blade-shaft speed', value: rotation, units: ['rpm', 'rpm'] },
    {
      kind: 'quantity',
      key: 'limitRotation',
      label: 'Marked limit as shaft speed',
      value: limit,
      units: ['rpm', 'rpm'],
    },
  ];
}

function cautionsFor(stop: boolean): Caution[] {
  const always: Caution[] = [{ hazard: 'blade-guard-and-flange', level: 'warning' }];
  return stop ? [{ hazard: 'blade-overspeed', level: 'danger' }, ...always] : always;
}
