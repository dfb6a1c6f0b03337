/** The public door of quantities. `sum.ts` is not re-exported: import it where a sum was typed, so that mathjs loads only then. */
export {
  dimensions,
  fromUnit,
  toUnit,
  unitLabel,
  unitOf,
  units,
  type Dimension,
  type Unit,
  type UnitKey,
} from './units.ts';
export { normalise, readNumber, type NumberRead } from './number.ts';
export { readPartsToOne, readRatio, type RatioRead } from './ratio.ts';
export { sayNumber, sayQuantity } from './say.ts';
export { readQuantity, type Read, type ReadFailure, type Wanted } from './read.ts';
export {
  formatFigures,
  formatIn,
  formatNumber,
  formatQuantity,
  pick,
  type UnitPair,
  type UnitSystem,
} from './format.ts';
