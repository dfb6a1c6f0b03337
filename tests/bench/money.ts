/** Work on money and order, for the bench: what one run does, and the same by plain means to compare with. */
import { planOrder, type FaultModel } from '../../src/core/topics/fault-order/index.ts';
import { capitalRecovery } from '../../src/core/money/index.ts';
import {
  type Comparison,
  compute,
  type Doubt,
  fields,
  mostWorthPaying,
  simulate,
} from '../../src/core/topics/repair-worth/index.ts';
import { bestAge } from '../../src/core/topics/service-interval/index.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';

interface Bench {
  readonly name: string;
  /** Returns the number of operations done. */
  readonly run: () => number;
  /** The same work written straight down, to judge the cost of our layers by. */
  readonly plain?: () => number;
}

const machine: Comparison = {
  rate: 0.08,
  repair: 260,
  asIs: 120,
  service: 3,
  endValue: 40,
  repairRunning: 140,
  repairDown: 120,
  comebackChance: 0.1,
  comebackCost: 150,
  newFirst: 1340,
  newLife: 6,
  newResale: 150,
  newRunning: 90,
};
const doubt: Doubt = { repair: 0.1, service: 0.4, newFirst: 0.1, newLife: 0.3, worn: 0.15 };
const draws = 100000;

/** Keeps results alive, so that no loop is thought useless and left out. */
let kept = 0;

/** The simulation as one loop with its formulas written out and nothing called but the language. */
function plainDraws(): number {
  let x = 1;
  const random = () => (x = (x * 48271) % 2147483647) / 2147483647;
  const triangle = (middle: number, spread: number) => {
    const u = random();
    return middle * (1 + spread * (u < 0.5 ? Math.sqrt(2 * u) - 1 : 1 - Math.sqrt(2 * (1 - u))));
  };
  const savings = new Float64Array(draws);
  let cheaper = 0;
  for (let k = 0; k < draws; k++) {
    const [q, n, first, life] = [triangle(260, 0.1), triangle(3, 0.4), triangle(1340, 0.1), triangle(6, 0.3)];
    const comeback = random() < 0.1 ? 150 / 1.08 ** Math.min(1, n) : 0;
    const a = 0.08 / (1 - 1.08 ** -n);
    const b = 0.08 / (1 - 1.08 ** -life);
    const replaced = first * b - 150 * (b - 0.08) + 90;
    const repaired = random() < 0.15 ? replaced + q * a : (120 + q + 120 + comeback) * a - 40 * (a - 0.08) + 140;
    savings[k] = replaced - repaired;
    if (replaced >= repaired) cheaper += 1;
  }
  savings.sort();
  kept += cheaper + (savings[draws >> 1] ?? 0);
  return draws;
}

const sawComplaint: FaultModel = {
  suspects: Array.from({ length: 12 }, (_, k) => ({ id: `s${k}`, name: `s${k}`, likelihood: (12 - k) / 80 })),
  checks: Array.from({ length: 12 }, (_, k) => ({
    id: `c${k}`,
    name: `c${k}`,
    minutes: 3 + ((k * 5) % 11),
    stripDown: k % 3 === 0 ? 'open' : undefined,
    tells: [{ suspect: `s${k}`, ifFaulty: 0.9, ifSound: 0.05 }],
  })),
  stripDowns: [{ id: 'open', minutes: 9 }],
};

export const benches: Bench[] = [
  {
    name: 'repair worth: 100,000 draws',
    run: () => {
      kept += simulate(machine, doubt, draws, 1).chance;
      return draws;
    },
    plain: plainDraws,
  },
  {
    name: 'repair worth: most worth paying',
    run: () => {
      for (let k = 0; k < 10000; k++) kept += mostWorthPaying({ ...machine, repair: k });
      return 10000;
    },
    plain: () => {
      for (let k = 0; k < 10000; k++) {
        const [a, b] = [0.08 / (1 - 1.08 ** -3), 0.08 / (1 - 1.08 ** -6)];
        kept += (1340 * b - 150 * (b - 0.08) + 90 - 140) / a + 40 * 1.08 ** -3 - 120 - 120 - (0.1 * 150) / 1.08 + 0 * k;
      }
      return 10000;
    },
  },
  {
    name: 'repair worth: the whole answer, typed text to tables',
    run: () => {
      for (let k = 0; k < 20; k++) {
        const read = readInputs(fields, { quote: String(200 + k) });
        if (read.ok && compute(read.inputs).ok) kept += 1;
      }
      return 20;
    },
  },
  {
    name: 'level payment of a loan',
    run: () => {
      for (let k = 0; k < 100000; k++) kept += capitalRecovery(0.01 + k * 1e-6, 12);
      return 100000;
    },
    plain: () => {
      for (let k = 0; k < 100000; k++) kept += (0.01 + k * 1e-6) / (1 - (1.01 + k * 1e-6) ** -12);
      return 100000;
    },
  },
  {
    name: 'fault order: twelve suspects, twelve checks that can be wrong, exact',
    run: () => {
      kept += planOrder(sawComplaint).expectedMinutes;
      return 1;
    },
  },
  {
    name: 'age of replacement',
    run: () => {
      for (let k = 0; k < 100; k++)
        kept += bestAge({ shape: 2 + k / 100, scale: 400 }, { planned: 60, failure: 300 }) ?? 0;
      return 100;
    },
  },
];

/** What was kept; printing it once proves that the work was done. */
export function residue(): number {
  return kept;
}
