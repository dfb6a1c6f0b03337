/** Which schema goes with which folder. */
import type { z } from 'astro/zod';
import * as article from '../../schemas/article.ts';
import { fault } from '../../schemas/fault.ts';
import { schedule } from '../../schemas/intervals.ts';
import * as reference from '../../schemas/reference.ts';
import { shop } from '../../schemas/shop.ts';

export interface Kind {
  readonly schema: z.ZodType;
  readonly endings: readonly string[];
  /** Each file is a page of its own. */
  readonly page: boolean;
}

const pages = (schema: z.ZodType): Kind => ({ schema, endings: ['mdx', 'md'], page: true });
const records = (schema: z.ZodType): Kind => ({ schema, endings: ['yaml'], page: false });

export const kinds: Readonly<Record<string, Kind>> = {
  guides: pages(article.guide),
  jobs: pages(article.job),
  tables: pages(article.table),
  explainers: pages(article.explainer),
  calculators: pages(article.calculatorPage),
  faults: { schema: fault, endings: ['yaml'], page: true },
  hazards: records(reference.hazard),
  sources: records(reference.source),
  machines: records(reference.machine),
  glossary: records(reference.word),
  intervals: records(schedule),
};

export { shop as shopSchema };
