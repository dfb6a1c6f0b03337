import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { topics } from '../../src/core/registry.ts';
import { caseFile, casesOf, folders } from './files.ts';
import { compare, run } from './run.ts';

const sources = new URL('../../content/knowledge/sources/', import.meta.url);

/** Topics no published worked example was found for, and why. */
const withoutPublished: Readonly<Record<string, string>> = {
  'part-change':
    'The rule is in print (Hasidi and Kalech 2021, definition 3), its worked example is for another decision; ' +
    'no print was found that sums a part change while the machine is open.',
  'split-pulley':
    'A belt climbing between two cones is plane geometry; books print speeds and belt lengths of such drives ' +
    'at given diameters, never the diameter from the gap.',
  'running-clearance':
    'Handbooks give the loss of clearance as charts or as makers’ figures; no example was found that shows ' +
    'raceway, ring and fit with the outcome.',
};

describe.each(folders)('%s cases', (folder) => {
  const files = readdirSync(new URL(`../${folder}/`, import.meta.url)).filter((f) => f.endsWith('.json'));

  describe.each(files.map((f) => f.replace(/\.json$/, '')))('%s', (name) => {
    const file = caseFile(folder, name) ?? { count: 0, cases: [] };

    it('holds as many cases as it says, each with its own id, source and reason', () => {
      expect(file.cases.length).toBe(file.count);
      expect(file.count).toBeGreaterThan(0);
      expect(new Set(file.cases.map((c) => c.id)).size).toBe(file.count);
      for (const c of file.cases) {
        expect(c.where.length, c.id).toBeGreaterThan(5);
        expect(c.why.length, c.id).toBeGreaterThan(3);
        expect(Object.keys(c.expected ?? {}).length > 0 || c.problem !== undefined, c.id).toBe(true);
      }
    });

    it('names sources that have their file, and how it was seen fits the folder', () => {
      for (const id of new Set(file.cases.map((c) => c.source))) {
        const source = new URL(`${id}.yaml`, sources);
        expect(existsSync(source), id).toBe(true);
        if (folder !== 'published') continue;
        const how = /^how: *(\S+)/m.exec(readFileSync(source, 'utf8'))?.[1];
        expect(['read', 'quoted'], `${id} was not seen in print: ${how}`).toContain(how);
      }
    });

    it.each(file.cases.map((c) => [c.id, c] as const))('%s', (_, one) => {
      const result = run(one);
      if (one.problem !== undefined) {
        expect(result.ok ? 'an answer' : result.problems[0]?.code).toBe(one.problem);
        return;
      }
      if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result.problems)}`);
      for (const [key, wanted] of Object.entries(one.expected ?? {})) compare(result, key, wanted);
    });
  });
});

it('every topic has at least eight cases', () => {
  expect(Object.keys(topics).filter((t) => casesOf(t).length < 8)).toEqual([]);
});

it('every topic has published cases, or a reason why none exists', () => {
  const without = Object.keys(topics).filter((t) => caseFile('published', t) === undefined);
  expect(without.sort()).toEqual(Object.keys(withoutPublished).sort());
});
