/**
 * Forces in the strands. Books use the letters T1 and T2 for two different things, so no such letters here:
 * "working" tensions turn the pulley and load the shaft; tensions "in the belt" have the
 * centrifugal part added, which stretches the belt but never reaches the shaft.
 */

export interface Strands {
  /** [N], as are all four. */
  readonly tightWorking: number;
  readonly slackWorking: number;
  readonly tightInBelt: number;
  readonly slackInBelt: number;
}

/**
 * Tension a belt's own mass makes when it runs.
 * Formula: T_c = m v^2.
 * @param mass per meter [kg/m] @param speed [m/s] @returns T_c [N]
 */
export function centrifugal(mass: number, speed: number): number {
  return mass * speed ** 2;
}

/**
 * Strands at the point of slip.
 * Formula: tight = F R / (R - 1), slack = F / (R - 1) (working); add T_c for the belt.
 * @param pull effective pull F = P / v [N] @param ratio R [1], > 1 @param centrifugalTension T_c [N]
 * Example: 664 lbf, R = 11.35, T_c = 73.4 lbf -> 802 and 138 lbf in the belt. Source: shigley-belts, Example 17-2.
 */
export function strandsAtSlip(pull: number, ratio: number, centrifugalTension: number): Strands {
  return withCentrifugal((pull * ratio) / (ratio - 1), pull / (ratio - 1), centrifugalTension);
}

/**
 * Strands of a belt set to a static tension and pulling.
 * Formula: working = T_0 - T_c +/- F / 2 (the sum of both strands stays what it was when set).
 * @param staticTension T_0 of one strand at rest [N] @param pull F [N] @param centrifugalTension T_c [N]
 * @returns strands [N]; a slack side below zero means it can't pull that much
 * Source: khurmi-machines, Example 11.13.
 */
export function strandsWhenSet(staticTension: number, pull: number, centrifugalTension: number): Strands {
  const mean = staticTension - centrifugalTension;
  return withCentrifugal(mean + pull / 2, mean - pull / 2, centrifugalTension);
}

function withCentrifugal(tight: number, slack: number, centrifugalTension: number): Strands {
  return {
    tightWorking: tight,
    slackWorking: slack,
    tightInBelt: tight + centrifugalTension,
    slackInBelt: slack + centrifugalTension,
  };
}

/**
 * Static tension of one strand by the trade formula.
 * Formula: T_s = (2.5 - G) / (2 G) P / (z v) + m v^2; the well-known 500 (2.5 - G) / G with P in kW.
 * @param power design power P, service factor included [W] @param belts z, belts or ribs
 * @param speed v [m/s], > 0 @param factor arc factor G, 0 < G < 1.25 @param mass m of one belt or rib [kg/m]
 * @returns T_s of one belt or rib [N]
 * Example: 6.6 kW, 4 belts, 5.278 m/s, 0.93, 0.17 kg/m -> 268.6 N. Source: gb-t-13575-1; US form bloch-geitner-v4.
 */
export function staticByTrade(power: number, belts: number, speed: number, factor: number, mass: number): number {
  return (((2.5 - factor) / (2 * factor)) * power) / (belts * speed) + centrifugal(mass, speed);
}

/**
 * Static tension of one strand by the capstan law: half the sum of both strands at slip, plus T_c.
 * Formula: T_0 = F / 2 (R + 1) / (R - 1) + T_c.
 * @param pull F of one belt or rib [N] @param ratio R [1], > 1 @param centrifugalTension T_c [N] @returns T_0 [N]
 * Source: khurmi-machines, Example 11.13; shigley-belts, eq. 17-10.
 */
export function staticByCapstan(pull: number, ratio: number, centrifugalTension: number): number {
  return ((pull / 2) * (ratio + 1)) / (ratio - 1) + centrifugalTension;
}

/**
 * Greatest pull a belt set to a static tension can give before it slips.
 * Formula: F = 2 (T_0 - T_c) (R - 1) / (R + 1).
 * @param staticTension T_0 of one strand at rest [N] @param ratio R [1], >= 1 @param centrifugalTension T_c [N]
 * @returns F [N]; 0 when the centrifugal tension takes all there is
 * Example: 500 lbf, mu 0.3, 165 degrees, no T_c, 3600 ft/min -> 44.4 hp. Source: bevan-machines, ch. 7 Example 1.
 */
export function pullBeforeSlip(staticTension: number, ratio: number, centrifugalTension: number): number {
  return Math.max(0, (2 * (staticTension - centrifugalTension) * (ratio - 1)) / (ratio + 1));
}

/**
 * Greatest pull when the belt's strength is the limit.
 * Formula: F = (T_max - T_c) (1 - 1 / R).
 * @param most greatest tension allowed in the belt T_max [N] @param ratio R [1], >= 1 @param centrifugalTension T_c [N]
 * @returns F [N], 0 when T_c takes it all
 * Source: khurmi-machines, Example 11.17.
 */
export function pullAtStrength(most: number, ratio: number, centrifugalTension: number): number {
  return Math.max(0, (most - centrifugalTension) * (1 - 1 / ratio));
}

/**
 * Belt speed at which the most power goes over, for a fixed greatest (or static) tension.
 * Formula: v = sqrt(T / (3 m)).
 * @param tension T [N] @param mass [kg/m], > 0 @returns v [m/s]
 * Example: 1200 N, 0.6 kg/m -> 25.82 m/s. Source: khurmi-machines, Example 11.10.
 */
export function bestSpeed(tension: number, mass: number): number {
  return Math.sqrt(tension / (3 * mass));
}

/**
 * Pull on the shaft at rest.
 * Formula: F = 2 z T_0 sin(theta / 2).
 * @param staticTension T_0 of one belt [N] @param belts z @param wrap theta [rad]
 * @returns F [N] Example: 268.6 N, 4 belts, 151.9 degrees -> 2084.5 N. Source: gb-t-13575-1.
 */
export function shaftLoadStatic(staticTension: number, belts: number, wrap: number): number {
  return 2 * belts * staticTension * Math.sin(wrap / 2);
}

/**
 * Pull on the shaft when running: the two working tensions added as arrows.
 * Formula: F = z sqrt(T_1^2 + T_2^2 - 2 T_1 T_2 cos(theta)).
 * @param tight, slack working tensions T_1, T_2 of one belt [N] @param belts z @param wrap theta [rad]
 * @returns F [N]; tight + slack at 180 degrees
 * Example: 300 and 60 N, one belt, 180 degrees -> 360 N. Source: geometry.
 */
export function shaftLoadRunning(tight: number, slack: number, belts: number, wrap: number): number {
  return belts * Math.sqrt(tight ** 2 + slack ** 2 - 2 * tight * slack * Math.cos(wrap));
}
