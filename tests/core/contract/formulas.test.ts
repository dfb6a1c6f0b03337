/** The formula shown is the formula used: mathjs evaluates each line of working, units included. */
import { all, create, type Unit as MathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { topics } from '../../../src/core/registry.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import { readSum } from '../../../src/core/quantity/sum.ts';
import { unitOf } from '../../../src/core/quantity/index.ts';
import type { Formula, PutIn, WorkingStep } from '../../../src/core/contract/formula.ts';
import type { RawInputs } from '../../../src/core/contract/field.ts';
import { examplesFor } from '../../cases/examples.ts';

const math = create(all ?? {});

/** Angles go in as numbers in rad and pure numbers as numbers; everything else carries its unit. */
function asMath(p: PutIn): number | MathUnit {
  const { dimension, si, math: name } = unitOf(p.unit);
  if (dimension === 'ratio' || dimension === 'angle') return p.value * si;
  return math.multiply(p.value, math.evaluate(/^\d/.test(name) ? name : `1 ${name}`)) as unknown as MathUnit;
}

function siOf(value: number | MathUnit): number {
  return typeof value === 'number' ? value : Number(value.toSI().toJSON().value);
}

function check(s: WorkingStep): void {
  const [, right = ''] = s.expression.split(/=(.*)/s);
  const got = math.evaluate(right, Object.fromEntries(s.put.map((p) => [p.symbol, asMath(p)]))) as number | MathUnit;
  const claimed = asMath(s.gave);
  if (typeof got !== 'number')
    expect(got.equalBase(claimed as MathUnit), `${s.formula}: units of ${s.expression}`).toBe(true);
  const [a, b] = [siOf(got), siOf(claimed)];
  // mathjs rounds some unit factors in the eleventh digit (psi, for one).
  const scale = Math.max(
    Math.abs(a),
    Math.abs(b),
    ...s.put.map((p) =>
      unitOf(p.unit).dimension === unitOf(s.gave.unit).dimension ? Math.abs(siOf(asMath(p))) * 1e-6 : 0,
    ),
    1e-30,
  );
  expect(Math.abs(a - b) / scale, `${s.formula}: mathjs ${a}, core ${b}`).toBeLessThan(1e-9);
}

describe.each(Object.entries(topics))('%s', (name, topic) => {
  const used = new Set<string>();
  it.each(examplesFor(name, topic.example).map((raw) => [JSON.stringify(raw).slice(0, 80), raw] as const))(
    '%s',
    (_, raw: RawInputs) => {
      const read = readInputs(topic.fields, raw, { sum: readSum });
      if (!read.ok) throw new Error(`Not readable: ${JSON.stringify(read)}`);
      const result = topic.compute(read.inputs);
      if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result.problems)}`);
      expect(result.working.length).toBeGreaterThan(0);
      for (const s of result.working) {
        used.add(s.formula);
        check(s);
      }
    },
  );

  it('shows no formula that is never checked', () => {
    expect(topic.formulas.map((f: Formula) => f.id).filter((id) => !used.has(id))).toEqual([]);
  });

  it('lists every symbol of its formulas', () => {
    for (const f of topic.formulas) {
      const symbols = new Set<string>();
      math.parse(f.expression).traverse((node, path) => {
        if (
          node.type === 'SymbolNode' &&
          path !== 'fn' &&
          (node as unknown as { name: string }).name !== 'pi' &&
          (node as unknown as { name: string }).name !== 'e'
        )
          symbols.add((node as unknown as { name: string }).name);
      });
      expect(
        [...symbols].filter((s) => !(s in f.symbols)),
        f.id,
      ).toEqual([]);
    }
  });
});
