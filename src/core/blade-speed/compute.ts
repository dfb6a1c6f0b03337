import { step, type WorkingStep } from '../formula.ts';
import type { InputsOf } from '../field.ts';
import { refuse, type Caution, type Result, type Value } from '../result.ts';
import { guarded } from '../topic.ts';
import { cutDepth } from './depth.ts';
import { fields } from './fields.ts';
import { depthOfCut, rimSpeed, shaftSpeed, shareOfLimit } from './formulas.ts';
import { drivenRotation, rotationForSpeed, surfaceSpeed } from './surface-speed.ts';

type BladeInputs = InputsOf<typeof fields>;

/** Above this share the reading error of a pulley or a rev counter could hide an overspeed. Our choice. */
const nearLimit = 0.95;

export const compute = guarded(fields, (inputs): Result => {
  const { diameter, flange, clearance } = inputs;
  if (flange >= diameter) return refuse('flange', 'flange-too-large', { got: round(flange * 1000), max: round(diameter * 1000) });

  const working: WorkingStep[] = [];
  const rotation = shaftRotation(inputs, working);
  const speed = surfaceSpeed(diameter, rotation);
  working.push(step(rimSpeed, { D: diameter, n_b: rotation }, speed));

  const limitSpeed = inputs.markedAs === 'rpm' ? surfaceSpeed(diameter, inputs.markedRotation ?? 0) : (inputs.markedSpeed ?? 0);
  const share = speed / limitSpeed;
  working.push(step(shareOfLimit, { v: speed, v_max: limitSpeed }, share));

  const depth = cutDepth(diameter, flange, clearance);
  working.push(step(depthOfCut, { D: diameter, F: flange, c: clearance }, depth));

  return { ok: true, values: [...speedValues(speed, rotation, limitSpeed, share, diameter), ...depthValues(depth)], working, cautions: cautionsFor(share) };
});

function shaftRotation(inputs: BladeInputs, working: WorkingStep[]): number {
  if (inputs.known === 'spindle') return inputs.spindle ?? 0;
  const [n_e, d_e, d_b, s] = [inputs.engine ?? 0, inputs.enginePulley ?? 0, inputs.bladePulley ?? 1, inputs.slip ?? 0];
  const rotation = drivenRotation(n_e, d_e, d_b, s);
  working.push(step(shaftSpeed, { n_e, d_e, d_b, s }, rotation));
  return rotation;
}

function speedValues(speed: number, rotation: number, limitSpeed: number, share: number, diameter: number): Value[] {
  // The marking is the law: a verdict is never softer than it, not even by rounding.
  const code = share > 1 ? 'over-marked' : share > nearLimit ? 'near-marked' : 'within-marked';
  return [
    { kind: 'verdict', key: 'verdict', label: 'Verdict', code, level: share > 1 ? 'stop' : share > nearLimit ? 'caution' : 'good', main: true },
    { kind: 'quantity', key: 'speed', label: 'Surface speed', value: speed, units: ['m/s', 'ft/min'], main: true },
    { kind: 'quantity', key: 'share', label: 'Share of the marked limit', value: share, units: ['%', '%'], decimals: [1, 1], main: true },
    { kind: 'quantity', key: 'rotation', label: 'Blade-shaft speed', value: rotation, units: ['rpm', 'rpm'] },
    { kind: 'quantity', key: 'limitRotation', label: 'Marked limit as shaft speed', value: rotationForSpeed(limitSpeed, diameter), units: ['rpm', 'rpm'] },
  ];
}

function depthValues(depth: number): Value[] {
  if (depth <= 0) return [{ kind: 'verdict', key: 'noDepth', label: 'Depth of cut', code: 'no-depth', level: 'caution' }];
  return [{ kind: 'quantity', key: 'depth', label: 'Greatest depth of cut', value: depth, units: ['mm', 'in'], decimals: [0, 2] }];
}

function cautionsFor(share: number): Caution[] {
  const always: Caution[] = [{ hazard: 'blade-guard-and-flange', level: 'warning' }];
  return share > 1 ? [{ hazard: 'blade-overspeed', level: 'danger' }, ...always] : always;
}

function round(mm: number): number {
  return Number(mm.toPrecision(6));
}
