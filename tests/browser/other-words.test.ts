import { expect, test } from 'vitest';
import { inOurWords } from '../../src/browser/search/other-words.ts';

const otherWords = { carburettor: 'carburetor', cord: 'recoil starter', 'pull cord': 'recoil starter', disc: 'blade' };

test("a word the glossary lists as another spelling is asked again in the almanac's own", () => {
  expect(inOurWords('Carburettor', otherWords)).toBe('carburetor');
  expect(inOurWords('clean  carburettor bowl', otherWords)).toBe('clean carburetor bowl');
});

test('the longest phrase counts', () => {
  expect(inOurWords('pull cord broke', otherWords)).toBe('recoil starter broke');
});

test('only whole words count, and a question in our own words stays', () => {
  expect(inOurWords('discount', otherWords)).toBeUndefined();
  expect(inOurWords('carburetor', otherWords)).toBeUndefined();
});
