/** The figures behind an answer as paper and the job sheet say them: of a list no figure stands without its name. */
import { expect, it } from 'vitest';
import { startFigures } from '../../src/islands/kit/state/figures.ts';
import { exampleEntries } from '../../src/islands/kit/state/starts.ts';
import { usedFigures } from '../../src/islands/kit/state/used.ts';
import { calculators } from './calculators.ts';

const lists = calculators.flatMap(({ name, topic }) => {
  const figures = startFigures(exampleEntries(topic.fields, topic.example), 'metric');
  const used = usedFigures(topic.fields, figures, 'USD');
  return topic.fields.flatMap((field) => {
    const rows = used.find((u) => u.key === field.key)?.rows;
    return field.kind === 'rows' && rows ? [{ list: `${name}, ${field.label}`, field, rows }] : [];
  });
});

it('there are lists', () => {
  expect(lists.length).toBeGreaterThan(4);
});

it.each(lists)('$list: each figure bears the name of its column, but what begins the row', ({ field, rows }) => {
  const names = field.columns.map((c) => `${c.label}: `);
  for (const row of rows)
    for (const [at, figure] of row.split('; ').entries()) {
      const named = names.some((n) => figure.startsWith(n) || (at === 0 && figure.includes(`. ${n}`)));
      expect(named, `${figure}, in ${row}`).toBe(true);
    }
});

it('a row of the noise of a day', () => {
  const day = lists.find((l) => l.list.startsWith('noise-dose'));
  expect(day?.rows[1]).toBe('Breaker. Level at the ear, dB(A): 98; Time: 30 min; Protectors worn: Yes');
});
