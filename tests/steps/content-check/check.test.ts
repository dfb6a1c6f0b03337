import { execFile } from 'node:child_process';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { report } from '../../../src/steps/content-check/problem.ts';
import { problemsOf } from './good-content.ts';

test('good content has no problem', async () => {
  expect(await problemsOf()).toEqual([]);
});

test('each field that does not fit is named with its line, what was found and what is allowed', async () => {
  expect(await problemsOf('schema')).toMatchInlineSnapshot(`
    [
      "jobs/wash-down.mdx:2 time: nothing | this field is needed: text",
      "jobs/wash-down.mdx:3 summary: "Too short." | at least 20 letters, spaces not counted",
      "jobs/wash-down.mdx:4 reader: "mecanic" | one of customer, mechanic. Did you mean mechanic?",
      "jobs/wash-down.mdx:5 reviewed: "soon" | a day that exists, as YYYY-MM-DD, like 2026-03-12",
      "jobs/wash-down.mdx:6 tools: "Bucket" | a list, one line each starting with "- "",
      "jobs/wash-down.mdx:7 colour: a field this kind of file does not have | one of the fields title, summary, reader, reviewed, aliases, hazards, sources, related, draft, kinds, time, tools, parts.",
    ]
  `);
});

test('ids that do not exist are found in front matter and in components, with the nearest name', async () => {
  expect(await problemsOf('unknown-ids')).toMatchInlineSnapshot(`
    [
      "jobs/wash-down.mdx:10 sources.1: "shop-practise" | a file name from sources/. Did you mean shop-practice?",
      "jobs/wash-down.mdx:11 hazards.0: "no-such-hazard" | a file name from hazards/.",
      "jobs/wash-down.mdx:12 kinds.0: "hover-saw" | one of cut-off-saw, twin-blade-saw, floor-saw, ring-saw, other.",
      "jobs/wash-down.mdx:13 related.0: "jobs/wash-dwon" | a page that exists, like jobs/drive-belt-change. Did you mean jobs/wash-down?",
      "jobs/wash-down.mdx:16 <Hazard id>: "kickbak" | a name from hazards/. Did you mean kickback?",
      "jobs/wash-down.mdx:18 <Source id>: "nowhere" | a name from sources/.",
      "jobs/wash-down.mdx:18 <Term id>: "slury" | a name from glossary/. Did you mean slurry?",
      "jobs/wash-down.mdx:20 <Figure name>: "nozzle" | a name from src/components/figures/. Did you mean nozzles?",
      "jobs/wash-down.mdx:22 <Calculator topic>: "blade-sped" | a name from the list of calculators (npm run -s calc -- --list). Did you mean blade-speed?",
      "jobs/wash-down.mdx:24 <Hazard>: no id="..." | id="..." with a name from hazards/",
    ]
  `);
});

test('unknown components, dead links, links without a leading slash and code are found', async () => {
  expect(await problemsOf('names')).toMatchInlineSnapshot(`
    [
      "jobs/wash-down.mdx:11 <Danger>: a component that does not exist | one of BothUnits, Calculator, Figure, Hazard, Source, Term.",
      "jobs/wash-down.mdx:13 link: /jobs/wash-up/ | a page that exists.",
      "jobs/wash-down.mdx:13 link: wash-down | an address from the top, like /jobs/drive-belt-change/",
      "jobs/wash-down.mdx:15 text: import X from './x.js' | no import or export: every component may be used without",
    ]
  `);
});

test('every bare sign that would break the page is found in one run, in words about writing', async () => {
  expect(await problemsOf('bare-signs')).toMatchInlineSnapshot(`
    [
      "jobs/wash-down.mdx:11 text: Keep the gap <5 mm. | no bare "<" before a figure or word: write "under 5", or \\< for the sign itself. A component starts with a capital and ends with "/>": <Hazard id="kickback" />",
      "jobs/wash-down.mdx:13 text: {this} | no curly brackets in the text: write \\{ and \\} for the signs themselves",
      "jobs/wash-down.mdx:15 text: Then {that. | no bare curly bracket: write \\{ and \\} for the signs themselves, or round brackets",
    ]
  `);
});

test('two pages of one language do not share a title', async () => {
  expect(await problemsOf('same-title')).toMatchInlineSnapshot(`
    [
      "jobs/other-job.mdx:2 title: "cutting wet" | a title of its own; content/knowledge/guides/cutting-wet.mdx has this one",
    ]
  `);
});

test('a Spanish guide needs an English one and says its language', async () => {
  expect(await problemsOf('lone-twin')).toMatchInlineSnapshot(`
    [
      "guides/es/cutting-dry.mdx:1 file name: a Spanish guide without an English one | guides/cutting-dry.mdx beside it, or the file name of the guide it translates",
      "guides/es/cutting-dry.mdx:2 lang: "en" | lang: es, since the file stands in guides/es/",
    ]
  `);
});

test('a half-filled shop.yaml is told field by field', async () => {
  expect(await problemsOf('half-shop')).toMatchInlineSnapshot(`
    [
      "shop/shop.yaml:2 line: nothing | this field is needed: text after the colon, in "quotes" if it starts with #",
      "shop/shop.yaml:4 address: [] | at least 1 in the list",
      "shop/shop.yaml:7 currency: "dollars" | a currency that exists, by its ISO 4217 code, like USD, EUR or MXN",
      "shop/shop.yaml:8 labourRate: "ninety" | a number",
    ]
  `);
});

test('figures and signs as a shop writes them are told with the way to write them', async () => {
  const written: [RegExp, string][] = [
    [/^phone: .*/m, 'phone: 600000000'],
    [/^labourRate: .*/m, 'labourRate: 42,50 €'],
    [/^ {2}parts: .*/m, '  parts: 21 %'],
    [/^site: .*/m, 'color: #5b2a86'],
  ];
  const problems = await problemsOf(async (folder) => {
    const file = join(folder, 'content/shop/shop.yaml');
    const text = await readFile(file, 'utf8');
    await writeFile(
      file,
      written.reduce((all, [from, to]) => all.replace(from, to), text),
    );
  });
  expect(problems).toEqual([
    'shop/shop.yaml:14 labourRate: "42,50 €" | a number alone: 42.50',
    'shop/shop.yaml:16 tax.parts: "21 %" | a number alone: 21',
    'shop/shop.yaml:20 color: nothing | this field is needed: text after the colon, in "quotes" if it starts with #',
    'shop/shop.yaml:9 phone: 600000000 | text: put it in quotes, "600000000"',
  ]);
});

test('a missing shop.yaml is told', async () => {
  expect(await problemsOf((folder) => rm(join(folder, 'content/shop/shop.yaml')))).toMatchInlineSnapshot(`
    [
      "shop/shop.yaml:1 the file: nothing | this file with the name, address and rates of your shop; src/schemas/shop.ts lists its fields",
    ]
  `);
});

test('YAML that cannot be read is told with its line', async () => {
  expect(await problemsOf('broken-yaml')).toMatchInlineSnapshot(`
    [
      "sources/shop-practice.yaml:1 YAML: title: Common practice: in repair shops | text that holds a colon in "quotes"",
    ]
  `);
});

test('files with the wrong name, ending or folder are told', async () => {
  expect(await problemsOf('bad-names')).toMatchInlineSnapshot(`
    [
      "hazards/noise.yml:1 file name: .yml | a file ending in .yaml",
      "jobs/Wash_Up.mdx:1 file name: Wash_Up | small letters, digits and single hyphens, like wet-cutting",
      "recipes/soup.yaml:1 file name: the folder recipes | one of the folders guides, jobs, tables, explainers, calculators, faults, hazards, sources, machines, glossary, intervals, checks, parts, trouble, pages",
    ]
  `);
});

test('the report gives file, line, what was found and what is wanted, and ends with a count', () => {
  const problem = { file: 'content/jobs/a.mdx', line: 3, field: 'title', got: '"A"', allowed: 'at least 3 letters' };
  expect(report([problem])).toBe(
    'content/jobs/a.mdx:3  title\n    found:  "A"\n    wanted: at least 3 letters\n\n1 problem in content/.',
  );
});

test('a build of broken content stops with the list, exit code 1 and no stack trace', async () => {
  const config = fileURLToPath(new URL('../fixtures/broken-site/', import.meta.url));
  const astro = fileURLToPath(new URL('../../../node_modules/astro/bin/astro.mjs', import.meta.url));
  const outcome = await new Promise<{ code: number; text: string }>((done) => {
    execFile(
      process.execPath,
      [astro, 'build', '--root', config],
      { env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NO_COLOR: '1' } },
      (error, stdout, stderr) => done({ code: Number(error?.code ?? 0), text: stdout + stderr }),
    );
  });
  expect(outcome.code).toBe(1);
  expect(outcome.text).toContain('content/shop/shop.yaml:1  the file');
  expect(outcome.text).toContain('the site was not built');
  expect(outcome.text).not.toMatch(/^\s+at .*:\d+:\d+/m);
});

test("a file in the shop's folder stands in for the knowledge of the same name", async () => {
  expect(await problemsOf('own-page')).toEqual([]);
});
