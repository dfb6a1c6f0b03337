/** The tables of limits against a list made apart from them, law by law, and how each was seen. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import {
  carbonMonoxideLimits,
  noiseLimitList,
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
