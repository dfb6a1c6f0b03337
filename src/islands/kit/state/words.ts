/** Every word the kit itself says. Labels, verdicts and problems come from the core, cautions from content. */
import type { CautionLevel } from '../../../core/contract/result.ts';
import type { ShownSource } from './props.ts';

export const say = {
  figures: 'Figures',
  answer: 'Answer',
  example: 'Worked example',
  exampleOff: 'Worked example. The boxes come alive when scripts are on.',
  exampleOn: 'Worked example. Change any box and the answer follows.',
  units: 'Units',
  metric: 'Metric',
  inch: 'Inch',
  more: 'More boxes',
  optional: 'if known',
  choose: 'Choose',
  yes: 'Yes',
  no: 'No',
  addRow: 'Add a row',
  removeRow: (n: number) => `Remove row ${n}`,
  row: (n: number) => `Row ${n}`,
  work: 'Work it out',
  clear: 'Empty the boxes',
  backToExample: 'Back to the example',
  print: 'Print this',
  copyLink: 'Copy link to these figures',
  linkCopied: 'Link copied',
  linkInBar: 'The link is in the address bar now',
  summaryHead: (n: number) => (n === 1 ? 'One box needs another look' : `${n} boxes need another look`),
  earlier: 'This answer is for the earlier figures.',
  noAnswer: 'Fill in the boxes and the answer stands here.',
  readAs: 'Read as',
  min: 'min',
  mean: 'mean',
  max: 'max',
  low: 'low',
  high: 'high',
  alsoFound: 'Also found',
  working: 'Working',
  putIn: 'Put in',
  gives: 'gives',
  source: 'Source',
  unchecked: 'unchecked',
  used: 'Figures used',
  shownOn: 'Page',
  printedOn: 'Printed',
  fullForm: 'All boxes and the working',
  toAnswer: 'to the answer',
  notKnown: 'none',
} as const;

/** Signal words of ANSI Z535. */
export const signalWord: Readonly<Record<CautionLevel, string>> = {
  danger: 'Danger',
  warning: 'Warning',
  caution: 'Caution',
  notice: 'Notice',
};

export const howSeen: Readonly<Record<ShownSource['how'], string>> = {
  read: 'read in the source',
  quoted: 'read where another work quotes it',
  memory: 'from memory, unchecked',
  'common-practice': 'common practice, no source',
  arithmetic: 'arithmetic',
};
