/** The text a new page starts with: the fields it needs, the headings it is read by, and in each what belongs there. */
import { stringify } from 'yaml';
import { facts } from '../../core/machine/index.ts';
import type { SingleField } from '../../core/contract/field.ts';
import { listed } from '../../steps/content-check/problem.ts';
import { languages, wordsIn, type Lang } from '../../words/lang.ts';
import type { MachineKind } from '../../schemas/machine-kinds.ts';

/** What "npm run new" can make, each with its folder. */
export const folderOf = {
  job: 'jobs',
  guide: 'guides',
  explainer: 'explainers',
  table: 'tables',
  machine: 'machines',
} as const;
export type NewKind = keyof typeof folderOf;
export type Reader = 'mechanic' | 'customer';

export interface NewPage {
  readonly kind: NewKind;
  readonly title: string;
  readonly reader: Reader;
  readonly kinds: readonly MachineKind[];
  /** YYYY-MM-DD */
  readonly today: string;
  readonly lang: Lang;
}

const machineSummary = 'What it is, in one sentence. Write it before you publish.';
const toolsToName = 'What lies ready before you start';

type Sections = readonly (readonly [heading: string, inside: string])[];

const sections: Readonly<Record<Exclude<NewKind, 'machine' | 'guide'>, Sections>> = {
  job: [
    [
      'Before you start',
      'What must be off, cold, empty or held. Each caution stands before the step it protects, like `<Hazard id="hot-parts" />`.',
    ],
    ['1. Look before you take it apart', '1. What to look at, and what it tells you.'],
    ['2. Take it off', '1. One step a line, the verb first.'],
    ['3. Measure', 'What to measure, with what, and the figure that decides. Name the source of each figure.'],
    ['4. Put it back', '1. The order, and the torque from the manual of the machine.'],
    ['5. Prove it', '1. How you know that it is right before the machine leaves.'],
  ],
  explainer: [
    ['In short', 'The answer in two sentences, for somebody who stops reading here.'],
    ['Why', 'The cause, step by step.'],
    ['What it means at the bench', 'What to do differently.'],
  ],
  table: [
    ['How to read it', 'What each column is, its unit, and where the figures are from.'],
    ['The figures', '| what | figure |\n|---|---|\n| first row | its figure |'],
  ],
};

/** A value as YAML writes it on one line, quoted where it must be. */
const value = (text: unknown) => stringify(text, { lineWidth: 0 }).trim();

export function skeleton(page: NewPage): string {
  return page.kind === 'machine' ? machine(page) : article(page);
}

function article({ kind, title, reader, kinds, today, lang }: NewPage): string {
  const words = wordsIn(lang).newGuide;
  const body = kind === 'guide' ? words.sections : kind === 'machine' ? [] : sections[kind];
  const head = [
    `title: ${value(title)}`,
    '# Shown in lists and in search; at most 220 letters.',
    `summary: ${value(words.summary)}`,
    `reader: ${reader}`,
    ...(kind === 'guide' ? [`lang: ${lang}`] : []),
    '# The day somebody last went through it.',
    `reviewed: ${today}`,
    '# Take this line away when it is finished; until then it is not published.',
    'draft: true',
    ...(kind === 'job' ? ['time: 30 minutes', 'tools:', `  - ${toolsToName}`] : []),
    '# File names from content/knowledge/hazards/ and content/knowledge/sources/, without the ending: [hot-parts, kickback].',
    'hazards: []',
    'sources: [common-practice]',
    `kinds: [${kinds.join(', ')}]`,
    '# Other words people search by.',
    'aliases: []',
  ];
  const text = body.map(([heading, inside]) => `## ${heading}\n\n${inside}\n`);
  return `---\n${head.join('\n')}\n---\n\n${text.join('\n')}`;
}

/** Sentences of a beginning that say what belongs there; on a published page somebody has forgotten to write it. */
export const placeholders: ReadonlySet<string> = new Set([
  machineSummary,
  toolsToName,
  ...languages.flatMap((lang) => [
    wordsIn(lang).newGuide.summary,
    ...wordsIn(lang).newGuide.sections.map(([, inside]) => inside),
  ]),
  ...Object.values(sections).flatMap((list) => list.flatMap(([, inside]) => inside.split('\n'))),
]);

function machine({ title, kinds }: NewPage): string {
  return `name: ${value(title)}
kind: ${kinds[0] ?? 'other'}
summary: ${machineSummary}
# What its plate says, for the forms to take over. Take the # away before "facts:" and before each line you know, and
# write its figure after the colon, with its unit.
# facts:
${facts.map((fact) => `#   ${fact.key}: # ${fact.label}${takes(fact)}`).join('\n')}
`;
}

/** ", in mm or in" */
function takes(fact: SingleField): string {
  switch (fact.kind) {
    case 'quantity':
      return `, in ${listed([...new Set<string>(fact.units)])}`;
    case 'choice':
      return `: ${listed(fact.options.map((option) => option.value))}`;
    case 'yes-no':
      return ': true or false';
    default:
      return '';
  }
}
