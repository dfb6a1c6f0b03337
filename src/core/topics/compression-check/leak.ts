/** What a crankcase under test loses, and the air an engine takes, so that the one can be judged by the other. */

/**
 * Air lost by a closed space whose pressure falls, as air at the pressure outside. A mean over the fall.
 * Formula: Q = V dp / (p t), the air keeping its temperature.
 * @param volume V of crankcase and cylinder together [m3], > 0 @param fall dp, what the gauge lost [Pa], at least 0
 * @param time t [s], > 0; at 0 the answer is Infinity @param air p, pressure outside [Pa], > 0 @returns Q [m3/s]
 * Example: 250 cm3 lose 1 psi in 60 s at 101.325 kPa -> 0.2835 cm3/s. Source: arithmetic.
 */
export function leakFlow(volume: number, fall: number, time: number, air: number): number {
  return (volume * fall) / (air * time);
}

/**
 * Air a two-stroke takes, one filling a turn.
 * Formula: Q = V_h n k.
 * @param swept V_h [m3], at least 0 @param rotation n [1/s], at least 0
 * @param delivery k, share of the swept volume that is filled [1]; about 0.2 at idle and 0.7 at full throttle (memory)
 * @returns Q [m3/s] Example: 70 cm3, 2700 rpm, 0.2 -> 630 cm3/s. Source: arithmetic.
 */
export function airTaken(swept: number, rotation: number, delivery: number): number {
  return swept * rotation * delivery;
}

/**
 * Time in which a tenth of the pressure goes, at the pace watched. A fall slows as the pressure sinks, so a watch over less than
 * a tenth gives the truest figure.
 * Formula: t_10 = 0.1 g t / dg.
 * @param pumped g, gauge at the start [Pa], > 0 @param lost dg, what it lost [Pa]; 0 gives Infinity @param time t [s], > 0
 * @returns t_10 [s] Example: 48 kPa lose 2.4 kPa in 60 s -> 120 s. Source: arithmetic.
 */
export function timeForTenth(pumped: number, lost: number, time: number): number {
  return (0.1 * pumped * time) / lost;
}
