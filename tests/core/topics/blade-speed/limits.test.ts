/** Each verdict just below, at and just above its limit. Limits are arithmetic on the marks typed; shares of our own are named so. */
import { describe, expect, it } from 'vitest';
import { compute, example, fields } from '../../../../src/core/topics/blade-speed/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function answer(more: RawInputs): Answer {
  const read = readInputs(fields, { ...example, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}

/** Every drive of a plain set of engines and pulleys whose blade shaft turns at a whole number of turns a minute. */
function exactDrives() {
  const found: { engine: number; enginePulley: number; bladePulley: number; shaft: number }[] = [];
  for (let engine = 3000; engine <= 10000; engine += 500)
    for (let enginePulley = 50; enginePulley <= 80; enginePulley += 2)
      for (let bladePulley = 90; bladePulley <= 140; bladePulley += 5)
        if ((engine * enginePulley) % bladePulley === 0)
          found.push({ engine, enginePulley, bladePulley, shaft: (engine * enginePulley) / bladePulley });
  return found;
}

describe('exactly the marked speed', () => {
  const drives = exactDrives();

  it('is not over it, for any drive that turns at exactly the mark and the plate', () => {
    expect(drives.length).toBeGreaterThan(742);
    const wrong = drives.filter(({ shaft, ...drive }) => {
      const a = answer({ ...drive, markedRotation: shaft, machineRotation: shaft });
      return (
        valueOf(a, 'verdict', 'verdict').code !== 'near-marked' ||
        valueOf(a, 'plateVerdict', 'verdict').code !== 'within-plate' ||
        a.cautions.some((c) => c.hazard === 'blade-overspeed')
      );
    });
    expect(wrong).toEqual([]);
  });

  it('is passed by one turn a minute more', () => {
    const soft = drives.filter(({ shaft, ...drive }) => {
      const a = answer({ ...drive, markedRotation: shaft - 1, machineRotation: shaft - 1 });
      return (
        valueOf(a, 'verdict', 'verdict').code !== 'over-marked' ||
        valueOf(a, 'plateVerdict', 'verdict').code !== 'over-plate'
      );
    });
    expect(soft).toEqual([]);
  });
});

type Row = readonly [string, RawInputs, string, string];
const spindle = (n: number, more: RawInputs = {}): RawInputs => ({
  known: 'spindle',
  spindle: n,
  markedRotation: 5000,
  ...more,
});
const at = (more: RawInputs): RawInputs => spindle(4000, more);
const twin = (reach: string): RawInputs =>
  at({ head: 'twin', diameter: '230 mm', flange: '60 mm', clearance: '3 mm', reach });

// prettier-ignore
const rows: readonly Row[] = [
  ['95 % of the mark, our choice', spindle(4749), 'verdict', 'within-marked'],
  ['95 % of the mark, our choice', spindle(4750), 'verdict', 'within-marked'],
  ['95 % of the mark, our choice', spindle(4751), 'verdict', 'near-marked'],
  ['the mark', spindle(4999), 'verdict', 'near-marked'],
  ['the mark', spindle(5000), 'verdict', 'near-marked'],
  ['the mark', spindle(5001), 'verdict', 'over-marked'],
  // 80 m/s on 350 mm is 80 / (pi 0.35) = 4365.4 rpm.
  ['a floor saw at 80 m/s', spindle(4365, { markedAs: 'speed', markedSpeed: '80 m/s' }), 'verdict', 'near-marked'],
  ['a floor saw at 80 m/s', spindle(4366, { markedAs: 'speed', markedSpeed: '80 m/s' }), 'verdict', 'over-marked'],
  ['the guard', at({ diameter: '399 mm', guardSize: '400 mm' }), 'guardVerdict', 'within-guard'],
  ['the guard', at({ diameter: '400 mm', guardSize: '400 mm' }), 'guardVerdict', 'within-guard'],
  ['the guard', at({ diameter: '401 mm', guardSize: '400 mm' }), 'guardVerdict', 'over-guard'],
  ['14 in under a guard of 355.6 mm', at({ diameter: '14 in', guardSize: '355.6 mm' }), 'guardVerdict', 'within-guard'],
  ['85 % of the guard, our choice', at({ diameter: '339 mm', guardSize: '400 mm' }), 'guardVerdict', 'under-guard'],
  ['85 % of the guard, our choice', at({ diameter: '340 mm', guardSize: '400 mm' }), 'guardVerdict', 'within-guard'],
  ['85 % of the guard, our choice', at({ diameter: '341 mm', guardSize: '400 mm' }), 'guardVerdict', 'within-guard'],
  ['1 % over the label, our choice', at({ diameter: '353 mm', newDiameter: '350 mm' }), '', 'largerVerdict'],
  ['1 % over the label, our choice', at({ diameter: '353.5 mm', newDiameter: '350 mm' }), '', 'largerVerdict'],
  ['1 % over the label, our choice', at({ diameter: '354 mm', newDiameter: '350 mm' }), 'largerVerdict', 'larger-than-printed'],
  ['as large as the label', at({ diameter: '350 mm', newDiameter: '350 mm' }), '', 'wornVerdict'],
  ['under the label', at({ diameter: '349 mm', newDiameter: '350 mm' }), 'wornVerdict', 'worn-diamond'],
  // 2 % apart, our choice: the lower mark is 80 m/s on 350 mm = 4365.41 rpm, 2 % more is 4452.72.
  ['marks 2 % apart', at({ markedAs: 'speed', markedSpeed: '80 m/s', alsoRotation: 4452 }), 'marksVerdict', 'marks-agree'],
  ['marks 2 % apart', at({ markedAs: 'speed', markedSpeed: '80 m/s', alsoRotation: 4454 }), 'marksVerdict', 'marks-contradict'],
  ['depth wanted: (350 - 100) / 2 - 3 = 122', at({ flange: '100 mm', wanted: '121 mm' }), 'wantedVerdict', 'depth-reached'],
  ['depth wanted', at({ flange: '100 mm', wanted: '122 mm' }), 'wantedVerdict', 'depth-reached'],
  ['depth wanted', at({ flange: '100 mm', wanted: '123 mm' }), 'wantedVerdict', 'depth-larger-ask-guard'],
  // 2 (147 + 3) + 100 = 400
  ['blade for a depth against the guard', at({ flange: '100 mm', wanted: '147 mm', guardSize: '400 mm' }), 'wantedVerdict', 'depth-larger'],
  ['blade for a depth against the guard', at({ flange: '100 mm', wanted: '148 mm', guardSize: '400 mm' }), 'wantedVerdict', 'depth-guard-refuses'],
  // Reach 10, gap 10: exactly half the blade.
  ['twin head at half its blade', { ...twin('10 mm'), clearance: '11 mm' }, 'twinVerdict', 'twin-short-arm'],
  ['twin head at half its blade', { ...twin('10 mm'), clearance: '10 mm' }, 'twinVerdict', 'twin-short-arm'],
  ['twin head at half its blade', { ...twin('10 mm'), clearance: '9 mm' }, 'twinVerdict', 'twin-deeper-than-half'],
  ['arm of a twin head: 280 + 115 - 3 = 392', { ...twin('280 mm'), wanted: '392 mm' }, 'wantedVerdict', 'depth-reached'],
  ['arm of a twin head', { ...twin('280 mm'), wanted: '393 mm' }, 'wantedVerdict', 'depth-arm-too-short'],
  ['gap that eats the blade: 350 - 100 is twice 125', at({ flange: '100 mm', clearance: '124 mm' }), '', 'noDepth'],
  ['gap that eats the blade', at({ flange: '100 mm', clearance: '125 mm' }), 'noDepth', 'no-depth'],
  ['gap that eats the blade', at({ flange: '100 mm', clearance: '126 mm' }), 'noDepth', 'no-depth'],
];

describe('each limit', () => {
  // A row without a key says which verdict must not be there.
  it.each(rows)('%s: %j', (_, inputs, key, code) => {
    const a = answer(inputs);
    if (key === '') expect(a.values.map((v) => v.key)).not.toContain(code);
    else expect(valueOf(a, key, 'verdict').code).toBe(code);
  });
});
