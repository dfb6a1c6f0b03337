/** What "npm run new" writes, and that the check of content takes it as it is. The shop is made up. */
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { facts } from '../../src/core/machine/index.ts';
import { fileNameOf, readWanted, takeApart } from '../../src/commands/new/arguments.ts';
import { askedFor } from '../../src/commands/new/questions.ts';
import { folderOf, skeleton, type NewPage } from '../../src/commands/new/skeleton.ts';
import { problemsOf } from '../steps/content-check/good-content.ts';

const page: NewPage = {
  kind: 'job',
  title: 'Belt: "matched" set',
  reader: 'mechanic',
  kinds: ['floor-saw', 'cut-off-saw'],
  today: '2026-06-30',
  lang: 'en',
};
/** Puts a text among good content, with the source that skeletons name. */
const among = (files: Record<string, string>) =>
  problemsOf(async (folder) => {
    const source = { title: 'Habits of the trade', how: 'common-practice' };
    const all = { ...files, 'content/knowledge/sources/common-practice.yaml': stringify(source) };
    for (const [name, text] of Object.entries(all)) {
      await mkdir(dirname(join(folder, name)), { recursive: true });
      await writeFile(join(folder, name), text);
    }
  });

describe('a skeleton', () => {
  it.each(['job', 'explainer', 'table', 'guide'] as const)('of a %s passes the check of content', async (kind) => {
    const file = `content/shop/${folderOf[kind]}/belt-set.mdx`;
    expect(await among({ [file]: skeleton({ ...page, kind }) })).toEqual([]);
  });

  it('of a machine passes the check of content', async () => {
    const text = skeleton({ ...page, kind: 'machine', kinds: ['floor-saw'] });
    const file = 'content/shop/machines/yard-saw.yaml';
    expect(await among({ [file]: text })).toEqual([]);
    // A line of the plate, its # taken away and its figure put where the comment says.
    const known = text.replace('# facts:', 'facts:').replace(/# {3}(engineSpeed:) #/, '  $1 9500 rpm #');
    expect(parse(known)).toMatchObject({ facts: { engineSpeed: '9500 rpm' } });
    expect(await among({ [file]: known })).toEqual([]);
    for (const { key } of facts) expect(text).toMatch(new RegExp(`^#   ${key}: # .+$`, 'm'));
  });

  it('of a guide and its Spanish twin pass together', async () => {
    expect(
      await among({
        'content/shop/guides/belt-set.mdx': skeleton({ ...page, kind: 'guide', reader: 'customer' }),
        'content/shop/guides/es/belt-set.mdx': skeleton({ ...page, kind: 'guide', reader: 'customer', lang: 'es' }),
      }),
    ).toEqual([]);
  });

  it('is a draft until somebody says otherwise', () => {
    expect(skeleton(page)).toMatch(/^draft: true$/m);
  });
});

describe('what is typed', () => {
  it('gives kind, title, kinds of machine, reader and twin', () => {
    expect(readWanted(['guide', 'Store it', '--for', 'floor-saw, ring-saw', '--es', 'Guárdela'])).toEqual({
      kind: 'guide',
      title: 'Store it',
      kinds: ['floor-saw', 'ring-saw'],
      reader: 'customer',
      twins: { es: 'Guárdela' },
    });
  });

  it.each([
    [[], /What shall it be\?/],
    [['jobb', 'X y z'], /"jobb" cannot be made\. .*Did you mean job\?/],
    [['job'], /It needs a title/],
    [['job', 'Change', 'belts'], /One title, please, in quotes: "Change belts"/],
    [['job', 'ab'], /3 to 70 letters/],
    [['job', 'x'.repeat(71)], /3 to 70 letters/],
    [['job', 'Belts', '--for', 'flor-saw'], /"flor-saw" is no kind of machine \(--for\): .*Did you mean floor-saw\?/],
    [['job', 'Belts', '--reader', 'owner'], /"owner" is no reader \(--reader\): mechanic or customer/],
    [['job', 'Belts', '--es', 'Correas'], /--es does not go with job/],
    [['job', 'Belts', '--reader'], /--reader stands without a word/],
    [['job', 'Belts', '--now'], /There is no option "--now"/],
    [['machine', 'Yard saw', '--for', 'floor-saw,ring-saw'], /A machine is of one kind/],
  ])('%j is refused with words', (args, words) => {
    expect(readWanted(args)).toMatch(words);
  });

  it.each([
    ['Change the belt: 3 steps', 'change-the-belt-3-steps'],
    ["The saw's cord", 'the-saws-cord'],
    ['Señal de daño', 'senal-de-dano'],
  ])('the title %j gives the file name %j', (title, name) => {
    expect(fileNameOf(title)).toBe(name);
  });
});

describe('at a terminal', () => {
  /** Answers in their order; what is asked and told is kept. */
  const talk = async (typed: string[], answers: string[]) => {
    const said: string[] = [];
    const apart = takeApart(typed);
    if (typeof apart === 'string') throw new Error(apart);
    const wanted = await askedFor(
      apart,
      (question) => {
        said.push(question);
        const answer = answers.shift();
        return answer === undefined
          ? Promise.reject(new Error(`asked too often: ${question}`))
          : Promise.resolve(answer);
      },
      (sentence) => said.push(`! ${sentence}`),
    );
    return { wanted, said, left: answers };
  };

  it('asks kind, title, machine, reader and twin, and takes the usual word for an empty answer', async () => {
    const { wanted, left } = await talk([], ['guide', 'Store it dry', 'floor-saw', '', 'Guárdela seca']);
    expect(wanted).toEqual({
      kind: 'guide',
      title: 'Store it dry',
      kinds: ['floor-saw'],
      reader: 'customer',
      twins: { es: 'Guárdela seca' },
    });
    expect(left).toEqual([]);
  });

  it('puts a question again when the answer makes no page, and says why', async () => {
    const { wanted, said } = await talk(
      [],
      ['jobb', 'job', 'X', 'Change the cord', 'flor-saw', '', 'owner', 'mechanic'],
    );
    expect(wanted).toMatchObject({ kind: 'job', title: 'Change the cord', reader: 'mechanic' });
    expect(wanted.kinds).toContain('ring-saw');
    expect(said.filter((line) => line.startsWith('!'))).toEqual([
      expect.stringContaining('explainer: why it works'),
      expect.stringContaining('Did you mean job?'),
      expect.stringContaining('3 to 70 letters'),
      expect.stringContaining('Did you mean floor-saw?'),
      expect.stringContaining('mechanic or customer'),
    ]);
  });

  it('does not ask what was typed, nor for the reader of a machine', async () => {
    const { wanted, said } = await talk(['machine'], ['Yard saw', 'floor-saw']);
    expect(wanted).toMatchObject({ kind: 'machine', title: 'Yard saw', kinds: ['floor-saw'] });
    expect(said).toHaveLength(2);
    expect((await talk(['job', '--reader', 'customer'], ['Wash it', 'all'])).said).toHaveLength(2);
  });
});

describe('npm run new', () => {
  // A copy of the program, so that the shop of the project stays as it is.
  const place = mkdtempSync(join(tmpdir(), 'almanac-new-'));
  const at = (path: string) => join(place, path);
  beforeAll(() => {
    cpSync('src', at('src'), { recursive: true });
    for (const folder of ['knowledge/jobs', 'shop']) mkdirSync(at(`content/${folder}`), { recursive: true });
    symlinkSync(resolve('node_modules'), at('node_modules'), 'junction');
    writeFileSync(at('package.json'), '{"type":"module"}');
  });
  afterAll(() => rmSync(place, { recursive: true }));
  const run = (...args: string[]) => {
    const ran = spawnSync(process.execPath, [at('src/commands/new.ts'), ...args], { encoding: 'utf8' });
    return { code: ran.status, said: ran.stdout + ran.stderr };
  };

  it('writes into the shop, and never over what is there', () => {
    const made = run('job', 'Recoil cord', '--for', 'cut-off-saw');
    expect(made.said).toContain('Made content/shop/jobs/recoil-cord.mdx');
    expect(made.said).toContain('http://localhost:4321/jobs/recoil-cord/\n');
    expect(made.said).toContain('That is the demo shop');
    expect(made.code).toBe(0);
    writeFileSync(at('content/shop/jobs/recoil-cord.mdx'), 'mine');
    const again = run('job', 'Recoil cord');
    expect(again.said).toContain('is there already; nothing was changed');
    expect(again.code).toBe(2);
    expect(readFileSync(at('content/shop/jobs/recoil-cord.mdx'), 'utf8')).toBe('mine');
  });

  it('says in one line when the system takes no file there', () => {
    writeFileSync(at('content/shop/tables'), 'a file where the folder should be');
    const made = run('table', 'Sizes of belts');
    expect(made.said).toMatch(/^Not made: [A-Z]+: [^\n]*\n$/);
    expect(made.code).toBe(2);
  });

  it('does not quietly stand in for a page of the knowledge', () => {
    writeFileSync(at('content/knowledge/jobs/belt-change.mdx'), 'theirs');
    const made = run('job', 'Belt change');
    expect(made.said).toContain('yours would stand in its place');
    expect(made.code).toBe(2);
    expect(existsSync(at('content/shop/jobs/belt-change.mdx'))).toBe(false);
  });
});
