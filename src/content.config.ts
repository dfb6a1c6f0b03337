/** One collection for each kind of content. What the shop says itself stands in for the knowledge of the same name. */
import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import type { z } from 'astro/zod';
import { kinds, type Kind, type KindName } from './schemas/kinds.ts';
import { contentBase, contentId, contentPatterns } from './steps/support/content-patterns.ts';
import { passingOver } from './steps/writing/passing-over.ts';

const collection = <S extends z.ZodType>(folder: KindName, kind: Kind<S>) => {
  const files = glob({
    base: contentBase,
    pattern: contentPatterns('.', folder, kind, import.meta.env.DEV),
    generateId: ({ entry }) => contentId(entry),
  });
  return defineCollection({ loader: import.meta.env.DEV ? passingOver(files) : files, schema: kind.schema });
};

// Written out, since the types of the pages hang on each name.
export const collections = {
  guides: collection('guides', kinds.guides),
  jobs: collection('jobs', kinds.jobs),
  tables: collection('tables', kinds.tables),
  explainers: collection('explainers', kinds.explainers),
  calculators: collection('calculators', kinds.calculators),
  faults: collection('faults', kinds.faults),
  hazards: collection('hazards', kinds.hazards),
  sources: collection('sources', kinds.sources),
  machines: collection('machines', kinds.machines),
  glossary: collection('glossary', kinds.glossary),
  intervals: collection('intervals', kinds.intervals),
  checks: collection('checks', kinds.checks),
  parts: collection('parts', kinds.parts),
  trouble: collection('trouble', kinds.trouble),
  pages: collection('pages', kinds.pages),
};
