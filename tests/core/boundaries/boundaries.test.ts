/**
 * Every verdict just below, at and just above its threshold, and every hazard raised by some input.
 * The rows stand in one file for each topic; the figures in them are worked out by hand from the rule they name.
 */
import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../src/core/contract/field.ts';
import type { Answer } from '../../../src/core/contract/result.ts';
import { readSum } from '../../../src/core/quantity/sum.ts';
import { topics } from '../../../src/core/registry.ts';
import { examplesFor } from '../../cases/examples.ts';
import { withFigure, type Boundaries, type Row } from './row.ts';

const files = readdirSync(new URL('.', import.meta.url))
  .map((f) => /^([a-z-]+)\.ts$/.exec(f)?.[1] ?? '')
  .filter((name) => name in topics);

/** Topics that give no verdict, or none a figure decides. */
const withoutRows: Readonly<Record<string, string>> = {};

function answer(name: string, raw: RawInputs): Answer {
  const topic = topics[name];
  if (!topic) throw new Error(`There is no topic ${name}.`);
  const read = readInputs(topic.fields, raw, { sum: readSum });
  if (!read.ok) throw new Error(`${name} ${JSON.stringify(raw)}: ${JSON.stringify(read)}`);
  const result = topic.compute(read.inputs);
  if (!result.ok) throw new Error(`${name} ${JSON.stringify(raw)}: ${JSON.stringify(result)}`);
  return result;
}

function codeOf(name: string, raw: RawInputs, verdict: string): string | undefined {
  const value = answer(name, raw).values.find((v) => v.key === verdict);
  return value?.kind === 'verdict' ? value.code : undefined;
}

/** The same place reached by another way of counting: a last bit more or less must not tip a verdict. */
const lastBits = [1, 1 + 2 ** -52, 1 - 2 ** -53, 1 + 2 ** -50, 1 - 2 ** -50];

describe.each(files)('%s', async (name) => {
  const { boundaries } = (await import(`./${name}.ts`)) as { boundaries: Boundaries };

  it.each(boundaries.rows.map((row) => [row.why, row] as const))('%s', (_, row: Row) => {
    const { at, by = 1e-6 } = row;
    expect(new Set(row.gives).size, 'a threshold parts two verdicts').toBeGreaterThan(1);
    const just = (side: -1 | 1) => (by === 1 ? at + side : at + side * by * Math.max(Math.abs(at), 1e-3));
    const codeAt = (figure: number) => codeOf(name, withFigure(row.inputs, row.moves, figure), row.verdict);
    expect([codeAt(just(-1)), codeAt(at), codeAt(just(1))]).toEqual(row.gives);
    if (by !== 1) for (const bits of lastBits) expect(codeAt(at * bits), `${at * bits}`).toBe(row.gives[1]);
  });

  it('tries every verdict there are words for, or says what it hangs on', () => {
    const tried = new Set(boundaries.rows.flatMap((r) => r.gives));
    const told = boundaries.noThreshold ?? {};
    const codes = Object.keys(topics[name]?.words.verdicts ?? {});
    expect(codes.filter((c) => !tried.has(c) && !(c in told))).toEqual([]);
    // What is tried by now leaves the list.
    expect(Object.keys(told).filter((c) => !codes.includes(c) || tried.has(c))).toEqual([]);
  });
});

it('every topic with verdicts has its rows', () => {
  const wanted = Object.entries(topics).filter(([, t]) => Object.keys(t.words.verdicts).length > 0);
  const missing = wanted.map(([name]) => name).filter((name) => !files.includes(name) && !(name in withoutRows));
  expect(missing).toEqual([]);
});

describe('hazards', () => {
  const hazards = Object.entries(topics).flatMap(([name, t]) => t.hazards.map((h) => [name, h] as const));
  it.each(hazards)('%s raises %s', async (name, hazard) => {
    const rows = existsSync(new URL(`${name}.ts`, import.meta.url))
      ? ((await import(`./${name}.ts`)) as { boundaries: Boundaries }).boundaries.rows.flatMap((r) =>
          [0.99, 1, 1.01].map((f) => withFigure(r.inputs, r.moves, r.by === 1 ? r.at : r.at * f)),
        )
      : [];
    const raised = (raw: RawInputs) => answer(name, raw).cautions.some((c) => c.hazard === hazard);
    expect([...examplesFor(name, topics[name]?.example ?? {}), ...rows].some(raised)).toBe(true);
  });
});
