/** What the search box says. */

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
  found: (n: number, term: string) => `${n === 1 ? '1 page' : `${n} pages`} for “${term}”.`,
  replaced: (typed: string, used: string) => `“${typed}” is on no page; searched for “${used}”.`,
  left: (words: string) => `“${words}” is on no page and was left out.`,
  none: (term: string) => `Nothing found for “${term}”.`,
  hidden: (n: number, shown: string) => `${n === 1 ? '1 more page' : `${n} more pages`} outside “${shown}”.`,
  showAll: 'Show all',
  kinds,
  offerFilled: (title: string, figures: string) => `${title}, filled in: ${figures}`,
  offerRow: (title: string, figures: string) => `${title}: the row for ${figures}`,
  inEnglish: '',
  elsewhere: (title: string) => `En español: ${title}`,
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
