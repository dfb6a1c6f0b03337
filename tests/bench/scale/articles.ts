/**
 * Articles made up for measuring: the same text for every generator that is measured, about 600 words each, with
 * headings, paragraphs, a list, a table and a link. What they say is put together by chance and means nothing.
 */

export interface MadeArticle {
  /** File name without ending. */
  readonly name: string;
  readonly title: string;
  readonly summary: string;
  /** Markdown below the front matter; `{next}` stands for the address of another article. */
  readonly body: string;
}

const things = (
  'belt pulley bearing seal flange blade guard arm spring clutch drum filter hose tank valve plug piston ring ' +
  'cylinder crank shaft screw washer nut cover lever cable mount muffler screen pump nozzle fitting bolt rope handle'
).split(' ');
const doings = 'clean turn press lift loosen measure dry oil tighten check mark hold warm cool seat align'.split(' ');
const states = 'worn dry loose bent clean dirty hot cold tight packed cracked smooth rough square even new'.split(' ');
const whens = ['before the cut', 'after the day', 'once a week', 'when it is cold', 'on the bench', 'in the yard'];
const whys = [
  'it wears the seat',
  'the load goes to one side',
  'dust gets behind it',
  'heat stays in it',
  'the reading lies',
  'it will not hold',
];

/** A plain seeded sequence (mulberry32), so that article 17 is the same text everywhere and always. */
function chance(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export function madeArticle(number: number, of: number): MadeArticle {
  const next = chance(number + 1);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
  const figure = (from: number, to: number) => String(from + Math.floor(next() * (to - from)));
  const sentence = (): string => {
    const kinds = [
      () => `${upper(pick(doings))} the ${pick(things)} ${pick(whens)}, or ${pick(whys)}.`,
      () => `A ${pick(states)} ${pick(things)} shows at the ${pick(things)} first.`,
      () => `Where the ${pick(things)} is **${pick(states)}**, ${pick(doings)} it and look at the ${pick(things)}.`,
      () => `It takes ${figure(2, 40)} minutes and a ${pick(things)} gauge of ${figure(3, 30)} mm.`,
      () => `Leave ${figure(1, 9)}.${figure(0, 9)} mm at the ${pick(things)}; less, and ${pick(whys)}.`,
    ];
    return pick(kinds)();
  };
  const paragraph = (sentences: number) => Array.from({ length: sentences }, sentence).join(' ');
  const own = `w${number.toString(36)}ord`;
  const sections = Array.from({ length: 5 }, (_, at) => {
    const head = `## ${upper(pick(states))} ${pick(things)}, part ${at + 1}`;
    const list = `1. ${sentence()}\n2. ${sentence()}\n3. ${sentence()}`;
    const rows = Array.from({ length: 3 }, () => `| ${pick(things)} | ${figure(10, 99)} mm | ${pick(states)} |`);
    const table = `| part | size | state |\n|---|---|---|\n${rows.join('\n')}`;
    return [head, paragraph(5), at === 1 ? list : paragraph(3), ...(at === 3 ? [table] : [])].join('\n\n');
  });
  const link = `Its own word is ${own}. Read on: [the next one]({next}).`;
  return {
    name: articleName(number),
    title: `Note ${number} on a ${pick(states)} ${pick(things)}`,
    summary: `Note ${number}: how to ${pick(doings)} the ${pick(things)} and what to look for ${pick(whens)}.`,
    body: `${sections.join('\n\n')}\n\n${link.replace('{next}', `{next:${articleName((number + 1) % of)}}`)}\n`,
  };
}

export const articleName = (number: number): string => `made-note-${number}`;

/** The body with its link as a generator writes addresses. */
export function bodyWith(article: MadeArticle, address: (name: string) => string): string {
  return article.body.replace(/\{next:([a-z0-9-]+)\}/, (_, name: string) => address(name));
}
