/** The start page. */
export const start = {
  /** For search engines and cards of messages. */
  summary:
    'Care guides for concrete and masonry saws, and the bench almanac behind them: faults, jobs, fits, belts, blades and what a repair is worth.',
  question: 'What does the saw need?',
  searchLabel: 'Search the almanac',
  placeholder: 'belt, 6205, dust',
  use: 'I use a saw',
  useSays: 'Checks, water, dust, trouble',
  repair: 'I repair saws',
  repairSays: 'Faults, fits, belts, worth',
  before: 'Before you start',
  noStart: 'Won’t start',
  /** Said on the start page in English, where the site speaks this language too. */
  guidesInThis: 'These guides in English',
  point: 'Point at the saw',
  pointSays: 'Point at a number. It leads to the part in the list below, and from there to every page about it.',
  pointAliases: ['parts', 'what is this part', 'name of a part', 'diagram'],
  otherSaws: 'Other saws',
  useHead: 'You use a saw',
  repairHead: 'You repair it',
  wrong: 'Something is wrong',
  wrongSays: 'Look, leave alone, bring it in',
  checkSays: 'One check at a time, on this phone, with a record',
  all: 'All pages, A to Z',
  twinHead: 'Head of a twin-blade saw',
  twinSays: 'Half section seen from the front; the same again below the shaft.',
  twinParts: [
    'Two blades, changed as a pair',
    'Blade shaft and its two bearings',
    'Spacers set how far the halves stand apart',
    'Split pulley, two halves between the blades',
    'V-belt',
  ],
};
