/** Whatever a calculator answers, its form shows it: no verdict or figure that a drawing counts on may be missing. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { examplesFor } from '../cases/examples.ts';
import { withFigure, type Boundaries } from '../core/boundaries/row.ts';
import { calculators } from './calculators.ts';
import { pageFor, wholeFigures } from './page.ts';

describe.each(calculators.map((c) => [c.name, c] as const))('%s', (name, { topic, Island }) => {
  it('shows every answer of its cases, and those on both sides of every threshold', async () => {
    const { boundaries } = (await import(`../core/boundaries/${name}.ts`)) as { boundaries: Boundaries };
    const sides = boundaries.rows.flatMap(({ inputs, moves, at, by = 1e-3 }) =>
      [at - (by === 1 ? 1 : Math.max(Math.abs(at), 1e-3) * by), at, at + (by === 1 ? 1 : Math.abs(at) * by)].map((to) =>
        withFigure(inputs, moves, to),
      ),
    );
    for (const raw of [...examplesFor(name, topic.example), ...sides]) {
      const html = renderToString(<Island {...pageFor(name, topic, { preset: wholeFigures(topic, raw) })} />);
      expect(html, JSON.stringify(raw)).not.toMatch(/NaN|Infinity|undefined|\[object/);
    }
  });
});
