/** What a day may hold of dust, noise, vibration and carbon monoxide, place by place, and how averages are made. */
export * from './average.ts';
export * from './protection.ts';
export type { LimitRow } from './limit-row.ts';
export {
  brazilDustLimit,
  brazilTotalDustLimit,
  chilePeak,
  chileSilicaLimit,
  silicaLimit,
  silicaLimitOn,
  silicaLimits,
  type SilicaLimit,
  type SilicaPlace,
} from './silica-limits.ts';
export { brazilNoiseTime, noiseLimitList, type NoiseLimit } from './noise-limits.ts';
export { vibrationLimits, type VibrationLimit } from './vibration-limits.ts';
export { carbonMonoxideLimits, type CarbonMonoxideLimit } from './carbon-monoxide-limits.ts';
export { leftByWater, takenByWater, type TriedSaw } from './water-trials.ts';
