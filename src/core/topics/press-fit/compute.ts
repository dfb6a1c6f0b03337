import { step, type WorkingStep } from '../../contract/formula.ts';
import type { InputsOf } from '../../contract/field.ts';
import { refuse, type Refusal, type Result, type Value } from '../../contract/result.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { guarded } from '../../contract/guarded.ts';
import { materialOf } from '../../materials/index.ts';
import { fields } from './fields.ts';
import {
  facePressure,
  heldTorque,
  hubShape,
  hubStress,
  pressForce,
  shaftShape,
  smoothed,
  yieldShare,
} from './formulas.ts';
import { frictions, slideForce, slideTorque, smoothing } from './grip.ts';
import { hoop, hubEquivalent, hubFactor, pressure, shaftFactor, type Joint } from './pressure.ts';
import { forceVerdicts, stressVerdict } from './verdicts.ts';

type PressInputs = InputsOf<typeof fields>;

/** Friction and the size of a wall in a casting are known to a quarter at best: two figures are plenty. */
const figures = 2;
/** A wall or a ring thinner than a thousandth of the joint is a slip of the pen. */
const leastWall = 0.001;

export const compute = guarded(fields, (inputs): Result => {
  const refused = refusal(inputs);
  if (refused) return refused;
  const { diameter: d, length: L } = inputs;
  const [hub, shaft] = [materialOf(inputs.hub), materialOf(inputs.shaft)];
  const joint: Joint = {
    diameter: d,
    hubOutside: inputs.hubOutside,
    shaftBore: inputs.shaftBore,
    hubE: hub.E,
    hubNu: hub.nu,
    shaftE: shaft.E,
    shaftNu: shaft.nu,
  };
  const [muLow, muHigh] =
    inputs.surface === 'own' ? [inputs.frictionLow ?? 0.1, inputs.frictionHigh ?? 0.15] : frictions[inputs.surface];
  const lost = inputs.smoothing ? smoothing(inputs.roughShaft ?? 0, inputs.roughHub ?? 0) : 0;
  // Interference and loss are compared, not their difference with nothing: equal ones may differ in the last bit.
  const tight = isOver(inputs.most, lost);
  const effective = (delta: number) => Math.max(0, delta - lost);
  const mean = (inputs.least + inputs.most) / 2;
  const [low, mid, high] = [inputs.least, mean, inputs.most].map((delta) => pressure(joint, effective(delta))) as [
    number,
    number,
    number,
  ];
  const strength = inputs.hubStrength ?? hub.strength;
  const share = hubEquivalent(joint, high) / strength;
  const stress = hoop(joint, high);
  const force = slideForce(d, L, high, muHigh);
  const torque = slideTorque(d, L, low, muLow);

  const [k_h, k_s] = [hubFactor(joint), shaftFactor(joint)];
  const rough = { R_s: inputs.roughShaft ?? 0, R_h: inputs.roughHub ?? 0 };
  const working: WorkingStep[] = [
    ...(inputs.smoothing && tight ? [step(smoothed, { delta: inputs.most, ...rough }, effective(inputs.most))] : []),
    step(hubShape, { D_o: inputs.hubOutside, d }, k_h),
    step(shaftShape, { d, d_i: inputs.shaftBore }, k_s),
    step(
      facePressure,
      { delta_e: effective(inputs.most), d, k_h, nu_h: hub.nu, E_h: hub.E, k_s, nu_s: shaft.nu, E_s: shaft.E },
      high,
    ),
    step(hubStress, { p: high, k_h }, stress.hubBore),
    step(yieldShare, { p: high, k_h, R_e: strength }, share),
    step(pressForce, { mu_h: muHigh, d, L, p: high }, force),
    step(heldTorque, { mu_l: muLow, d, L, p_l: low }, torque),
  ];
  const strengthSource = inputs.hubStrength === undefined ? 'materials-memory' : undefined;
  const stressed = stressVerdict(share, inputs.hub, strengthSource);
  // Figures of a fit that must not be pressed, or that holds nothing, head nothing.
  const heads = tight && stressed.level !== 'stop';
  const values: Value[] = [
    ...forceVerdicts(force, tight, stressed.level === 'stop'),
    // What slides together is not stressed: nothing to praise.
    ...(tight ? [stressed] : []),
    quantity('pressure', 'Pressure between the parts', mid, low, high, ['MPa', 'psi'], heads),
    {
      ...quantity(
        'pushIn',
        'Force to push it in',
        slideForce(d, L, mid, (muLow + muHigh) / 2),
        slideForce(d, L, low, muLow),
        force,
        ['kN', 'lbf'],
        heads,
      ),
      source: inputs.surface === 'own' ? undefined : 'press-friction',
    },
    {
      ...quantity(
        'pushOut',
        'Force to push it out',
        slideForce(d, L, mid, (muLow + muHigh) / 2),
        slideForce(d, L, low, muLow),
        force,
        ['kN', 'lbf'],
      ),
      note: 'Rust and years of running can double it.',
      source: 'common-practice',
    },
    {
      ...quantity(
        'torque',
        'Torque it holds',
        slideTorque(d, L, mid, (muLow + muHigh) / 2),
        torque,
        slideTorque(d, L, high, muHigh),
        ['N·m', 'lbf·ft'],
        heads,
      ),
      note: 'Count on the low figure only.',
    },
    {
      kind: 'quantity',
      key: 'hubHoop',
      figures,
      label: 'Pull round the bore of the outer part, tightest pair',
      value: stress.hubBore,
      units: ['MPa', 'psi'],
    },
    {
      kind: 'quantity',
      key: 'hubOuterHoop',
      figures,
      label: 'Pull round its outside',
      value: stress.hubOutside,
      units: ['MPa', 'psi'],
    },
    {
      kind: 'quantity',
      key: 'shaftHoop',
      figures,
      label: 'Push round the inner part, at the joint',
      value: stress.shaftSurface,
      units: ['MPa', 'psi'],
    },
    ...(inputs.shaftBore > 0
      ? [
          {
            kind: 'quantity',
            key: 'shaftBoreHoop',
            figures,
            label: 'Push round its hole',
            value: stress.shaftBore,
            units: ['MPa', 'psi'],
          } as const,
        ]
      : []),
    {
      kind: 'quantity',
      key: 'yieldShare',
      label: "Share of the outer part's yield strength",
      value: share,
      units: ['%', '%'],
      decimals: [0, 0],
      source: strengthSource,
    },
    {
      kind: 'quantity',
      key: 'lost',
      label: 'Interference lost to smoothing',
      value: lost,
      units: ['µm', 'thou'],
      source: 'din-7190-smoothing',
    },
  ];
  return { ok: true, values, working, cautions: tight ? [{ hazard: 'press-force', level: 'warning' }] : [] };
});

function quantity(
  key: string,
  label: string,
  value: number,
  low: number,
  high: number,
  units: readonly ['MPa', 'psi'] | readonly ['kN', 'lbf'] | readonly ['N·m', 'lbf·ft'],
  main = false,
): Value {
  return { kind: 'quantity', key, label, value, low, high, units, main, figures };
}

function refusal({
  diameter,
  hubOutside,
  shaftBore,
  least,
  most,
  surface,
  frictionLow,
  frictionHigh,
}: PressInputs): Refusal | undefined {
  if (!isOver(hubOutside, diameter * (1 + leastWall)))
    return refuse('hubOutside', 'no-wall', { outside: hubOutside, joint: diameter });
  if (!isUnder(shaftBore, diameter * (1 - leastWall)))
    return refuse('shaftBore', 'no-inner-wall', { bore: shaftBore, joint: diameter });
  if (isOver(least, most)) return refuse('least', 'least-above-most', { least, most });
  if (surface === 'own' && isOver(frictionLow ?? 0, frictionHigh ?? 0))
    return refuse('frictionLow', 'friction-order', { low: frictionLow ?? 0, high: frictionHigh ?? 0 });
  return undefined;
}
