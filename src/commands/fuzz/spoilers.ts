/** Ways in which a file of content goes wrong at a shop: one slip each, with whether it must be told. */

export interface Spoiler {
  readonly name: string;
  /** Which files it can be tried on. */
  readonly on: 'article' | 'record' | 'shop' | 'machine';
  /** False for what a shop's editor does without harm. */
  readonly told: boolean;
  readonly spoil: (text: string) => string | Uint8Array;
}

const append = (text: string) => (good: string) => `${good}\n\n${text}\n`;
const field = (name: string, value: string) => (good: string) =>
  good.replace(new RegExp(`^${name}:.*$`, 'm'), () => `${name}: ${value}`);
const without = (name: string) => (good: string) => good.replace(new RegExp(`^${name}:.*\\n`, 'm'), '');

const article = (name: string, spoil: Spoiler['spoil'], told = true): Spoiler => ({ name, on: 'article', told, spoil });
const record = (name: string, spoil: Spoiler['spoil'], told = true): Spoiler => ({ name, on: 'record', told, spoil });
const shop = (name: string, spoil: Spoiler['spoil']): Spoiler => ({ name, on: 'shop', told: true, spoil });
const machine = (name: string, spoil: Spoiler['spoil']): Spoiler => ({ name, on: 'machine', told: true, spoil });

const tags = ['script', 'style', 'iframe', 'form', 'object', 'base', 'meta', 'img', 'a', 'div', 'hazard', 'blink'];
const texts: readonly [string, string][] = [
  ['bare smaller sign', 'Keep the gap <5 mm.'],
  ['bare bracket', 'Then {that.'],
  ['expression', 'Now {process.env.HOME}.'],
  ['import', "import x from './x.js'"],
  ['unknown component', '<Danger />'],
  ['hazard without id', '<Hazard />'],
  ['hazard of another name', '<Hazard id="kickbak" />'],
  ['attribute expression', '<Hazard id={process.env.HOME} />'],
  ['spread', '<Hazard {...x} />'],
  ['unknown attribute', '<Hazard id="kickback" level="notice" />'],
  ['length that is none', '<BothUnits mm="abc" />'],
  ['length left out', '<BothUnits />'],
  ['calculator without topic', '<Calculator />'],
  ['preset with a mass', '<Calculator topic="blade-speed" preset={{ enginePulley: \'50 kg\' }} />'],
  ['preset with an unknown box', '<Calculator topic="blade-speed" preset={{ centre: \'50 mm\' }} />'],
  ['script link', '[a](javascript:alert(1))'],
  ['file link', '[a](file:///x)'],
  ['data link', '[a](data:text/html,x)'],
  ['relative link', '[a](recoil-cord)'],
  ['dead link', '[a](/jobs/no-such-job/)'],
  ['dead anchor', '[a](/jobs/recoil-cord/#nowhere)'],
  ['undefined reference', 'See [the cord][nope].'],
  ['picture without words', '![](/mark.svg)'],
  ['picture not there', '![A belt](/no-such.png)'],
  ['remote picture', '![A belt](https://example.org/x.png)'],
  ['second page heading', '# Again'],
  ['leap in headings', '##### Deep'],
];

export const spoilers: readonly Spoiler[] = [
  ...tags.map((tag) => article(`tag <${tag}>`, append(`<${tag}>x</${tag}>`))),
  ...texts.map(([name, text]) => article(name, append(text))),
  ...['', 'true', '2026', '2026-02-30', '12.3.26', '01/02/2026', '2999-01-01'].map((day) =>
    article(`reviewed "${day}"`, field('reviewed', day)),
  ),
  ...['title', 'summary', 'reader', 'sources', 'reviewed'].map((name) => article(`${name} missing`, without(name))),
  article('title of blanks', field('title', '"     "')),
  article('title too long', field('title', 'x'.repeat(200))),
  article('colon in a title', field('title', 'One: two: three')),
  article('star as a value', field('reader', '*customer')),
  article('unknown field', (good) => good.replace('\nsources:', '\ncolour: red\nsources:')),
  article('source that is not there', field('sources', '[no-such-source]')),
  article('caution that is not there', field('hazards', '[no-such-hazard]')),
  article('kind that does not exist', field('kinds', '[hover-saw]')),
  article('page that is not there', field('related', '[jobs/no-such-job]')),
  article('tab before a field', (good) => good.replace('\nreader:', '\n\treader:')),
  article('fields not closed', (good) => good.replace(/\n---\n/, '\n')),
  article('no fields at all', () => 'Only words.\n'),
  article('empty file', () => ''),
  article('another encoding', (good) => Buffer.from(good.replace('summary: ', 'summary: é'), 'latin1')),
  article('UTF-16', (good) => Buffer.from(`\uFEFF${good}`, 'utf16le')),
  article('NUL in the text', append('a\0b')),
  article('mark before the text', (good) => `\uFEFF${good}`, false),
  article('blank lines above', (good) => `\n\n${good}`, false),
  article('line ends of another system', (good) => good.replaceAll('\n', '\r\n'), false),
  article('comment in the text', append('{/* look here again */}'), false),
  article('line break and small figure', append('CO<sub>2</sub><br />x'), false),
  record('title twice', (good) => `${good}\ntitle: again\ntitle: once more\n`),
  record('second document', (good) => `${good}\n---\nmore: 1\n`),
  record('star as a value', (good) => `${good}\nextra: *nope\n`),
  record('unknown field', (good) => `${good}\nextra: 1\n`),
  record('list not closed', (good) => `${good}\nextra: [1, 2\n`),
  record('quote not closed', (good) => `${good}\nextra: "a\n`),
  record('empty file', () => ''),
  record('a list instead of fields', () => '- one\n- two\n'),
  record('UTF-16', (good) => Buffer.from(`\uFEFF${good}`, 'utf16le')),
  record('mark before the text', (good) => `\uFEFF${good}`, false),
  ...[
    ['currency', 'QQQ'],
    ['currency', '€'],
    ['labourRate', '42,50'],
    ['labourRate', '1e9'],
    ['labourRate', '0'],
    ['labourRate', '.inf'],
    ['phone', '600000000'],
    ['phone', '"  "'],
    ['languages', '[es]'],
    ['languages', '[en, en]'],
    ['languages', '[en, xx]'],
    ['site', 'ftp://almanac.example/'],
    ['site', 'not an address'],
    ['units', 'imperial'],
    ['name', 'x'.repeat(5000)],
    ['invented', 'perhaps'],
  ].map(([name = '', value = '']) => shop(`${name} ${value.slice(0, 20)}`, field(name, value))),
  machine('a mass for a length', (good) => good.replace('bladeDiameter: ', 'bladeDiameter: 20 kg # ')),
  machine('a speed that does not fit', (good) => good.replace(/spindleSpeed: .*/, 'spindleSpeed: 9136 rpm')),
  machine('a mark below the shaft', (good) => good.replace(/markRotation: .*/, 'markRotation: 200 rpm')),
  machine('a section that does not exist', (good) => good.replace(/beltSection: .*/, 'beltSection: Q')),
  machine('a fact that does not exist', (good) => good.replace('facts:', 'facts:\n  bladeColour: red')),
  machine('a kind that does not exist', (good) => good.replace(/^kind: .*/m, 'kind: pressure-washer')),
];
