/**
 * What stands beside a refusal: no good word, no instruction that belongs to going on, no headline figure for it. Machines
 * far from the demonstration: a grinder, a floor saw with three belts, a ring slid in by hand. Limits are each topic's own.
 */
import { describe, expect, it } from 'vitest';
import { sayer } from '../../../src/core/contract/messages.ts';
import { topics } from '../../../src/core/registry.ts';
import type { RawInputs } from '../../../src/core/contract/field.ts';
import type { Answer } from '../../../src/core/contract/result.ts';
import { answerOf, codeOf, has, verdictOf } from './answer.ts';

const levels = (answer: Answer) => answer.values.flatMap((v) => (v.kind === 'verdict' ? [v.level] : []));
const heads = (answer: Answer) =>
  answer.values.flatMap((v) => (v.kind === 'quantity' && v.main === true ? [v.key] : []));
const says = (topic: string, answer: Answer, key = 'verdict') => {
  const v = verdictOf(answer, key);
  return (v && topics[topic]?.words.verdicts[v.code]?.(v.data ?? {}, sayer({}))) ?? '';
};

it('a blade within its mark gets no good word where guard or plate forbid it', () => {
  const at = (guardSize: number) =>
    answerOf('blade-speed', {
      ...{ diameter: 230, known: 'spindle', spindle: 6000, markedAs: 'rpm', markedRotation: 6650, flange: 76 },
      guardSize,
    });
  expect([229, 230, 231].map((g) => verdictOf(at(g))?.level)).toEqual(['note', 'good', 'good']);
});

describe('a belt no tension makes right', () => {
  // A Z belt of 66 mm at 4 kW: over its speed and over what a textbook lets it carry.
  const weak = { section: 'Z', belts: 1, enginePulley: 66, bladePulley: 125, centre: 250, rotation: 9300 };
  const floorSaw = {
    ...{ section: 'SPB', belts: 3, enginePulley: 140, bladePulley: 160, centre: 420, power: '22 kW', rotation: 2800 },
    ...{ reading: 'force', force: '60 N' },
  };
  it('gets no setting at the head and no good word on wet grip', () => {
    const answer = answerOf('belt-tension', { ...weak, power: '4 kW' });
    expect(codeOf(answer, 'loadVerdict')).toBe('belt-overloaded');
    expect(levels(answer)).not.toContain('good');
    expect(heads(answer)).toEqual(['length']);
    const light = answerOf('belt-tension', { ...weak, power: '0.5 kW', rotation: 3000 });
    expect(has(light, 'loadVerdict')).toBe(false);
    expect(heads(light)).toContain('staticTension');
  });
  it('nor a word on letting off or tightening, where the set is none', () => {
    const set = (most: string) => answerOf('belt-tension', { ...floorSaw, set: true, setLeast: '40 N', setMost: most });
    expect(codeOf(set('60 N'), 'setVerdict')).toBe('set-mixed');
    expect(has(set('60 N'), 'verdict')).toBe(false);
    expect(has(set('60 N'), 'measured')).toBe(true);
    expect(codeOf(set('42 N'), 'setVerdict')).toBe('set-together');
    expect(has(set('42 N'), 'verdict')).toBe(true);
  });
});

it('a bolt is not to be oiled and degreased at once, nor a plated one greased', () => {
  const codes = (raw: RawInputs) =>
    answerOf('bolt-torque', { size: 'M12', ...raw }).values.flatMap((v) => (v.kind === 'verdict' ? [v.code] : []));
  for (const state of ['oiled', 'anti-seize']) {
    expect(codes({ state, locker: true })).toContain('locker-on-oil');
    expect(codes({ state, locker: true })).not.toContain('greased-thread');
    expect(codes({ state, locker: false })).toContain('greased-thread');
  }
  for (const state of ['plain', 'zinc', 'cadmium']) {
    expect(codes({ state, locker: true })).toEqual(expect.arrayContaining(['keep-dry', 'thread-locker']));
    expect(codes({ state })).not.toContain('greased-thread');
  }
});

it('water that forbids the cut heads no list of what to fetch', () => {
  const at = (flow: string) =>
    answerOf('water-supply', { flowFrom: 'typed', flow, manual: '0.5 L/min', supply: 'mains' });
  expect(['0.499 L/min', '0.5 L/min', '0.501 L/min'].map((f) => heads(at(f)).includes('water'))).toEqual([
    false,
    true,
    true,
  ]);
  expect(heads(at('0.2 L/min'))).toEqual([]);
});

it('a ring that slides in needs no heat, so nothing is said on measuring heat or on burns', () => {
  const ring = { part: 'ring', diameter: 25, interference: '-5 µm', gap: '20 µm', room: 20, heatTo: '' };
  const cold = answerOf('warming', ring);
  expect(codeOf(cold, 'warmVerdict')).toBe('warm-slides');
  expect(has(cold, 'measuring')).toBe(false);
  expect(cold.cautions).toEqual([]);
  // Whoever warms it all the same is warned.
  expect(answerOf('warming', { ...ring, heatTo: '70 °C' }).cautions.map((c) => c.hazard)).toContain('hot-parts');
});

it('a wait for clean air is rounded up', () => {
  // 30 to 20 ppm at 5 changes an hour: 12 min x ln 1.5 = 4.87 min.
  const stopped = answerOf('fume-room', { what: 'stopped', now: '30 ppm', air: 'changes', changes: 5 });
  expect(says('fume-room', stopped)).toMatch(/at best it takes 5\smin/);
});

it('what slides together is not praised for its stress', () => {
  // 25 mm on a ring of 31 mm: the tightest pair just below, at and above line to line.
  const ring = { diameter: 25, length: 15, hubOutside: 31, hub: 'bearing-steel', shaft: 'carbon-steel', shaftBore: 0 };
  const at = (most: string) => has(answerOf('press-fit', { ...ring, least: '-20 µm', most }), 'stress');
  expect(['-0.1 µm', '0 µm', '8 µm'].map(at)).toEqual([false, false, true]);
});

it('a service due today is no all-clear', () => {
  const at = (base: number) =>
    verdictOf(
      answerOf('service-interval', {
        start: '2026-11-25',
        tasks: [{ machine: 'Hire saw', task: 'Air filter', base, perDay: 8, daysPerWeek: 7, last: '2026-11-20' }],
      }),
    )?.level;
  // Eight hours a day for five days: 32 h fell due yesterday, 40 h fall due today, 48 h tomorrow.
  expect([32, 40, 48].map(at)).toEqual(['caution', 'note', 'good']);
});

it('a fit that must not be pressed has no force and no torque at its head', () => {
  // A thin iron hub cracks under 120 µm on 40 mm; under 20 µm it bears it; with clearance it holds nothing.
  const hub = { diameter: 40, length: 20, hubOutside: 44, hub: 'grey-iron', shaft: 'carbon-steel', shaftBore: 0 };
  const at = (most: string) => answerOf('press-fit', { ...hub, least: '-20 µm', most });
  expect(codeOf(at('120 µm'), 'stress')).toBe('stress-cracks');
  expect(heads(at('120 µm'))).toEqual([]);
  expect(heads(at('20 µm'))).toContain('pushIn');
  expect(heads(at('-1 µm'))).toEqual([]);
});

it('a measured ring is one ring, and is said to be', () => {
  const fit = { seat: 'shaft', size: 17, zone: 'j5', basis: 'readings', gauge: 1 };
  const at = (ring: string) =>
    says(
      'bearing-fit',
      answerOf('bearing-fit', { ...fit, readings: [{ across: 17.004, quarter: 17.004 }], ring }),
      'fitKind',
    );
  expect(at('16.999 mm')).toMatch(/with the ring you measured/);
  expect(at('')).toMatch(/any ring of the class/);
});
