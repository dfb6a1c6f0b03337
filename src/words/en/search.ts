/** What the search box says. */
export const search = {
  label: 'Search the almanac',
  hint: 'a part, a fault, a size: belt, 6205, dust',
  readers: 'Show',
  everyone: 'Everything',
  customer: 'Care guides for saw users',
  mechanic: 'Bench pages',
  waking: 'Opening the index…',
  broken: 'Search could not be opened on this device. The list of all pages works without it.',
  notBuilt: 'Search comes with the built site: npm start. The list of all pages works here too.',
  found: (n: number, term: string) => `${n === 1 ? '1 page' : `${n} pages`} for “${term}”.`,
  nearest: (words: string) => `No page says “${words}” just so; these come nearest.`,
  none: (term: string) => `Nothing found for “${term}”.`,
  help: [
    'Try one word instead of several, or a shorter one.',
    'Part numbers work by their first digits: 6205.',
    'Try the everyday name: pull cord for recoil starter, blade for wheel.',
  ],
  all: 'See all pages, A to Z',
  more: 'Show more',
  noScripts: 'Search needs scripts. Every page is in the list of all pages, A to Z.',
};
