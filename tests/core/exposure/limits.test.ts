/** The tables of limits against a list made apart from them, law by law, and how each was seen. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import {
  carbonMonoxideLimits,
  noiseLimitList,
  respirators,
  silicaLimits,
  vibrationLimits,
  type LimitRow,
} from '../../../src/core/exposure/index.ts';

interface Listed {
  readonly id: string;
  readonly agent: 'rcs' | 'noise' | 'hav' | 'co';
  readonly key: string;
  readonly value: number | null;
  readonly basis: 'read' | 'quoted' | 'memory';
  readonly actions?: readonly number[];
  readonly [figure: string]: unknown;
}

type Row = LimitRow & Readonly<Record<string, unknown>>;

const listed = JSON.parse(readFileSync(new URL('limits-by-country.json', import.meta.url), 'utf8')) as Listed[];
const tables: Readonly<Record<Listed['agent'], readonly LimitRow[]>> = {
  rcs: silicaLimits,
  noise: noiseLimitList,
  hav: vibrationLimits,
  co: carbonMonoxideLimits,
};
const rowOf = ({ agent, key }: Listed) => tables[agent].find((r) => r.key === key) as Row | undefined;
const howOf = (source: string) =>
  (
    parse(readFileSync(new URL(`../../../content/knowledge/sources/${source}.yaml`, import.meta.url), 'utf8')) as {
      how: string;
    }
  ).how;

describe('limits by country', () => {
  it.each(listed.map((l) => [l.id, l] as const))('%s', (_, one) => {
    const row = rowOf(one);
    if (!row) throw new Error(`No row for ${one.key}.`);
    expect(row['limit'] ?? null).toBe(one.value);
    for (const figure of ['cristobalite', 'exchange', 'short', 'ceiling', 'never'])
      if (one[figure] !== undefined) expect(row[figure], figure).toBe(one[figure]);
    if (one.actions) expect(row['action']).toEqual(one.actions);
    else if (one['action'] !== undefined) expect(row['action']).toBe(one['action']);
  });

  it('a row known from memory alone leans on a source that says so, and no other does', () => {
    const wrong = listed.filter((l) => (l.basis === 'memory') !== (howOf(rowOf(l)?.source ?? '') === 'memory'));
    expect(wrong.map((l) => l.id)).toEqual([]);
  });

  it('every row is in the list', () => {
    const missing = Object.entries(tables).flatMap(([agent, rows]) =>
      rows.filter((r) => !listed.some((l) => l.agent === agent && l.key === r.key)).map((r) => `${agent} ${r.key}`),
    );
    expect(missing).toEqual([]);
  });
});

// 29 CFR 1910.134(d)(3)(i)(A), Table 1, as a US Army sheet has it; HSG53 and BS EN 529.
it('protection factors are those of the two tables', () => {
  const factors = (scale: 'us' | 'gb') => respirators[scale].map((r) => r.factor);
  expect(factors('us')).toEqual([10, 25, 50, 1000]);
  expect(factors('gb')).toEqual([4, 10, 20, 40]);
  const of = (scale: 'us' | 'gb', what: RegExp) => respirators[scale].find((r) => what.test(r.what))?.factor;
  expect([of('us', /filtering facepiece/), of('us', /loose-fitting/), of('us', /^full-face mask/)]).toEqual([
    10, 25, 50,
  ]);
  expect([of('gb', /^FFP1/), of('gb', /^FFP2/), of('gb', /^FFP3, or half mask with P3/)]).toEqual([4, 10, 20]);
});

// Control of Noise at Work Regulations, reg. 4 (read in the Northern Irish text): 80/135, 85/137, 87/140.
it('noise of the EU and Great Britain has its three peaks', () => {
  for (const key of ['eu', 'gb', 'es'])
    expect(noiseLimitList.find((l) => l.key === key)).toMatchObject({
      ...{ limit: 87, action: [85, 80], peak: [140, 137, 135] },
    });
});

// OSHA chemical sampling information: 50 ppm; 35, 200 at no time; ACGIH 25.
it('carbon monoxide of three US bodies', () => {
  const of = (key: string) => carbonMonoxideLimits.find((l) => l.key === key);
  expect([of('us-osha')?.limit, of('us-niosh')?.limit, of('us-niosh')?.ceiling, of('acgih')?.limit]).toEqual([
    50, 35, 200, 25,
  ]);
});
