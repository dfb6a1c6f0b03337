/** Sizes and codes people type, the page each leads to, and what opens filled. Decoys must offer nothing. */
import { describe, expect, it } from 'vitest';
import { readSizes } from '../../../src/browser/search/sizes.ts';
import { speechOf } from '../../../src/words/lang.ts';

const inUse = (word: string) => ['h7', 'n7', 'k5', 'k6'].includes(word);
const read = (question: string) => readSizes(question, inUse, speechOf('en'));
const pages = (question: string) => read(question).pins.map((pin) => pin.page);

describe('opens a calculator filled with what was typed', () => {
  it.each([
    ['6205-2RS', 'bearing-size', { known: 'designation', designation: '6205-2RS' }],
    ['6205 2rs c3', 'bearing-size', { known: 'designation', designation: '6205-2RS C3' }],
    ['6204ZZ', 'bearing-size', { known: 'designation', designation: '6204ZZ' }],
    ['25 x 52 x 15', 'bearing-size', { known: 'readings', bore: '25 mm', outside: '52 mm', width: '15 mm' }],
    ['25x52x15', 'bearing-size', { known: 'readings', bore: '25 mm', outside: '52 mm', width: '15 mm' }],
    ['H7 25', 'limits-fits', { size: '25 mm', zone: 'H7' }],
    ['k6 30 mm shaft', 'limits-fits', { size: '30 mm', zone: 'k6' }],
    ['50:1 5 l', 'fuel-mix', { ratio: '50:1', known: 'fuel', fuel: '5 L' }],
    ['1 gallon 40 to 1', 'fuel-mix', { ratio: '40:1', known: 'fuel', fuel: '1 gal' }],
  ])('%s', (question, topic, figures) => {
    expect(read(question).offers).toEqual([
      { page: `calculators/${topic}.html`, figures, said: expect.any(String) as string },
    ]);
  });
});

it('reads a unit by its name in the language of the page', () => {
  const mix = [{ page: 'calculators/fuel-mix.html', figures: { ratio: '50:1', known: 'fuel', fuel: '5 L' } }];
  expect(readSizes('mezcla 50:1 5 litros', inUse, speechOf('es')).offers).toMatchObject(mix);
  expect(readSizes('mix 50:1 5 liters', inUse, speechOf('en')).offers).toMatchObject(mix);
});

describe('leads to a page and fills nothing', () => {
  it.each([
    ['50:1', 'calculators/fuel-mix.html'],
    ['M8 8.8', 'tables/bolt-torques.html'],
    ['torque for 10.9 bolt', 'tables/bolt-torques.html'],
    ['h7', 'calculators/limits-fits.html'],
    ['80 m/s', 'tables/blade-rotation-limits.html'],
    ['bearing 25 x 52', 'calculators/bearing-size.html'],
  ])('%s', (question, page) => {
    expect(pages(question)).toContain(page);
    expect(read(question).offers).toEqual([]);
  });
});

describe('a blade', () => {
  it('with its marked speed leads to its row, and to the calculator with those two boxes filled', () => {
    expect(read('350 mm 80 m/s rpm').offers).toEqual([
      { page: 'tables/blade-rotation-limits.html#350-mm', figures: {}, said: '350 mm' },
      {
        page: 'calculators/blade-speed.html',
        figures: { diameter: '350 mm', markedAs: 'speed', markedSpeed: '80 m/s' },
        said: '350 mm, 80 m/s',
      },
    ]);
  });

  it.each(['14 in blade', '350 mm disco'])('%s leads to its row alone', (q) => {
    const { offers } = read(q);
    expect(offers.map((o) => o.figures)).toEqual([{}]);
    expect(offers[0]?.page).toMatch(/^tables\/blade-rotation-limits\.html#(?:350-mm|14-in)$/);
  });

  it('has no row for a size nobody sells', () => expect(read('377 mm blade').offers).toEqual([]));
});

describe('decoys', () => {
  it.each([
    'broken 6205',
    'M8 stuck',
    'blade 350 mm cracked',
    '6000 rpm',
    'C3',
    'M7 25',
    'E10 fuel',
    'E5 gasoline 5 l',
    '2 x 4',
    'A4 paper',
    'saw won’t start 3 times',
    '1:30 pm',
    '52 x 25 x 15',
    'P100',
    'N95',
    'table 1',
  ])('%s', (question) => expect(read(question).offers).toEqual([]));
});
