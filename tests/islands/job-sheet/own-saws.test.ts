/** Saws as a file: written, read back, and anything else refused whole. */
import { expect, it } from 'vitest';
import { readSaws, sawsText } from '../../../src/islands/OwnSaws/file.ts';

const saws = [{ name: 'Red 400', facts: { bladeDiameter: { value: '400 mm', from: 'typed' as const } } }];

it('is read back as it was written', () => expect(readSaws(sawsText(saws))).toEqual(saws));

it.each([
  ['nothing', ''],
  ['another file', '{"almanac":"job-sheets","version":1,"sheets":[]}'],
  ['a saw without a name', '{"almanac":"saws","version":1,"saws":[{"facts":{}}]}'],
  ['a newer edition', '{"almanac":"saws","version":9,"saws":[]}'.replace('[]', '[{"name":"x","facts":{}}]')],
])('refuses %s', (_, text) => expect(readSaws(text)).toBeUndefined());
