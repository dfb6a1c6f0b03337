/** What every bench job owes the mechanic: pictures, tools, time, sources, and the caution before the step it guards. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { job } from '../../src/schemas/article.ts';

const folder = new URL('../../content/knowledge/jobs/', import.meta.url);
const files = readdirSync(folder).filter((f) => f.endsWith('.mdx'));

/** Acts that hurt, by the words a step uses for them, and the cautions of which one must stand before that step. */
const guarded: readonly (readonly [act: string, words: RegExp, cautions: readonly string[]])[] = [
  ['an engine is run', /full speed (?:outdoors|with|without)|\b(?:warm the saw up|run the saw)\b/i, ['running-test']],
  ['an engine is started', /^\d\. (?:Outdoors|Start)/, ['running-test', 'carbon-monoxide']],
  [
    'the tank is drained',
    /\b(?:tank|fuel) (?:is )?drained|\bdrain (?:the tank|everything)/i,
    ['gasoline-at-the-bench'],
  ],
  [
    'a cleaner is used',
    /\bwith (?:wood and )?cleaner|\bin cleaner|\ba solvent that/i,
    ['solvents', 'gasoline-at-the-bench'],
  ],
  ['a part is warmed', /\bhot-air gun to|\bhot plate or hot air|\bin the oven/i, ['hot-parts', 'heating-housings']],
  ['the plug hole is open to the cord', /\bplug out\b.*\bpull/i, ['compression-test-spark']],
  ['a pin clip comes out', /^\d\. Clip out/, ['flying-clip']],
  ['a recoil spring is uncovered', /\bhand on the pulley/, ['recoil-spring']],
  ['a shaft is pressed', /^\d\. (?:Draw|Support|Push).*\b(?:push|press)/i, ['press-force']],
];

const figure =
  /\d ?(?:mm|bar|psi|kPa|rpm|°C|N|mL|L|m|s)\b|\d ?%|\d°|\b(?:half|one|two|three|twenty)[a-z ]{0,9} (?:turns?|pulls)\b/gi;
/** Compares drawings with what the lamp shows; its figures stand in the jobs it leads to. */
const atlas = 'read-the-cylinder.mdx';

interface Job {
  readonly front: ReturnType<typeof job.parse>;
  readonly body: string;
}
const read = (file: string): Job => {
  const [, front = '', ...rest] = readFileSync(new URL(file, folder), 'utf8').split(/^---$/m);
  return { front: job.parse(parse(front)), body: rest.join('---') };
};

/** Steps whose act has no caution before it on the page, each as "act: step". */
function unguarded({ front, body }: Job): string[] {
  const lines = body.split('\n');
  return guarded.flatMap(([act, words, cautions]) =>
    lines.flatMap((line, k) => {
      if (!/^\s*(?:\d+\.|-) /.test(line) || !words.test(line)) return [];
      const said = [...front.hazards, ...lines.slice(0, k).flatMap((l) => /<Hazard id="([^"]+)"/.exec(l)?.[1] ?? [])];
      return cautions.some((c) => said.includes(c)) ? [] : [`${act}: ${line}`];
    }),
  );
}

it('there are at least 26 bench jobs', () => {
  expect(files.length).toBeGreaterThanOrEqual(26);
});

describe.each(files)('%s', (file) => {
  const one = read(file);
  const pictures = new Set([...one.body.matchAll(/<Figure name="([^"]+)"/g)].map((m) => m[1]));

  it('has two pictures or more', () => {
    expect(pictures.size).toBeGreaterThanOrEqual(2);
  });
  it('names cautions, tools, time and sources', () => {
    expect(one.front.hazards.length).toBeGreaterThan(0);
    expect(one.front.tools.length).toBeGreaterThan(1);
    expect(one.front.time).toMatch(/minute|hour/);
    expect(one.front.sources.length).toBeGreaterThan(0);
  });
  it('tells good from bad in figures', () => {
    expect(one.body.match(figure)?.length ?? 0).toBeGreaterThan(file === atlas ? -1 : 1);
  });
  it('says what to tell the customer, and ends in the test before hand-back', () => {
    expect(one.body).toMatch(/tell (?:the (?:customer|operator)|him|them)/i);
    expect(one.body.includes('/jobs/hand-back-test/') || file === 'hand-back-test.mdx').toBe(true);
  });
  it('says the caution before the step it guards', () => {
    expect(unguarded(one)).toEqual([]);
  });
});

describe('a job that forgot its caution', () => {
  const job = read('top-end.mdx');
  it.each([
    ['a start', '1. Outdoors, blade off: start it.'],
    ['a clip', '2. Clip out, pin pushed out.'],
    ['full speed', '- Half a minute at full speed outdoors.'],
  ])('%s is found', (_, step) => {
    expect(unguarded({ ...job, body: step })).toHaveLength(1);
  });
  it('is sound with the caution before, not after', () => {
    const hazard = '<Hazard id="flying-clip" />';
    expect(unguarded({ ...job, body: `${hazard}\n\n1. Clip out.` })).toEqual([]);
    expect(unguarded({ ...job, body: `1. Clip out.\n\n${hazard}` })).toHaveLength(1);
  });
});
