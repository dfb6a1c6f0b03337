/**
 * Machinery's Handbook, 31st ed., pp. 644-645, Tables 1 to 3: allowance per inch is T (1 + C) / E for steel hubs and
 * T (2 + C) / E for iron ones, E being that of steel. T is the hub stress as strain: p (k_h + nu_h).
 * An independent check of unlike and hollow parts.
 */
import { describe, expect, it } from 'vitest';
import { hubFactor, interferenceFor, pressure, type Joint } from '../../../../src/core/topics/press-fit/index.ts';

/** [hub outside over joint, joint over shaft bore or null for a solid shaft, C steel hub, C iron hub]. */
const rows: readonly (readonly [number, number | null, number, number])[] = [
  [1.5, null, 0.227, 0.234],
  [2.0, null, 0.333, 0.348],
  [2.4, null, 0.38, 0.399],
  [3.0, null, 0.421, 0.444],
  [4.0, null, 0.455, 0.482],
  [1.5, 2.0, 0.455, 0.468],
  [1.5, 2.5, 0.357, 0.368],
  [1.5, 3.0, 0.313, 0.322],
  [1.5, 3.5, 0.288, 0.296],
  [2.0, 2.0, 0.667, 0.696],
  [2.0, 2.5, 0.524, 0.547],
  [2.0, 3.0, 0.459, 0.479],
  [2.0, 3.5, 0.422, 0.441],
  [3.0, 2.0, 0.842, 0.888],
  [3.0, 2.5, 0.662, 0.698],
  [3.0, 3.0, 0.58, 0.611],
  [3.0, 3.5, 0.533, 0.562],
  [4.0, 2.0, 0.909, 0.964],
  [4.0, 2.5, 0.715, 0.758],
  [4.0, 3.0, 0.625, 0.663],
  [4.0, 3.5, 0.576, 0.61],
];

const E = 200e9;
const steel = 1 / 3;
const iron = 1 / 4;

function joint(outside: number, bore: number | null, hub: 'steel' | 'iron'): Joint {
  return {
    diameter: 0.05,
    hubOutside: 0.05 * outside,
    shaftBore: bore === null ? 0 : 0.05 / bore,
    hubE: hub === 'steel' ? E : E / 2,
    hubNu: hub === 'steel' ? steel : iron,
    shaftE: E,
    shaftNu: steel,
  };
}

describe("the handbook's factors for shrink fits", () => {
  it.each(rows)(
    'hub %s times the joint, joint %s times the hole: C %s steel, %s iron',
    (outside, bore, cSteel, cIron) => {
      for (const [hub, printed, whole] of [
        ['steel', cSteel, 1],
        ['iron', cIron, 2],
      ] as const) {
        const j = joint(outside, bore, hub);
        const p = 50e6;
        const T = p * (hubFactor(j) + j.hubNu);
        const C = (interferenceFor(j, p) / j.diameter) * (E / T) - whole;
        // Printed to three decimals; the handbook's own rounding reaches 0.0013.
        expect(Math.abs(C - printed), hub).toBeLessThan(0.0015);
      }
    },
  );

  it('pressure and interference undo each other', () => {
    const j = joint(2, 3, 'iron');
    expect(pressure(j, interferenceFor(j, 37e6))).toBeCloseTo(37e6, 3);
  });
});
