/** Reading ease and grade against published constants and dictionary syllables; the target at its limit. */
import { expect, test } from 'vitest';
import { ease as englishEase, grade, reading as english } from '../../../src/words/en/reading.ts';
import { ease as spanishEase, reading as spanish } from '../../../src/words/es/reading.ts';
import { readingOf } from '../../../src/words/say/reading.ts';

test('the English formulas, as printed by the US Department of Veterans Affairs, at 15 words and 1.5 syllables', () => {
  const reading = { words: 150, sentences: 10, syllables: 225 };
  // 206.835 - 1.015 * 15 - 84.6 * 1.5 and 0.39 * 15 + 11.8 * 1.5 - 15.59, by hand.
  expect(englishEase(reading)).toBeCloseTo(64.71, 2);
  expect(grade(reading)).toBeCloseTo(7.96, 2);
});

test('the formula of Szigriszt-Pazos at 10 words and 2 syllables', () => {
  // 206.835 - 62.3 * 2 - 10, by hand.
  expect(spanishEase({ words: 100, sentences: 10, syllables: 200 })).toBeCloseTo(72.235, 3);
});

// Syllables as a dictionary divides them.
test.each([
  ['blade', 1],
  ['water', 2],
  ['engine', 2],
  ['respirator', 4],
  ['turned', 1],
  ['started', 2],
  ['handle', 2],
  ['gasoline', 3],
  ['OSHA', 1],
  ['350', 1],
])('English: %s has %i', (word, syllables) => {
  expect(english.syllables(word)).toBe(syllables);
});

test.each([
  ['máquina', 3],
  ['agua', 2],
  ['guía', 2],
  ['ahogador', 4],
  ['combustible', 4],
  ['también', 2],
  ['país', 2],
  ['leer', 2],
  ['muy', 1],
  ['ciudad', 2],
  ['enciende', 3],
  ['aéreo', 4],
])('Spanish: %s has %i', (word, syllables) => {
  expect(spanish.syllables(word)).toBe(syllables);
});

test('a colon, a semicolon and the end of a line end a sentence; the point of a figure does not', () => {
  expect(readingOf('Cap tight: no wet spot.\nHalf a minute; then stop. It took 0.5 L.', english)).toMatchObject({
    sentences: 5,
    words: 14,
  });
});
