import { describe, expect, it } from 'vitest';
import { defineFields } from '../../src/core/contract/field.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import {
  changeFigures,
  rawOf,
  startFigures,
  systemOf,
  unitsRead,
  type Change,
  type Figures,
} from '../../src/islands/kit/state/figures.ts';
import { askedFields, blankFigures, untouchedRows, untouchedText } from '../../src/islands/kit/state/shown-text.ts';

const fields = defineFields([
  { key: 'bore', label: 'Bore', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 20 },
  { key: 'depth', label: 'Depth', kind: 'quantity', dimension: 'length', units: ['mm', 'in'] },
  { key: 'price', label: 'Price', kind: 'money', more: true, default: 5 },
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
const [bore, , , , , spots] = fields;

const start = startFigures({ depth: '1/2 in', spots: [{ size: '10 mm' }] }, true, 'metric');
const after = (...changes: Change[]): Figures => changes.reduce(changeFigures, start);
const metres = (now: Figures, key: string) => {
  const read = readInputs(fields, rawOf(now), { system: now.system, units: unitsRead(now, fields) });
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.inputs[key];
};

describe('the unit switch', () => {
  it('never rewrites what was typed and never changes what it means', () => {
    const now = after({ do: 'type', key: 'bore', value: '25' }, { do: 'units', system: 'inch' });
    expect(rawOf(now)['bore']).toBe('25');
    expect(systemOf(now, 'bore')).toBe('metric');
    expect(metres(now, 'bore')).toBeCloseTo(0.025, 12);
  });

  it('decides what a number means that is typed after it', () => {
    const now = after({ do: 'units', system: 'inch' }, { do: 'type', key: 'bore', value: '2' });
    expect(metres(now, 'bore')).toBeCloseTo(2 * 0.0254, 12);
  });

  it('decides again once the box has been emptied', () => {
    const now = after(
      { do: 'type', key: 'bore', value: '25' },
      { do: 'units', system: 'inch' },
      { do: 'type', key: 'bore', value: '' },
      { do: 'type', key: 'bore', value: '1' },
    );
    expect(metres(now, 'bore')).toBeCloseTo(0.0254, 12);
  });

  it('shows an untouched figure in the new unit and leaves its value alone', () => {
    const now = after({ do: 'units', system: 'inch' });
    expect(untouchedText(bore, undefined, 'inch')).toBe('0.787402');
    expect(metres(now, 'bore')).toBe(0.02);
    expect(untouchedRows(spots, [{ size: '10 mm' }], 'inch')).toEqual([{ size: '0.393701' }]);
    expect(metres(now, 'spots')).toEqual([{ size: 0.01 }]);
  });

  it('reads a typed unit as typed', () => {
    expect(metres(after({ do: 'type', key: 'bore', value: '1-3/16 in' }), 'bore')).toBeCloseTo(0.0301625, 12);
  });
});

describe('the boxes', () => {
  it('ask only for what the other answers call for', () => {
    expect(askedFields(fields, {}).map((f) => f.key)).not.toContain('passes');
    expect(askedFields(fields, { how: 'fine' }).map((f) => f.key)).toContain('passes');
  });

  it('are blank when emptied, but for choices and seldom-needed ones', () => {
    expect(blankFigures(fields)).toEqual({ bore: '', depth: '', passes: '', spots: [{ size: '' }] });
  });

  it('keep the example under what is typed and give it back', () => {
    const typed = after({ do: 'type', key: 'depth', value: '3' });
    expect(rawOf(typed)['depth']).toBe('3');
    expect(rawOf(changeFigures(typed, { do: 'start', base: start.base, isExample: true }))['depth']).toBe('1/2 in');
  });

  it('count as left only when something was changed in them', () => {
    expect(after({ do: 'leave', path: 'bore' }).visited.size).toBe(0);
    expect([...after({ do: 'type', key: 'bore', value: 'x' }, { do: 'leave', path: 'bore' }).visited]).toEqual([
      'bore',
    ]);
  });
});
