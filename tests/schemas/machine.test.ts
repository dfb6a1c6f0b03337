/** What a machine's file is refused for. The machines are made up. */
import { describe, expect, it } from 'vitest';
import { machine } from '../../src/schemas/machine.ts';

const good = {
  name: 'Trial saw',
  kind: 'cut-off-saw',
  summary: 'A saw made up for this test.',
  es: { name: 'Sierra de prueba', summary: 'Una sierra inventada para esta prueba.' },
  facts: { engineSpeed: '9000 rpm', enginePulley: '60 mm', bladePulley: '120 mm', spindleSpeed: '4500 rpm' },
};
const refusals = (facts: Record<string, unknown>, more: Record<string, unknown> = {}) => {
  const read = machine.safeParse({ ...good, ...more, facts: { ...good.facts, ...facts } });
  return read.success ? [] : read.error.issues.map((i) => `${i.path.join('.')}: ${i.message}`);
};

describe('figures of a machine', () => {
  it('are from the plate unless the file says otherwise', () => {
    const read = machine.parse({ ...good, facts: { idle: { value: '2700 rpm', from: 'measured' }, tank: '0.8 L' } });
    expect(read.facts).toEqual({
      idle: { value: '2700 rpm', from: 'measured' },
      tank: { value: '0.8 L', from: 'plate' },
    });
  });

  it.each([
    [{ tank: '20 kg' }, /facts\.tank: Fuel tank/],
    [{ beltSection: 'Q' }, /facts\.beltSection: .*not one of the choices/],
    [{ clutch: false, clutchEngages: '3800 rpm' }, /facts\.clutch: no figures of a clutch/],
    [{ colour: 'red' }, /colour/],
  ])('are refused in words: %j', (facts, words) => {
    expect(refusals(facts).join('\n')).toMatch(words);
  });

  // 9000 rpm x 60 / 120 = 4500 rpm; the plate may round by 3 %: 4639 rpm is 3.0 % off, 4640 a little more.
  it.each([
    ['4639 rpm', 0],
    ['4640 rpm', 1],
    ['4370 rpm', 0],
    ['4368 rpm', 1],
  ])('must fit each other: blade shaft at %s', (spindleSpeed, count) => {
    expect(refusals({ spindleSpeed })).toHaveLength(count);
  });

  it.each([
    ['4499 rpm', 1],
    ['4500 rpm', 0],
    ['4501 rpm', 0],
  ])('never ask for a blade marked below the shaft: %s', (markRotation, count) => {
    expect(refusals({ markRotation })).toHaveLength(count);
  });

  it('say nothing about pulleys where a rim drives the ring', () => {
    expect(refusals({ spindleSpeed: '2900 rpm' }, { kind: 'ring-saw' })).toEqual([]);
  });
});
