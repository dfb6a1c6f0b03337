/** Every shared problem has words that name the field, say what came in and say what is allowed. */
import { describe, expect, it } from 'vitest';
import { defineFields } from '../../../src/core/contract/field.ts';
import { describeProblem, sharedProblemCodes } from '../../../src/core/contract/messages.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import { readSum } from '../../../src/core/quantity/sum.ts';
import { checkInputs } from '../../../src/core/contract/check-inputs.ts';

const fields = defineFields([
  {
    key: 'bore',
    label: 'Bore',
    kind: 'quantity',
    dimension: 'length',
    units: ['mm', 'in'],
    min: 0,
    above: true,
    max: 500,
  },
  {
    key: 'room',
    label: 'Room temperature',
    kind: 'quantity',
    dimension: 'temperature',
    units: ['°C', '°F'],
    default: 20,
    min: -40,
    max: 60,
  },
  { key: 'teeth', label: 'Teeth', kind: 'count', default: 3, min: 1, max: 9 },
  {
    key: 'fit',
    label: 'Seat',
    kind: 'choice',
    default: 'shaft',
    options: [
      { value: 'shaft', label: 'Shaft' },
      { value: 'housing', label: 'Housing' },
    ],
  },
  { key: 'wet', label: 'Wet cutting', kind: 'yes-no', default: true },
  {
    key: 'zone',
    label: 'Zone',
    kind: 'text',
    default: 'k5',
    pattern: '[a-zA-Z]+\\d+',
    patternSays: 'a letter and a grade, like k5',
    maxLength: 5,
  },
  { key: 'day', label: 'Day', kind: 'text', day: true, optional: true },
  {
    key: 'lines',
    label: 'Readings',
    kind: 'rows',
    minRows: 1,
    maxRows: 3,
    default: [{ at: 1 }],
    columns: [{ key: 'at', label: 'Diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0 }],
  },
]);

function message(raw: Record<string, unknown>, system: 'metric' | 'inch' = 'metric'): string {
  const read = readInputs(fields, { bore: '25 mm', ...raw }, { sum: readSum, system });
  const problems = read.ok ? checkInputs(fields, read.inputs) : 'problems' in read ? read.problems : [];
  return problems.map((p) => describeProblem(p, { fields, system })).join(' ');
}

describe('messages', () => {
  it.each([
    [{ bore: '' }, 'Enter the bore.'],
    [{ bore: 'abc' }, 'Bore must be a number, like 50 or 50 mm; "abc" is not.'],
    [{ bore: '12 kg' }, 'Bore must be a length; "12 kg" is a mass. Try mm or in.'],
    [{ bore: '12 blobs' }, 'Bore: the unit in "blobs" is not known here. Try mm or in.'],
    [{ bore: '1.2.3' }, 'Bore: "1.2.3" has more than one decimal point. Write it with one, like 1.23.'],
    [{ bore: '1,234.5' }, 'Bore must be more than 0 mm and at most 500 mm; 1234.5 mm is too large.'],
    [
      { lines: [{ at: '1,234 mm' }] },
      'Diameter (readings, row 1): "1,234 mm" can be read as 1.234 mm or as 1234 mm. Write the one you mean.',
    ],
    [
      { bore: '900,500' },
      'Bore must be more than 0 mm and at most 500 mm; "900,500", read as 900.500 or as 900500, is not.',
    ],
    [{ bore: '9'.repeat(201) }, 'Bore must have at most 200 characters; it has 201.'],
    [{ day: '30.2.2026' }, 'Day: there is no day "30.2.2026". Write it like 2026-11-25.'],
    [{ day: 'soon' }, 'Day must be a day, like 2026-11-25; "soon" is not.'],
    [{ bore: '0' }, 'Bore must be more than 0 mm and at most 500 mm; 0 mm is not.'],
    [{ bore: '600' }, 'Bore must be more than 0 mm and at most 500 mm; 600 mm is too large.'],
    [{ room: '100 °C' }, 'Room temperature must be between -40 °C and 60 °C; 100 °C is too large.'],
    [{ teeth: 2.5 }, 'Teeth must be a whole number, like 2; 2.5 is not.'],
    [{ teeth: '12 mm' }, 'Teeth must be a plain number without a unit, like 30; "12 mm" is not.'],
    [{ fit: 'door' }, 'Seat: "door" is not one of the choices: shaft, housing.'],
    [{ wet: 'maybe' }, 'Wet cutting must be yes or no; "maybe" is neither.'],
    [{ zone: '5k' }, 'Zone must be a letter and a grade, like k5; "5k" is not.'],
    [{ zone: 'abcdef7' }, 'Zone must have at most 5 characters; it has 7.'],
    [{ lines: [] }, 'Readings needs at least 1 row; it has 0.'],
    [{ lines: [{ at: 1 }, { at: 'x' }] }, 'Diameter (readings, row 2) must be a number, like 1 or 1 mm; "x" is not.'],
    [{ lines: 7 }, 'Readings must be a list of rows.'],
    [{ lines: [null] }, 'Readings, row 1: null is not a row of named figures.'],
    [{ lines: [{ at: 1 }, 'abc'] }, 'Readings, row 2: "abc" is not a row of named figures.'],
    [{ bore: '500.01' }, 'Bore must be more than 0 mm and at most 500 mm; 500.01 mm is too large.'],
    [{ bore: 1e300 }, 'Bore: 1e+300 is beyond anything that can be measured.'],
    [{ bore: '1 + 3/16 in' }, 'Bore: in the sum "1 + 3/16 in" give every part its unit, like 3/8 in + 0.002 in.'],
    [{ colour: 1 }, 'There is no field called "colour". Allowed: bore, room, teeth, fit, wet, zone, day, lines.'],
  ])('%j', (raw, words) => expect(message(raw)).toBe(words));

  it('says limits in inches to someone who works in inches', () => {
    expect(message({ bore: '30' }, 'inch')).toBe(
      'Bore must be more than 0 in and at most 19.685 in; 30 in is too large.',
    );
    expect(message({ room: '300' }, 'inch')).toBe(
      'Room temperature must be between -40 °F and 140 °F; 300 °F is too large.',
    );
  });

  it('has words for every shared code', () => {
    for (const code of sharedProblemCodes) {
      const words = describeProblem(
        {
          field: 'bore',
          code,
          data: { got: 5, min: 1, max: 2, allowed: 'a', value: 'v', wanted: 'length', is: 'mass', unit: 'kg', row: 1 },
        },
        { fields },
      );
      expect(words.length, code).toBeGreaterThan(10);
      expect(words, code).not.toMatch(/undefined|NaN/);
    }
  });

  it('holds what it could read against its limits although another box can not be read', () => {
    const read = readInputs(fields, { bore: 'x', teeth: 12, room: '100 °C', lines: [{ at: -1 }] }, { sum: readSum });
    expect(!read.ok && 'problems' in read && read.problems.map((p) => `${p.field} ${p.code}`)).toEqual([
      'bore not-a-number',
      'room too-large',
      'teeth too-large',
      'lines.1.at too-small',
    ]);
  });

  it('finds all problems in one pass, in the order of the fields', () => {
    const read = readInputs(fields, { teeth: 'x', bore: 'y', fit: 'shaft', zone: '' }, { sum: readSum });
    expect(!read.ok && 'problems' in read && read.problems.map((p) => p.field)).toEqual(['bore', 'teeth', 'zone']);
  });
});
