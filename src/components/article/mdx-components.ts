/** Every component an author may name in an article, and nothing else. */
import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import Calculator from '../Calculator.astro';
import BothUnits from './BothUnits.astro';
import Figure from './Figure.astro';
import Hazard from './Hazard.astro';
import Source from './Source.astro';
import Term from './Term.astro';
import WideTable from './WideTable.astro';

const found = import.meta.glob<{ default: AstroComponentFactory }>('../tables/*.astro', { eager: true });
const tables = Object.fromEntries(Object.entries(found).map(([file, module]) => [file.slice('../tables/'.length, -'.astro'.length), module.default]));

export const mdxComponents = { Calculator, Hazard, Term, Source, Figure, BothUnits, table: WideTable, ...tables };
