/** The kinds of content: folder, schema, endings, and whether each file is a page of its own. One table for build and check. */
import type { z } from 'astro/zod';
import { calculatorPage, explainer, guide, job, ownPage, table } from './article.ts';
import { checkList } from './checks.ts';
import { fault } from './fault.ts';
import { schedule } from './intervals.ts';
import { partList } from './parts.ts';
import { trouble } from './trouble.ts';
import { machine } from './machine.ts';
import { hazard, source, word } from './reference.ts';

export interface Kind<S extends z.ZodType = z.ZodType> {
  readonly schema: S;
  readonly ending: 'mdx' | 'yaml';
  /** Each file is a page of its own. */
  readonly page: boolean;
}

const article = <S extends z.ZodType>(schema: S) => ({ schema, ending: 'mdx', page: true }) as const;
const record = <S extends z.ZodType>(schema: S) => ({ schema, ending: 'yaml', page: false }) as const;

export const kinds = {
  guides: article(guide),
  jobs: article(job),
  tables: article(table),
  explainers: article(explainer),
  calculators: article(calculatorPage),
  faults: { schema: fault, ending: 'yaml', page: true },
  hazards: record(hazard),
  sources: record(source),
  machines: record(machine),
  glossary: record(word),
  intervals: record(schedule),
  checks: record(checkList),
  parts: record(partList),
  trouble: { schema: trouble, ending: 'yaml', page: true },
  pages: article(ownPage),
} as const satisfies Readonly<Record<string, Kind>>;

export type KindName = keyof typeof kinds;

/** The kind whose folder it is, if it is one. */
export function kindOf(folder: string): Kind | undefined {
  return Object.hasOwn(kinds, folder) ? kinds[folder as KindName] : undefined;
}
