/** The text a new page starts with: the fields it needs, the headings it is read by, and in each what belongs there. */
import { stringify } from 'yaml';
import { wordsIn, type Lang } from '../../words/lang.ts';
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

type Sections = readonly (readonly [heading: string, inside: string])[];

const sections: Readonly<Record<Exclude<NewKind, 'machine' | 'guide'>, Sections>> = {
  job: [
    [
      'Before you start',
      'What must be off, cold, empty or held. Put each caution here with its component, before the step it protects.',
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
    ...(kind === 'job' ? ['time: 30 minutes', 'tools:', '  - What lies ready before you start'] : []),
    '# File names from hazards/ and sources/, without the ending.',
    'hazards: []',
    'sources: [common-practice]',
    `kinds: [${kinds.join(', ')}]`,
    '# Other words people search by.',
    'aliases: []',
  ];
  const text = body.map(([heading, inside]) => `## ${heading}\n\n${inside}\n`);
  return `---\n${head.join('\n')}\n---\n\n${text.join('\n')}`;
}

function machine({ title, kinds }: NewPage): string {
  return `name: ${value(title)}
kind: ${kinds[0] ?? 'other'}
summary: What it is, in one sentence. Write it before you publish.
# What its plate says, for the forms to take over; src/core/machine/facts.ts lists the facts. For example:
# facts:
#   engineSpeed: 9500 rpm
#   bladeDiameter: 350 mm
`;
}
