/** Growing and shrinking with temperature. */

/**
 * Temperature change that opens a seat by its interference and a gap to drop in with.
 * Formula: dT = (I + c) / (alpha * d).
 * @param diameter d [m], > 0
 * @param interference tightest interference I [m]; clearance counts as negative
 * @param gap assembly gap c [m], >= 0
 * @param alpha expansion of the part that is warmed or cooled [1/K], > 0
 * @returns dT [K]; 0 when the parts go together cold with that gap
 * Assumes that the part has one temperature throughout and the other part stays at room temperature.
 * Example: temperatureChange(0.052, 39e-6, 20e-6, 23.6e-6) -> 48.1 (K; 6061 aluminium).
 * Source: boresi-schmidt, Ex. 11.3.
 */
export function temperatureChange(diameter: number, interference: number, gap: number, alpha: number): number {
  return Math.max(0, (interference + gap) / (alpha * diameter));
}

/**
 * Change of a diameter with temperature. Formula: u = alpha * d * dT.
 * @param diameter [m] @param alpha [1/K] @param change dT [K] @returns u [m]
 * Example: growth(0.052, 23.6e-6, 48.1) -> 59.0e-6.
 */
export function growth(diameter: number, alpha: number, change: number): number {
  return alpha * diameter * change;
}

/**
 * Interference lost when housing and ring warm together and the housing grows more.
 * Formula: I_loss = D * (alpha_h - alpha_r) * dT.
 * @param diameter D [m] @param housing alpha_h [1/K] @param ring alpha_r [1/K] @param rise dT [K]
 * @returns [m]; below zero when the fit gets tighter
 * Example: warmLoss(0.052, 23.6e-6, 12.3e-6, 60) -> 35.3e-6 (a steel ring in 6061). Source: arithmetic.
 */
export function warmLoss(diameter: number, housing: number, ring: number, rise: number): number {
  return diameter * (housing - ring) * rise;
}
