/**
 * Pages that are words and nothing else. Texts are HTML, with addresses as this language has them; {shop}, {phone} and
 * {call} stand for the shop's name, its number and the link that dials it.
 */

export interface AboutPart {
  /** The end of its address. */
  readonly id: string;
  readonly head: string;
  readonly html: string;
  /** Only where the shop is made up. */
  readonly invented?: true;
}

export const pages = {
  search: { summary: 'Search every article, table and calculator page.' },
  atoz: { summary: 'Every page of the almanac by its first letter.' },
  glossary: { summary: 'What the words on these pages mean, and other words for the same thing.' },
  hazards: {
    summary:
      'Every caution on this site in one place. Danger kills, a warning may kill, a caution hurts, a notice damages the machine.',
    levels: {
      id: 'how-a-level-is-chosen',
      head: 'How a level is chosen',
      says: 'By two questions about the worst that can well happen when the order is not followed.',
      what: 'What it does',
      expected: 'To be expected',
      possible: 'Possible',
      kills: 'It kills',
      lasts: 'It leaves lasting harm: an eye, a finger, hearing, lungs',
      heals: 'It hurts, and heals',
      damages: 'It damages the machine, the work or water',
    },
  },
  shop: {
    summary: 'Where the shop is, when it is open, how to call, what to bring with a saw and what a look costs.',
    aliases: [
      'opening hours',
      'open',
      'hours',
      'phone number',
      'telephone',
      'address',
      'where are you',
      'price of a look',
      'estimate',
      'contact',
      'bring it in',
      'price',
      'Saturday',
      'closed on Sunday',
      'what to bring',
      'directions',
    ],
  },
  notFound: {
    title: 'Page not found',
    says: 'There is no page at this address, or it has not been saved on this device yet.',
    html: 'Try the <a href="/a-z/">list of all pages</a>, <a href="/search/">search</a>, or go back to <a href="/">the start</a>. Something wrong with a saw? <a href="/trouble/">Look here</a>, or <a href="{call}">call {phone}</a>.',
  },
  about: {
    summary:
      'What stands behind these pages, how far to trust a figure, and how to carry the almanac where there is no signal.',
    aliases: [] as readonly string[],
    first:
      'Looking for opening hours, the phone number or what a look costs? That is on <a href="/shop/">The shop</a>.',
    parts: [
      {
        id: 'made-up',
        invented: true,
        head: 'Made up, and real',
        html: '{shop}, its machines and its customers are made up. The advice, the sums and the sources are real: every published figure names where it was published, and every figure that nobody here could look up carries the mark <em class="unchecked">unchecked</em>.',
      },
      {
        id: 'trust',
        head: 'How far to trust a figure',
        html: 'The calculators show their working: the formula, the numbers put in, what came out and where the formula is printed. Where a fit or a friction has a spread you get a range, not a single figure. The machine’s own manual, the marking on the blade and the law where you work come first, always.',
      },
      {
        id: 'carry',
        head: 'Where there is no signal',
        html: 'Open the site once with a connection and it keeps itself on the device; calculators and search go on working without one. Or copy the whole folder to a stick and open <code>index.html</code> from it: that works too. A stick does not renew itself, so look at the edition at the foot of the page.',
      },
      {
        id: 'write',
        head: 'Writing for it',
        html: 'What an article may hold and what each file asks for: <a href="/writing/">Writing for the almanac</a>.',
      },
      {
        id: 'private',
        head: 'What is kept',
        html: 'Nothing you type leaves the device. There are no accounts, no counters and no requests to anybody else’s server.',
      },
      {
        id: 'licenses',
        head: 'Free to use and to change',
        html: 'Bench Almanac and the libraries and faces that come with its pages are free software. Their <a href="/licenses.txt">licenses and notices</a> stand in one file.',
      },
    ] as readonly AboutPart[],
  },
};
