/** Every caution of the almanac answers the two questions of the rule, and its level is the one the rule gives. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { harms, levelOf, levels, likelihoods } from '../../src/schemas/caution-level.ts';
import { hazard } from '../../src/schemas/reference.ts';

const folder = new URL('../../content/knowledge/hazards/', import.meta.url);
const files = readdirSync(folder).filter((f) => f.endsWith('.yaml'));
const read = (file: string) => parse(readFileSync(new URL(file, folder), 'utf8')) as Readonly<Record<string, unknown>>;

describe('the rule', () => {
  it('never lowers a level for more harm, or for harm that is more likely', () => {
    const rank = (harm: (typeof harms)[number], likelihood: (typeof likelihoods)[number]) =>
      levels.indexOf(levelOf(harm, likelihood));
    for (const [k, harm] of harms.entries()) {
      expect(rank(harm, 'expected')).toBeLessThanOrEqual(rank(harm, 'possible'));
      const less = harms[k + 1];
      if (less) for (const l of likelihoods) expect(rank(harm, l)).toBeLessThanOrEqual(rank(less, l));
    }
  });

  it('uses every level, and danger for one case alone (ANSI Z535: sparingly)', () => {
    const all = harms.flatMap((h) => likelihoods.map((l) => levelOf(h, l)));
    expect(new Set(all)).toEqual(new Set(levels));
    expect(all.filter((l) => l === 'danger')).toHaveLength(1);
  });
});

describe('cautions', () => {
  it.each(files)('%s says what can happen and how likely', (file) => {
    const raw = read(file);
    expect([raw['harm'], raw['likelihood']]).not.toContain(undefined);
    expect(hazard.safeParse(raw).success).toBe(true);
  });

  it('a level that is not the rule’s is refused, and the right one is named', () => {
    const wrong = hazard.safeParse({ ...read('noise.yaml'), level: 'caution' });
    expect(wrong.success ? [] : wrong.error.issues.map((i) => [i.path.join('.'), i.message])).toEqual([
      ['level', 'warning, by harm "lasts" and likelihood "expected"'],
    ]);
  });

  it.each([
    ['an engine indoors', 'carbon-monoxide', 'danger'],
    ['a saw running on test', 'running-test', 'danger'],
    ['fuel at the bench', 'gasoline-at-the-bench', 'danger'],
    ['solvents', 'solvents', 'warning'],
    ['compressed air', 'compressed-air', 'warning'],
    ['a press', 'press-force', 'warning'],
    ['warm housings', 'heating-housings', 'warning'],
  ])('the bench has a caution for %s', (_, id, level) => expect(read(`${id}.yaml`)['level']).toBe(level));
});
