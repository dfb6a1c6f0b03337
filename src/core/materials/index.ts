/** Materials of shafts, rings and housings, and how they grow with temperature; shared by the topics on fits and warming. Not a calculator itself. */
export { growth, temperatureChange, warmLoss } from './expansion.ts';
export {
  allMaterials,
  housingMaterials,
  materialOf,
  materials,
  shaftMaterials,
  type Material,
  type MaterialKey,
} from './materials.ts';
