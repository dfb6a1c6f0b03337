/** Chance: lives of parts and repeatable random numbers, shared by the topics on money, parts, order and intervals. Not a calculator itself. */
export { gamma, gammaShare, scaledUpperGamma } from './gamma.ts';
export {
  survival,
  failure,
  hazardRate,
  meanLife,
  meanServiceUpTo,
  meanRemainingLife,
  ageAtShare,
  type Life,
} from './weibull.ts';
export { fitLife, shapeRange, type LifeRecord, type ShapeRange } from './fit.ts';
export { randomFrom, triangle } from './random.ts';
