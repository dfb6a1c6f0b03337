/** What the search box says. */

import type { Counted } from '../say/fill.ts';

/** What a result is, said beside its title. */
const kinds = {
  guide: 'Guide',
  trouble: 'Trouble',
  fault: 'Fault, at the bench',
  job: 'Job',
  calculator: 'Calculator',
  table: 'Table',
  explainer: 'Background',
  word: 'Word',
  caution: 'Caution',
  machine: 'Machine',
  page: 'Page',
};

export const search = {
  label: 'Search the almanac',
  hint: 'belt, 6205, dust',
  go: 'Search',
  readers: 'Show',
  everyone: 'All',
  customer: 'For users',
  mechanic: 'For the bench',
  waking: 'Opening the index…',
  broken: 'Search could not be opened on this device. The list of all pages works without it.',
  found: { one: '{n} page for “{term}”.', other: '{n} pages for “{term}”.' } as Counted,
  replaced: '“{typed}” is on no page; searched for “{used}”.',
  left: '“{words}” is on no page and was left out.',
  none: 'Nothing found for “{term}”.',
  hidden: { one: '{n} more page outside “{shown}”.', other: '{n} more pages outside “{shown}”.' } as Counted,
  showAll: 'Show all',
  kinds,
  offerFilled: '{title}, filled in: {figures}',
  offerRow: '{title}: the row for {figures}',
  inEnglish: '',
  /** Said on pages in other languages, of one in this. */
  elsewhere: 'In English: {title}',
  help: {
    '': [
      'Say it as you would at the counter: saw won’t start, no water, belt came off.',
      'A size or a number works too: 6205, 14 inch, 50:1.',
    ],
    customer: ['Say it as you would at the counter: saw won’t start, no water, belt came off.', 'Or call the shop.'],
    mechanic: [
      'Try the part, the symptom or the size: clutch drags, 6205-2RS, H7 25.',
      'One word finds more than a sentence.',
    ],
  },
  all: 'See all pages, A to Z',
  more: 'Show more',
  noScripts: 'Search needs scripts. Every page is in the list of all pages, A to Z.',
};
