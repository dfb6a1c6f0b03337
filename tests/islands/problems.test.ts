import { expect, it } from 'vitest';
import { changesOf, startFigures } from '../../src/islands/kit/state/figures.ts';
import { visibleProblems } from '../../src/islands/kit/state/visible-problems.ts';

const changeFigures = changesOf([]);
const start = startFigures({}, 'metric');
const missing = { field: 'bore', code: 'missing' };
const small = { field: 'bore', code: 'too-small' };
const clash = { field: 'flange', code: 'flange-too-large' };

it('nobody is told off for a box not reached yet', () => {
  expect(visibleProblems([missing], start, undefined)).toEqual([]);
});

it('nobody is told off while still typing', () => {
  expect(visibleProblems([small], start, 'bore')).toEqual([]);
});

it('a box that was left says what is wrong with it', () => {
  const left = changeFigures(changeFigures(start, { do: 'type', path: 'bore', text: '' }), {
    do: 'leave',
    path: 'bore',
  });
  expect(visibleProblems([missing], left, undefined)).toEqual([missing]);
});

it('a figure that clashes with the one being typed is named at once, or the answer would stop without a word', () => {
  expect(visibleProblems([clash], start, 'diameter')).toEqual([clash]);
});

it('the button names everything', () => {
  expect(visibleProblems([missing, clash], changeFigures(start, { do: 'press' }), 'bore')).toEqual([missing, clash]);
});

it('once all is right again, later slips are said where they happen', () => {
  expect(changeFigures(changeFigures(start, { do: 'press' }), { do: 'settle' }).pressed).toBe(false);
});
