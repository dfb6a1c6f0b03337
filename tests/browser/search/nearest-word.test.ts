/** Words as people misspell them, and the one that was meant; words that must be left alone. */
import { describe, expect, it } from 'vitest';
import { nearestWord } from '../../../src/browser/search/nearest-word.ts';

const known =
  `silica dust belt squeal seal tension mention carburetor blade clutch vibration gasoline diamond nozzle blocked safety
   polvo mascarilla gasolina vibracion silice mezcla correa disco bearing tolerance interference`.split(/\s+/);
const nearest = (word: string) => nearestWord(word, known, () => 0);

describe('is found', () => {
  it.each([
    ['silca', 'silica'],
    ['sqeal', 'squeal'],
    ['tesnion', 'tension'],
    ['tention', 'tension'],
    ['carberator', 'carburetor'],
    ['vibraton', 'vibration'],
    ['gasolene', 'gasoline'],
    ['bloked', 'blocked'],
    ['saftey', 'safety'],
    ['tollerance', 'tolerance'],
    ['polbo', 'polvo'],
    ['mascariya', 'mascarilla'],
    ['bibracion', 'vibracion'],
    ['silise', 'silice'],
    ['mescla', 'mezcla'],
    ['corea', 'correa'],
  ])('%s: %s', (typed, meant) => expect(nearest(typed)).toBe(meant));
});

describe('nothing stands in for', () => {
  it.each(['hernia', 'zzzz', 'ful', '6205', 'window', 'qqxv'])('%s', (word) => expect(nearest(word)).toBeUndefined());
});

it('takes the commoner of two that are equally near', () => {
  const common = (word: string) => (word === 'belt' ? 2 : 1);
  expect(nearestWord('beltx', ['belts', 'belt'], common)).toBe('belt');
});
