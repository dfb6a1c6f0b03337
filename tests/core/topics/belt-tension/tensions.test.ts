import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arcFactor,
  centrifugal,
  lifeShare,
  pullAtStrength,
  pullBeforeSlip,
  shaftLoadRunning,
  shaftLoadStatic,
  staticByCapstan,
  staticByTrade,
  strandsAtSlip,
  strandsWhenSet,
  tensionRatio,
  tradeFriction,
  wedgedFriction,
} from '../../../../src/core/topics/belt-tension/index.ts';
import { runs } from '../../../runs.ts';

const wraps = fc.double({ min: 1, max: 3.6, noNaN: true });
const forces = fc.double({ min: 0.1, max: 5000, noNaN: true });
const ratios = fc.double({ min: 1.05, max: 20, noNaN: true });

describe('static tension', () => {
  it('is the same by the trade formula and by the capstan law with ratio 5 at half a turn', () => {
    fc.assert(
      fc.property(
        wraps,
        fc.double({ min: 100, max: 50000, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (wrap, power, belts, speed, mass) => {
          const trade = staticByTrade(power, belts, speed, arcFactor(wrap), mass);
          const capstan = staticByCapstan(
            power / (belts * speed),
            tensionRatio(tradeFriction, wrap),
            centrifugal(mass, speed),
          );
          expect(Math.abs(trade - capstan) / capstan).toBeLessThan(1e-10);
        },
      ),
      { numRuns: runs(2000) },
    );
  });

  it('is half the sum of both strands, whichever way it is reached', () => {
    fc.assert(
      fc.property(forces, ratios, forces, (pull, ratio, own) => {
        const atSlip = strandsAtSlip(pull, ratio, own);
        const set = staticByCapstan(pull, ratio, own);
        expect((atSlip.tightInBelt + atSlip.slackInBelt) / 2 / set).toBeCloseTo(1, 10);
        const again = strandsWhenSet(set, pull, own);
        expect(again.tightWorking / atSlip.tightWorking).toBeCloseTo(1, 8);
        expect(pullBeforeSlip(set, ratio, own) / pull).toBeCloseTo(1, 8);
      }),
    );
  });

  it('keeps the ratio of tight to slack without the centrifugal part', () => {
    fc.assert(
      fc.property(forces, ratios, forces, (pull, ratio, own) => {
        const s = strandsAtSlip(pull, ratio, own);
        expect((s.tightInBelt - own) / (s.slackInBelt - own) / ratio).toBeCloseTo(1, 5);
      }),
    );
  });

  it('leaves nothing to pull with when the belt flies off its pulleys by its own mass', () => {
    expect(pullBeforeSlip(100, 5, 100)).toBe(0);
    expect(pullBeforeSlip(100, 5, 200)).toBe(0);
    expect(pullAtStrength(100, 5, 150)).toBe(0);
  });
});

describe('grip', () => {
  it('is the flat friction when the groove is open all the way', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (mu) => Math.abs(wedgedFriction(mu, Math.PI) - mu) < 1e-12,
      ),
    );
  });

  it('has an arc factor of 1 at half a turn and never reaches 1.25', () => {
    expect(arcFactor(Math.PI)).toBeCloseTo(1, 12);
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 2 * Math.PI, noNaN: true }),
        (wrap) => arcFactor(wrap) > 0 && arcFactor(wrap) < 1.25,
      ),
    );
  });
});

describe('shaft load', () => {
  it('running, is the plain sum of both strands at half a turn', () => {
    fc.assert(
      fc.property(
        forces,
        forces,
        (tight, slack) => Math.abs(shaftLoadRunning(tight, slack, 1, Math.PI) - tight - slack) < 1e-6,
      ),
    );
  });

  it('running without pull and without centrifugal tension, is what it is at rest', () => {
    fc.assert(
      fc.property(forces, wraps, (tension, wrap) => {
        const { tightWorking, slackWorking } = strandsWhenSet(tension, 0, 0);
        expect(shaftLoadRunning(tightWorking, slackWorking, 3, wrap) / shaftLoadStatic(tension, 3, wrap)).toBeCloseTo(
          1,
          8,
        );
      }),
    );
  });
});

describe('belt life', () => {
  it('falls to about a third when the peak tension is a tenth too high', () => {
    expect(lifeShare(1.1, 1)).toBeCloseTo(0.353, 3);
  });
});
