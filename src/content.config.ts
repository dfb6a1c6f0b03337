import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { calculatorPage, explainer, guide, job, table } from './schemas/article.ts';
import { fault } from './schemas/fault.ts';
import { schedule } from './schemas/intervals.ts';
import { hazard, machine, source, word } from './schemas/reference.ts';

const articles = (folder: string) => glob({ base: `./content/${folder}`, pattern: '**/*.{md,mdx}' });
const records = (folder: string) => glob({ base: `./content/${folder}`, pattern: '*.yaml' });

export const collections = {
  guides: defineCollection({ loader: articles('guides'), schema: guide }),
  jobs: defineCollection({ loader: articles('jobs'), schema: job }),
  tables: defineCollection({ loader: articles('tables'), schema: table }),
  explainers: defineCollection({ loader: articles('explainers'), schema: explainer }),
  calculators: defineCollection({ loader: articles('calculators'), schema: calculatorPage }),
  faults: defineCollection({ loader: records('faults'), schema: fault }),
  hazards: defineCollection({ loader: records('hazards'), schema: hazard }),
  sources: defineCollection({ loader: records('sources'), schema: source }),
  machines: defineCollection({ loader: records('machines'), schema: machine }),
  glossary: defineCollection({ loader: records('glossary'), schema: word }),
  intervals: defineCollection({ loader: records('intervals'), schema: schedule }),
};
