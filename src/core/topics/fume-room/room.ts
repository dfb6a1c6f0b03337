/**
 * Carbon monoxide in a room that is mixed all through: dC/dt = G/V - n C. Perfect mixing flatters the air beside
 * the engine: what a person breathes there is worse. Nothing here is a permit.
 */

export interface Room {
  /** V [m3], > 0 */
  readonly volume: number;
  /** n, times the air is changed [1/s] */
  readonly changes: number;
}

/**
 * Concentration after a time: C = C_s + (C_0 - C_s) e^(-n t), C_s = G/(n V); without fresh air C_0 + G t/V.
 * @param source G, carbon monoxide given off [m3/s] @param time t [s] @param start C_0 [1] @returns C [1]
 * Example: 90 m3, 2 changes an hour, 1929.6 g/h -> 1437 ppm after 5 min. Source: well-mixed-room.
 */
export function concentrationAt(room: Room, source: number, time: number, start = 0): number {
  const x = room.changes * time;
  // expm1 keeps the figure right down to a room without fresh air.
  const gained = x < 1e-12 ? time : -Math.expm1(-x) / room.changes;
  return start * Math.exp(-x) + (source / room.volume) * gained;
}

/** Where it ends if nothing changes: C_s = G/(n V) [1]; undefined without fresh air: it only rises. Source: well-mixed-room. */
export function steadyConcentration(room: Room, source: number): number | undefined {
  return room.changes > 0 ? source / (room.changes * room.volume) : undefined;
}

/**
 * Time until the air holds a concentration: t = -ln((C - C_s)/(C_0 - C_s))/n; without fresh air (C - C_0) V/G.
 * @returns [s]; 0 when it is there already, undefined when it is never reached
 * Example: 2332 ft3, 836 cfm, 0.818 cfm, 1200 ppm -> never. Source: well-mixed-room.
 */
export function timeTo(room: Room, source: number, wanted: number, start = 0): number | undefined {
  if (wanted <= start) return 0;
  const rate = source / room.volume;
  if (rate <= 0) return undefined;
  // Share of the way to the end; 1 or more is never reached.
  const share = (room.changes * (wanted - start)) / (rate - room.changes * start);
  if (rate <= room.changes * start || share >= 1) return undefined;
  if (share < 1e-12) return (wanted - start) / (rate - room.changes * start);
  return -Math.log1p(-share) / room.changes;
}

/**
 * Time for the air to thin out once nothing gives off any more: t = ln(C_0/C)/n.
 * @returns [s]; 0 when it is thin already, undefined without fresh air
 * Example: 400 to 35 ppm at 6 changes an hour -> 24.4 min. Source: well-mixed-room.
 */
export function timeToThin(room: Room, start: number, wanted: number): number | undefined {
  if (start <= wanted) return 0;
  return room.changes > 0 ? Math.log(start / wanted) / room.changes : undefined;
}

/** Average of the air over a time from the start [1]. Example: 90 m3, 2, 1929.6 g/h, 15 min -> 1994 ppm. Source: well-mixed-room. */
export function meanOver(room: Room, source: number, time: number, start = 0): number {
  const x = room.changes * time;
  const gain = source / room.volume;
  if (x < 1e-6) return start + (gain * time) / 2 - (room.changes * start * time) / 2;
  const faded = -Math.expm1(-x) / x;
  const steady = gain / room.changes;
  return steady + (start - steady) * faded;
}

/** Density of carbon monoxide at 25 °C and 1 atmosphere [kg/m3]: 28.01 g in 24.45 L. Source: co-density. */
export const density = 28.01 / 24.45;

/** Given off by an engine: G = e P / rho [m3/s]. @param emission e [kg/J] @param power P [W]. Source: epa-co-ceilings. */
export function sourceOf(emission: number, power: number): number {
  return (emission * power) / density;
}

/** Fresh air that would hold a concentration: Q = G/C [m3/s]. Source: well-mixed-room. */
export function airFor(source: number, wanted: number): number {
  return source / wanted;
}
