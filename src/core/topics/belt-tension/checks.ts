/** Three ways to feel the tension of a belt that stands still, forwards and back. */

/**
 * Force that pushes the middle of a span down by a given amount (taut string).
 * Formula: P = 2 (T + Y) sin(atan(2 h / S)).
 * @param tension T [N] @param deflection h [m], >= 0 @param span S [m], > 0
 * @param extra Y, allowance for the belt's own stiffness [N]
 * @returns P [N]
 * Example: 400 N at 1/64 of the span -> 24.988 N; the book's T / 16 gives 25.0. Source: bloch-geitner-v4, p. 326.
 */
export function deflectionForce(tension: number, deflection: number, span: number, extra: number): number {
  return 2 * (tension + extra) * Math.sin(Math.atan((2 * deflection) / span));
}

/** The same read backwards: T = P / (2 sin(atan(2 h / S))) - Y [N]; h > 0. */
export function tensionFromDeflection(force: number, deflection: number, span: number, extra: number): number {
  return force / (2 * Math.sin(Math.atan((2 * deflection) / span))) - extra;
}

/**
 * Note of a plucked span, pinned ends, bending stiffness allowed for.
 * Formula: f = 1 / (2 S) sqrt((T + pi^2 EI / S^2) / m).
 * @param tension T [N] @param mass m [kg/m], > 0 @param span S [m], > 0
 * @param bending EI [N m^2], >= 0; 0 for a limp belt. T, m and EI all for one rib, or all for the whole belt.
 * @returns f [Hz]
 * Example: 16 N, 0.04 kg/m, 0.4 m -> 25.00 Hz (verma-physics, Example 15.7). Stiff form: blevins-modes, eq. 8.20.
 */
export function spanFrequency(tension: number, mass: number, span: number, bending: number): number {
  return Math.sqrt((tension + (Math.PI ** 2 * bending) / span ** 2) / mass) / (2 * span);
}

/**
 * Tension from the note: T = 4 m S^2 f^2 - pi^2 EI / S^2.
 * @returns T [N]; below zero when the stiffness alone would sound higher than that
 */
export function tensionFromFrequency(frequency: number, mass: number, span: number, bending: number): number {
  return 4 * mass * span ** 2 * frequency ** 2 - (Math.PI ** 2 * bending) / span ** 2;
}

/**
 * How far two marks on a slack belt move apart when it is tightened (Hooke).
 * Formula: x = l T / EA.
 * @param tension T of one strand [N] @param apart l, between the marks on the slack belt [m]
 * @param axial EA, force that would double the belt's length [N], > 0
 * @returns x [m]
 */
export function stretch(tension: number, apart: number, axial: number): number {
  return (apart * tension) / axial;
}

/** Tension from the stretch of two marks: T = EA x / l [N]. */
export function tensionFromStretch(growth: number, apart: number, axial: number): number {
  return (axial * growth) / apart;
}

/**
 * Belt stiffness from a pull on the bench: hang a weight on the cut or looped belt and measure.
 * Formula: EA = F l / x. @returns EA [N]
 */
export function axialStiffness(force: number, apart: number, growth: number): number {
  return (force * apart) / growth;
}

/**
 * Center movement that changes the belt path by a given length.
 * Formula: dC = dL / (2 sin(theta / 2)); theta the wrap of the small pulley.
 * @returns dC [m]
 */
export function centreMove(lengthChange: number, wrap: number): number {
  return lengthChange / (2 * Math.sin(wrap / 2));
}
