/** What the page about writing says of each component and each kind of file. */
import type { KindName } from '../../schemas/kinds.ts';

export const aboutComponents: Readonly<Record<string, { readonly name: string; readonly says: string }>> = {
  BothUnits: { name: '<BothUnits>', says: 'A length in millimeters and inches; the shop’s own units stand first.' },
  Calculator: {
    name: '<Calculator>',
    says: 'A calculator. “compact” is the short form inside an article; “preset” gives it figures to start from.',
  },
  Checks: { name: '<Checks>', says: 'A list from checks/, to tick off.' },
  Figure: { name: '<Figure>', says: 'A drawing of the almanac by name, with a line below it.' },
  Hazard: { name: '<Hazard>', says: 'A caution from hazards/. Put it before the step it protects.' },
  Source: { name: '<Source>', says: 'Where a figure is from, right behind the figure; a file of sources/.' },
  Term: {
    name: '<Term>',
    says: 'A word of the glossary, linked to its meaning. Other words may stand between the tags.',
  },
  img: {
    name: 'A picture',
    says: 'A .jpg, .png or .webp beside the article; it is shrunk and freed of what the camera wrote.',
  },
  table: { name: 'A table', says: 'Written in Markdown. On a phone its rows become blocks where that reads better.' },
};

export const aboutKinds: Readonly<Record<KindName, string>> = {
  guides:
    'What customers read, in the order of use. A twin in another language stands in the folder of its code under the same name.',
  jobs: 'Work at the bench, step by step.',
  tables: 'Pages to look a figure up.',
  explainers: 'Why the advice on the other pages is what it is.',
  calculators: 'The page around a calculator; the file has the calculator’s name.',
  faults: 'A complaint at the bench: who may be at fault, and which checks tell them apart.',
  hazards: 'A caution, in every language the shop speaks, used by its file name.',
  sources: 'A work that figures rest on, and how it was seen.',
  machines: 'A machine the shop sees, with what its plate says.',
  glossary: 'A word, what it means, and other words for it.',
  intervals: 'What falls due and when, for a group of machines.',
  checks: 'What a customer looks at before a cut.',
  parts: 'The numbered parts of a kind of machine. The file has the kind’s name.',
  trouble: 'A complaint as whoever uses the saw has it, in both languages.',
  pages: 'The shop’s own pages, named at the foot: a legal notice, who works here.',
};
