/** Steps for search engines: only those that are numbered, each with the cautions that stand before it. */
import { mdxToMdast } from 'satteri';
import { expect, it } from 'vitest';
import { durationOf, sectionsOf, type TextNode } from '../../src/lib/how-to-steps.ts';

const read = (text: string) => sectionsOf(mdxToMdast(text) as TextNode, (id) => `the ${id}`);

it('takes numbered lists by chapter, without marks of sources and without drawings', () => {
  expect(
    read(`Some words.

## 1. Take it off

1. Undo the **nut** <Source id="a" />, by hand.
2. Lift the <Term id="drum" />.
<Figure name="x">1 a drum</Figure>

## Why

- A point is no step.

## 2. Put it back

1. Press it to <BothUnits mm={12} />.
`),
  ).toEqual([
    {
      name: '1. Take it off',
      steps: [
        { text: 'Undo the nut, by hand.', cautions: [] },
        { text: 'Lift the the drum.', cautions: [] },
      ],
    },
    { name: '2. Put it back', steps: [{ text: 'Press it to 12 mm.', cautions: [] }] },
  ]);
});

it('keeps a caution before the step it protects, across a list it interrupts', () => {
  const [section] = read(`## Open it

1. Wipe it.

<Hazard id="spring" />

2. Let it unwind.
3. Lift it.
`);
  expect(section?.steps.map((step) => step.cautions)).toEqual([[], ['spring'], []]);
});

it('finds none where nothing is numbered', () => {
  expect(read('## How much\n\n- At least the flow in the manual.\n')).toEqual([]);
});

it('says a time only where it is one (ISO 8601)', () => {
  expect(durationOf('45 minutes')).toBe('PT45M');
  expect(durationOf('1 hour')).toBe('PT1H');
  expect(durationOf('20 minutos')).toBe('PT20M');
  expect(durationOf('2 minutes to set up, then the whole cut')).toBeUndefined();
});
