/** What is typed is read once, said back, and never brings the reader down, whatever its size or shape. */
import { describe, expect, it } from 'vitest';
import { askedInputs, checkInputs, checkNumber, inOrderOfNeed } from '../../../src/core/contract/check-inputs.ts';
import { sayMoney } from '../../../src/core/contract/currency.ts';
import { defineFields, type Field, type RawInputs } from '../../../src/core/contract/field.ts';
import { guarded } from '../../../src/core/contract/guarded.ts';
import { readInputs, type ReadOptions } from '../../../src/core/contract/read-inputs.ts';
import { textOf } from '../../../src/core/contract/text-of.ts';
import { fromUnit } from '../../../src/core/quantity/index.ts';
import { topics } from '../../../src/core/registry.ts';

const fields = defineFields([
  {
    key: 'speed',
    label: 'Speed',
    kind: 'quantity',
    dimension: 'rotation',
    units: ['rpm', 'rpm'],
    min: 100,
    max: 20000,
    optional: true,
  },
  { key: 'price', label: 'Price', kind: 'money', min: 0, max: 1e6, optional: true },
  { key: 'count', label: 'Count', kind: 'count', min: 0, max: 100000, optional: true },
  { key: 'share', label: 'Share', kind: 'number', min: 0, max: 1e6, optional: true },
  { key: 'mix', label: 'Mix', kind: 'number', partsToOne: true, min: 10, max: 100, optional: true },
  { key: 'day', label: 'Day', kind: 'text', day: true, optional: true },
  {
    key: 'lines',
    label: 'Lines',
    kind: 'rows',
    minRows: 0,
    maxRows: 3,
    optional: true,
    columns: [{ key: 'size', label: 'Size', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], max: 100 }],
  },
]);

function read(raw: RawInputs, options: ReadOptions = {}) {
  const out = readInputs(fields, raw, options);
  if ('needsSum' in out) throw new Error('a sum');
  return out;
}

describe('figures as people write them', () => {
  it.each<[RawInputs, unknown, string]>([
    [{ speed: '9,500' }, 9500 / 60, '9500 rpm'],
    [{ speed: '9,500 rpm' }, 9500 / 60, '9500 rpm'],
    // Money has no thousandths, a count no fractions.
    [{ price: '1,450' }, 1450, '1450'],
    [{ price: '1,450.50' }, 1450.5, '1450.5'],
    [{ price: '1.450,50' }, 1450.5, '1450.5'],
    [{ count: '2,500' }, 2500, '2500'],
    [{ mix: '50:1' }, 50, '50:1'],
    [{ mix: '1:50' }, 50, '50:1'],
    [{ mix: '50 to 1' }, 50, '50:1'],
    [{ mix: '50 a 1' }, 50, '50:1'],
    [{ mix: '2 %' }, 50, '50:1'],
    [{ mix: '1/50' }, 50, '50:1'],
    [{ mix: '50/1' }, 50, '50:1'],
    [{ mix: '2.5%' }, 40, '40:1'],
    [{ day: '11/25/2026' }, '2026-11-25', 'November 25, 2026'],
  ])('%j is read and said', (raw, value, said) => {
    const [key = ''] = Object.keys(raw);
    const out = read(raw);
    expect(out.ok && out.inputs[key]).toEqual(value);
    expect([out.said[key], out.chosen]).toEqual([said, [key]]);
  });

  it('takes the word the label counts in behind a number, and no other', () => {
    const box = (label: string) => defineFields([{ key: 'n', label, kind: 'number', min: 0, max: 9000 }]);
    const n = (label: string, text: string) => {
      const out = readInputs(box(label), { n: text }, {});
      return 'inputs' in out && out.ok ? out.inputs['n'] : 'refused';
    };
    expect(n('Years of service', '3 years')).toBe(3);
    expect(n('Years of service', '3 yrs.')).toBe(3);
    expect(n('Years of service', '3 años')).toBe(3);
    expect(n('Cutting hours a year', '150 h')).toBe(150);
    expect(n('Minutes to look', '15 min')).toBe(15);
    expect(n('Days without the machine', '3 days')).toBe(3);
    expect(n('Years of service', '3 h')).toBe('refused');
    expect(n('Cutting hours a year', '2 years')).toBe('refused');
    expect(n('Quantity', '3 days')).toBe('refused');
  });

  it('says nothing of its own about a plain figure', () => {
    expect(read({ speed: '9500', price: '1450', mix: '50', day: '2026-11-25' }).chosen).toEqual([]);
  });

  it('names a cell by its row and column, also beside a problem elsewhere', () => {
    const out = read({ lines: [{ size: '5' }, { size: '19,996' }], count: 'many' });
    expect(out.ok).toBe(false);
    expect([out.chosen, out.said['lines.2.size']]).toEqual([['lines.2.size'], '19.996 mm']);
  });

  it('offers both readings where the box takes both', () => {
    const out = read({ share: '1,234' });
    expect(!out.ok && out.problems).toEqual([
      { field: 'share', code: 'two-readings', data: { got: '1,234' }, readings: ['1.234', '1234'] },
    ]);
  });

  it('reads a day in the order of the language', () => {
    expect(read({ day: '3/4/2026' }, { lang: 'en' })).toMatchObject({ inputs: { day: '2026-03-04' } });
    expect(read({ day: '3/4/2026' }, { lang: 'es' })).toMatchObject({ inputs: { day: '2026-04-03' } });
  });

  it.each(['$1,450', '1450 USD', 'US$1,450.00', '$ 1450'])('passes over the sign of the currency: %s', (price) => {
    expect(read({ price }, { currency: 'USD' })).toMatchObject({ inputs: { price: 1450 } });
  });

  it('does not take another currency for the shop’s own', () => {
    expect(read({ price: '€1450' }, { currency: 'USD' }).ok).toBe(false);
    expect(read({ price: '$1450' }).ok).toBe(false);
  });
});

describe('values of any size and shape', () => {
  const deep = JSON.parse('['.repeat(5000) + ']'.repeat(5000)) as RawInputs['x'];
  it.each<[string, RawInputs]>([
    ['a list in a list', { speed: deep, day: deep, lines: [deep as never] }],
    ['a long text', { speed: 'x'.repeat(1e6), price: '1'.repeat(1e6), day: '1'.repeat(1e6) }],
    ['a long list', { speed: Array.from({ length: 1e5 }, () => ({ a: 1 })) }],
    ['more rows than there may be', { lines: Array.from({ length: 1e5 }, () => ({ size: 1 })) }],
    ['names without end', Object.fromEntries(Array.from({ length: 1e4 }, (_, i) => [`${'k'.repeat(500)}${i}`, 1]))],
    ['names of the language', JSON.parse('{"__proto__": 1, "constructor": 2, "toString": 3}') as RawInputs],
  ])('%s is refused in few words', (_, raw) => {
    const out = read(raw);
    expect(out.ok).toBe(false);
    expect(JSON.stringify(out).length).toBeLessThan(4000);
  });

  it('names any value in at most 91 signs', () => {
    for (const value of [deep, 'x'.repeat(500), { a: 'x'.repeat(500) }, null, undefined, Symbol('x'), 3n])
      expect(textOf(value).length).toBeLessThanOrEqual(91);
  });
});

describe('limits', () => {
  // 65 °F is 18.33 °C: the way there and back moves a figure by a last bit.
  const warm = {
    key: 'warm',
    label: 'Warm to',
    kind: 'quantity',
    dimension: 'temperature',
    units: ['°C', '°F'],
    min: -40,
    max: 100,
  } as const;
  const gap = {
    key: 'gap',
    label: 'Gap',
    kind: 'quantity',
    dimension: 'length',
    units: ['mm', 'in'],
    min: 0.3,
    above: true,
    max: 25.4,
  } as const;

  it('lets a printed limit through in every unit', () => {
    for (const si of [fromUnit(212, '°F'), fromUnit(-40, '°F'), fromUnit(100, '°C')])
      expect(checkNumber(warm, si)).toEqual([]);
    for (const si of [fromUnit(1, 'in'), fromUnit(1000, 'thou'), 0.1 * 0.254]) expect(checkNumber(gap, si)).toEqual([]);
  });

  it('refuses what lies past it', () => {
    expect(checkNumber(warm, fromUnit(212.001, '°F'))[0]?.code).toBe('too-large');
    expect(checkNumber(warm, fromUnit(-40.001, '°F'))[0]?.code).toBe('too-small');
  });

  it('holds the limit that is itself refused against the same slack', () => {
    for (const si of [0.3e-3, 0.3 * 0.001, (0.1 + 0.2) * 0.001])
      expect(checkNumber(gap, si)[0]?.code).toBe('not-above');
    expect(checkNumber(gap, 0.300001e-3)).toEqual([]);
  });

  it('hands on no figure outside its limits', () => {
    const past = { warm: fromUnit(100, '°C') * (1 + 1e-12) };
    expect(checkInputs([warm], past)).toEqual([]);
    expect(askedInputs([warm], past)['warm']).toBe(fromUnit(100, '°C'));
  });
});

describe('fields that hang on others', () => {
  const chain = defineFields([
    { key: 'third', label: 'Third', kind: 'number', when: { field: 'second', is: [true] }, min: 0 },
    { key: 'second', label: 'Second', kind: 'yes-no', when: { field: 'first', is: ['a'] }, default: true },
    {
      key: 'first',
      label: 'First',
      kind: 'choice',
      options: [
        { value: 'a', label: 'A' },
        { value: 'b', label: 'B' },
      ],
    },
  ]);

  it('are judged after the ones they hang on', () => {
    expect(inOrderOfNeed(chain).map((f) => f.key)).toEqual(['first', 'second', 'third']);
    expect(readInputs(chain, { first: 'a', third: 7 })).toMatchObject({ ok: true, inputs: { second: true, third: 7 } });
  });

  it('are not asked for when the one between is not asked for', () => {
    expect(askedInputs(chain, { first: 'b', second: true, third: 7 })).toEqual({ first: 'b' });
    expect(readInputs(chain, { first: 'b' })).toMatchObject({ ok: true, inputs: { first: 'b' } });
  });

  it('never reach a calculation that did not ask for them', () => {
    const seen: unknown[] = [];
    const compute = guarded(chain, (inputs) => {
      seen.push({ ...inputs });
      return { ok: true, values: [], working: [], cautions: [] };
    });
    compute({ first: 'b', second: true, third: -1 });
    expect(seen).toEqual([{ first: 'b' }]);
  });

  it.each(Object.entries(topics))('%s: each condition names a field and none leads back to itself', (_, topic) => {
    for (const field of topic.fields) {
      const above = [field.key];
      let at: Field | undefined = field;
      while (at?.when) {
        const next: string = at.when.field;
        at = topic.fields.find((f) => f.key === next);
        expect(at?.key, `${field.key} hangs on ${next}`).toBe(next);
        expect(above, `${field.key} hangs on itself`).not.toContain(next);
        above.push(next);
      }
    }
  });
});

it('writes money as the language and the currency do', () => {
  // Spaces and signs as in the Unicode common locale data, which the run time carries.
  expect(sayMoney(1450.5, 'USD')).toBe('$1,450.50');
  expect(sayMoney(1450, 'JPY', 'en')).toBe('¥1,450');
  expect(sayMoney(12345.5, 'EUR', 'es').replace(/\s/g, ' ')).toBe('12.345,50 €');
});
