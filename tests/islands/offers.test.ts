/**
 * What the search offers filled in, opened as a reader opens it: the calculator answers from what was typed alone, and
 * gives no verdict that hangs on a figure nobody typed.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { offerQuery } from '../../src/browser/search/offer-query.ts';
import { readSizes, type Offer } from '../../src/browser/search/sizes.ts';
import { judged } from '../../src/core/contract/judged.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { askedOf, rawOf, startFigures, unitsRead } from '../../src/islands/kit/state/figures.ts';
import { readLink } from '../../src/islands/kit/state/link.ts';
import { speechOf } from '../../src/words/lang.ts';
import { calculators } from './calculators.ts';

const inUse = (word: string) => word === 'h7';
const offersOf = (typed: string): readonly Offer[] =>
  readSizes(typed, inUse, speechOf('en')).offers.filter((offer) => Object.keys(offer.figures).length > 0);
const nameOf = (offer: Offer) => offer.page.replace(/^calculators\/|\.html$/g, '');

/** The page as it stands after the link was opened. */
function opened(offer: Offer) {
  const name = nameOf(offer);
  const topic = calculators.find((c) => c.name === name)?.topic;
  if (!topic) throw new Error(`There is no calculator ${name}.`);
  const linked = readLink(`?${offerQuery(offer)}`, topic.fields, name);
  const now = startFigures(linked?.entries ?? {}, 'metric');
  const read = readInputs(topic.fields, rawOf(now, topic.fields), {
    system: now.system,
    units: unitsRead(now, topic.fields),
  });
  const answer = read.ok ? topic.compute(read.inputs) : undefined;
  if (!answer?.ok) return undefined;
  const { heldBack } = judged(answer, askedOf(now, topic.fields), now.entries, topic.decides);
  return { values: Object.fromEntries(answer.values.map((v) => [v.key, v])), heldBack };
}

/** Typed -> calculator, and values in SI or text. */
const answers: readonly (readonly [string, string, Readonly<Record<string, number | string>>])[] = [
  // ISO 15, dimension series 02: 25 x 52 x 15.
  ['6205-2RS', 'bearing-size', { designation: '6205', nominalBore: 0.025, nominalOutside: 0.052, nominalWidth: 0.015 }],
  ['25 x 52 x 15', 'bearing-size', { designation: '6205' }],
  // ISO 286-1: IT7 over 18 to 30 mm is 21 µm; H lies on the zero line.
  ['H7 25', 'limits-fits', { upper: 21e-6, lower: 0 }],
  // ISO 286-1: k over 24 to 30 mm is +2 µm at the least, IT6 is 13 µm.
  ['k6 30 mm', 'limits-fits', { upper: 15e-6, lower: 2e-6 }],
  // Arithmetic: 5 L / 50; a US gallon of 3.785411784 L / 40.
  ['50:1 5 l', 'fuel-mix', { oil: 0.0001 }],
  ['1 gallon 40 to 1', 'fuel-mix', { oil: 3.785411784e-3 / 40 }],
];

describe('an offer answers from what was typed', () => {
  it.each(answers)('%s', (typed, name, expected) => {
    const offers = offersOf(typed);
    expect(offers.map(nameOf)).toEqual([name]);
    const page = offers[0] && opened(offers[0]);
    expect(page?.heldBack).toEqual({});
    for (const [key, value] of Object.entries(expected)) {
      const got = page?.values[key];
      const shown = got?.kind === 'quantity' || got?.kind === 'text' ? got.value : undefined;
      // SI of round figures: a part in a million is rounding alone.
      if (typeof value === 'number') expect(shown, key).toBeCloseTo(value, 9);
      else expect(shown, key).toBe(value);
    }
  });
});

it('a blade with its marked speed fills two boxes and judges nothing: what turns it is still to be entered', () => {
  const offers = offersOf('350 mm 80 m/s rpm');
  expect(offers.map(nameOf)).toEqual(['blade-speed']);
  expect(offers[0] && opened(offers[0])).toBeUndefined();
});

it('every calculator that can be offered filled is tried here', () => {
  const source = readFileSync(new URL('../../src/browser/search/sizes.ts', import.meta.url), 'utf8');
  const named = [...source.matchAll(/calculators\/([a-z-]+)\.html/g)].map((m) => m[1]);
  // A torque needs the class, the thread's state and the joint: its page is named and never filled.
  const filled = [...new Set(named)].filter((name) => name !== 'bolt-torque').sort();
  expect(filled).toEqual([...new Set([...answers.map(([, name]) => name), 'blade-speed'])].sort());
});
