/** Forms on money, parts, order and intervals at the ends of what they take: drawn, finite, complete. */
import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import type { RawInputs } from '../../src/core/contract/field.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { calculators } from './calculators.ts';
import { pageFor, wholeFigures } from './page.ts';

const suspects = (n: number) =>
  Array.from({ length: n }, (_, k) => ({
    name: `Suspect ${k} with a name as long as a name may be, to the last letter of it`,
    likelihood: 100 / n - 0.01,
    fixMinutes: 0,
  }));
const checks = (n: number, of: number) =>
  Array.from({ length: n }, (_, k) => ({
    name: `Check ${k}`,
    suspect: suspects(of)[k % of]?.name ?? '',
    minutes: k === 0 ? 0.01 : 10000,
    ifFaulty: 100,
    ifSound: 0,
  }));
const tasks = (n: number, more: RawInputs = {}) =>
  Array.from({ length: n }, (_, k) => ({
    machine: `Machine ${k}`,
    task: 'A service with a long name that does not fit on one line of a picture',
    base: k + 1,
    ...more,
  }));

const extremes: readonly (readonly [string, RawInputs])[] = [
  ['part-change', { partCost: 0.01, age: 0, horizon: '0.001 h', reopenMinutes: 0, stopCost: 0 }],
  ['part-change', { partCost: 1000000, age: '100000 h', mean: '1 h', horizon: '100000 h', reopenMinutes: 10000 }],
  ['part-change', { lifeAs: 'scale', scale: '400 h', shape: 0.3 }],
  ['part-change', { shape: 10, age: '600 h', mend: true, mendWear: 100 }],
  ['service-interval', { start: '2026-03-02', tasks: tasks(1, { since: '100000 h' }) }],
  ['service-interval', { start: '2026-03-02', tasks: tasks(200) }],
  ['service-interval', { start: '2026-03-02', tasks: tasks(3, { base: 100000, perDay: 0.01, daysPerWeek: 0.1 }) }],
  ['service-interval', { start: '2026-03-02', tasks: tasks(1), replace: true, shape: 1.01, planned: 1, failure: 1.01 }],
  [
    'service-interval',
    { start: '2026-03-02', tasks: tasks(1), replace: true, shape: 20, planned: 0.01, failure: 1000000 },
  ],
  ['service-interval', { start: '2026-03-02', tasks: tasks(1), replace: true, shape: 1 }],
  ['fault-order', { suspects: suspects(1), checks: checks(1, 1), stripDowns: [] }],
  ['fault-order', { suspects: suspects(30), checks: checks(40, 30), stripDowns: [] }],
  [
    'fault-order',
    { suspects: suspects(2), checks: checks(2, 2).map((c) => ({ ...c, answer: 'clear' })), stripDowns: [] },
  ],
  ['repair-worth', { quote: 0, asIs: 0, serviceYears: 0.1, hoursPerYear: 1, newPrice: 1, newLife: 0.5 }],
  [
    'repair-worth',
    { quote: 1000000, asIs: 1000000, serviceYears: 30, hoursPerYear: 8000, newPrice: 1000000, newLife: 40, rate: 100 },
  ],
  ['repair-worth', { alreadySpent: 500 }],
];

it.each(extremes.map(([name, preset], k) => [name, k + 1, preset] as const))(
  '%s is drawn at extreme %i',
  (name, _, preset) => {
    const calculator = calculators.find((c) => c.name === name);
    if (!calculator) throw new Error(`There is no form for ${name}.`);
    const { Island, topic } = calculator;
    const html = renderToString(<Island {...pageFor(name, topic, { preset: wholeFigures(topic, preset) })} />);
    expect(html).not.toMatch(/NaN|Infinity|undefined|\[object/);
    // A preset out of the limits would show the empty answer and prove nothing.
    const read = readInputs(topic.fields, { ...topic.example, ...preset });
    expect(read.ok && topic.compute(read.inputs)).toMatchObject({ ok: true });
    expect(html).toMatch(/<svg role="img"/);
  },
);

it('the look into the engine stands before the money, and money already spent is answered', () => {
  const calculator = calculators.find((c) => c.name === 'repair-worth');
  if (!calculator) throw new Error('There is no form for repair-worth.');
  const html = renderToString(
    <calculator.Island
      {...pageFor('repair-worth', calculator.topic, { preset: { ...calculator.topic.example, alreadySpent: 500 } })}
    />,
  );
  const main = html.slice(html.indexOf('calc-main'), html.indexOf('calc-large'));
  expect([...main.matchAll(/data-value="(\w+)"/g)].map((m) => m[1])).toEqual(['engineFirst', 'verdict', 'spent']);
});
