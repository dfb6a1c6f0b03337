/** Every component an author may name in an article, and nothing else. */
import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import Calculator from './Calculator.astro';
import BothUnits from './article/BothUnits.astro';
import Checks from './article/Checks.astro';
import Figure from './article/Figure.astro';
import Hazard from './article/Hazard.astro';
import HazardFold from './article/HazardFold.astro';
import Picture from './article/Picture.astro';
import Source from './article/Source.astro';
import Term from './article/Term.astro';
import WideTable from './article/WideTable.astro';

const found = import.meta.glob<{ default: AstroComponentFactory }>('./tables/*.astro', { eager: true });
const tables = Object.fromEntries(
  Object.entries(found).map(([file, module]) => [file.slice('./tables/'.length, -'.astro'.length), module.default]),
);

export const mdxComponents = {
  Calculator,
  Checks,
  Hazard,
  Term,
  Source,
  Figure,
  BothUnits,
  table: WideTable,
  img: Picture,
  ...tables,
};

/** In what customers read, a caution stands in short form at its step. */
export const guideComponents = { ...mdxComponents, Hazard: HazardFold };
