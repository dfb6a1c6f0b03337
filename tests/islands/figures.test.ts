import { describe, expect, it } from 'vitest';
import { defineFields } from '../../src/core/contract/field.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { askedFields } from '../../src/core/contract/asked.ts';
import {
  changesOf,
  entryAt,
  rawOf,
  startFigures,
  systemOf,
  unitsRead,
  type Change,
  type Figures,
} from '../../src/islands/kit/state/figures.ts';
import { shownText } from '../../src/islands/kit/state/shown-text.ts';
import { blankEntries, exampleEntries, laidOver, pageEntries } from '../../src/islands/kit/state/starts.ts';

const fields = defineFields([
  { key: 'bore', label: 'Bore', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 20 },
  { key: 'depth', label: 'Depth', kind: 'quantity', dimension: 'length', units: ['mm', 'in'] },
  { key: 'price', label: 'Price', kind: 'money', more: true, default: 5, usual: 'what most pay' },
  {
    key: 'how',
    label: 'How',
    kind: 'choice',
    default: 'rough',
    options: [
      { value: 'rough', label: 'Rough' },
      { value: 'fine', label: 'Fine' },
    ],
  },
  { key: 'passes', label: 'Passes', kind: 'count', when: { field: 'how', is: ['fine'] }, default: 2 },
  {
    key: 'spots',
    label: 'Spots',
    kind: 'rows',
    minRows: 1,
    maxRows: 4,
    columns: [{ key: 'size', label: 'Size', kind: 'quantity', dimension: 'length', units: ['mm', 'in'] }],
  },
]);
const [bore] = fields;

const example = { depth: '1/2 in', how: 'fine', spots: [{ size: '10 mm' }] };
const start = startFigures(exampleEntries(fields, example), 'metric');
const after = (...changes: Change[]): Figures => changes.reduce(changesOf(fields), start);
const type = (path: string, text: string, whole = false): Change => ({ do: 'type', path, text, whole });
const inch: Change = { do: 'units', system: 'inch' };
const metres = (now: Figures, key: string) => {
  const read = readInputs(fields, rawOf(now, fields), { system: now.system, units: unitsRead(now, fields) });
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.inputs[key];
};
const shown = (now: Figures, field: typeof bore | (typeof fields)[1]) =>
  shownText(field, entryAt(now.entries, field.key), now.system);

describe('the unit switch', () => {
  it('never rewrites what was typed and never changes what it means', () => {
    const now = after(type('bore', '25'), inch);
    expect(shown(now, bore)).toBe('25');
    expect(systemOf(now, 'bore')).toBe('metric');
    expect(metres(now, 'bore')).toBeCloseTo(0.025, 12);
  });

  it('decides what a number means that is typed after it', () => {
    expect(metres(after(inch, type('bore', '2')), 'bore')).toBeCloseTo(2 * 0.0254, 12);
  });

  it('decides again once the box has been emptied', () => {
    const now = after(type('bore', '25'), inch, type('bore', ''), type('bore', '1'));
    expect(metres(now, 'bore')).toBeCloseTo(0.0254, 12);
  });

  it('decides again when the whole box is written over, marked or not', () => {
    expect(metres(after(type('bore', '350'), inch, type('bore', '14')), 'bore')).toBeCloseTo(14 * 0.0254, 12);
    expect(metres(after(type('bore', '350'), inch, type('bore', '3', true)), 'bore')).toBeCloseTo(3 * 0.0254, 12);
  });

  it('lets a figure that is only mended keep its unit', () => {
    expect(metres(after(type('bore', '350'), inch, type('bore', '35')), 'bore')).toBeCloseTo(0.035, 12);
    expect(metres(after(type('bore', '35'), inch, type('bore', '355')), 'bore')).toBeCloseTo(0.355, 12);
  });

  it('shows an untouched figure in the new unit and leaves its value alone', () => {
    expect(shown(after(inch), bore)).toBe('0.787');
    expect(metres(after(inch), 'bore')).toBe(0.02);
    expect(metres(after(inch), 'spots')).toEqual([{ size: 0.01 }]);
  });

  it('reads a typed unit as typed', () => {
    expect(metres(after(type('bore', '1-3/16 in')), 'bore')).toBeCloseTo(0.0301625, 12);
  });

  it('reads each cell in the unit it was begun in', () => {
    const now = after(type('spots.1.size', '7'), inch, { do: 'add-row', key: 'spots' }, type('spots.2.size', '1'));
    expect(metres(now, 'spots')).toEqual([{ size: 0.007 }, { size: 0.0254 }]);
  });

  // Each is a bare number to the reader: 1½, −3 with the minus of Unicode, 1 500 with a no-break space, 2e1.
  it.each([
    ['1½', 0.0015],
    ['−3', -0.003],
    ['1\u00a0500', 1.5],
    ["1'500", 1.5],
    ['2e1', 0.02],
  ])('reads %s in a row in the unit it was begun in', (text, size) => {
    expect(metres(after(type('spots.1.size', text), inch), 'spots')).toEqual([
      { size: expect.closeTo(size, 12) as number },
    ]);
  });
});

describe('inch figures nobody typed are rounded to what a gauge reads', () => {
  // A caliper is read to a thousandth of an inch, a micrometer to a ten-thousandth; common practice, no source.
  const length = { ...bore, units: ['mm', 'in'] } as const;
  it.each([
    ['66', '2.598'],
    ['102', '4.016'],
    ['350', '13.78'],
    ['46.98', '1.8496'],
  ])('%s mm as %s in', (mm, inches) => {
    expect(shownText(length, { text: `${mm} mm`, from: 'example', unitIn: 'metric' }, 'inch')).toBe(inches);
  });
});

describe('the boxes', () => {
  it('ask only for what the other answers call for', () => {
    expect(askedFields(fields, {}).map((f) => f.key)).not.toContain('passes');
    expect(askedFields(fields, { how: 'fine' }).map((f) => f.key)).toContain('passes');
  });

  it('are blank when emptied, but for choices and figures that are usual', () => {
    const blank = startFigures(blankEntries(fields), 'metric');
    expect(rawOf(blank, fields)).toEqual({
      bore: '',
      depth: '',
      price: '5',
      how: 'rough',
      passes: '',
      spots: [{ size: '' }],
    });
  });

  it('give the example back, and undo gives back what stood there', () => {
    const typed = after(type('depth', '3'));
    const back = changesOf(fields)(typed, { do: 'start', entries: start.entries });
    expect(rawOf(back, fields)['depth']).toBe('1/2 in');
    expect(rawOf(changesOf(fields)(back, { do: 'undo' }), fields)['depth']).toBe('3');
  });

  it('take a word for one act', () => {
    const now = after(type('depth', '3'), type('depth', '31'), type('depth', '312'), { do: 'undo' });
    expect(rawOf(now, fields)['depth']).toBe('1/2 in');
  });

  it('count as left only when something was changed in them', () => {
    expect(after({ do: 'leave', path: 'bore' }).visited.size).toBe(0);
    expect([...after(type('bore', 'x'), { do: 'leave', path: 'bore' }).visited]).toEqual(['bore']);
  });
});

describe('whose a figure is', () => {
  const from = (now: Figures, path: string) => entryAt(now.entries, path)?.from;

  it('is the example’s until the reader types; folded ones go, required ones stay', () => {
    const now = after(type('bore', '25'));
    expect(from(now, 'bore')).toBe('own');
    expect(from(now, 'depth')).toBe('example');
    expect(from(now, 'price')).toBe('usual');
  });

  it('goes back to the default where a choice of the example opened more boxes', () => {
    const now = after(type('bore', '25'));
    expect(entryAt(now.entries, 'how')).toMatchObject({ text: 'rough', from: 'example' });
    expect(entryAt(now.entries, 'passes')).toBeUndefined();
  });

  it('leaves the choice alone that opened the very box being written', () => {
    expect(entryAt(after(type('passes', '3')).entries, 'how')?.text).toBe('fine');
  });

  it('of an article is the page’s, and nothing of the example stands beside it', () => {
    const now = pageEntries(fields, { bore: '30 mm' });
    expect(now['bore']).toMatchObject({ text: '30 mm', from: 'page' });
    expect(now['depth']).toBeUndefined();
  });

  it('of a plate never overwrites what was typed, and says which machine', () => {
    const fill: Change = { do: 'fill', figures: { bore: '66 mm', depth: '9 mm' }, from: 'plate', of: { machine: 'A' } };
    const now = after(type('bore', '25'), fill);
    expect(entryAt(now.entries, 'bore')).toMatchObject({ text: '25', from: 'own' });
    expect(entryAt(now.entries, 'depth')).toMatchObject({ text: '9 mm', from: 'plate', of: { machine: 'A' } });
  });

  it('becomes the reader’s when a default is confirmed, never when an example’s figure is', () => {
    const now = after(type('bore', '25'), { do: 'confirm', keys: ['how', 'depth'] });
    expect(from(now, 'how')).toBe('own');
    expect(from(now, 'depth')).toBe('example');
  });

  it('laid over others is of one origin', () => {
    expect(laidOver(fields, {}, { bore: 5 }, 'carried', { topic: 'x' })['bore']).toEqual({
      text: '5',
      from: 'carried',
      unitIn: 'metric',
      of: { topic: 'x' },
    });
  });
});
