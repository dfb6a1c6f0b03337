/** The two tables: cost against service after the repair, and what would flip the answer. */
import type { TableValue } from '../../contract/result.ts';
import { newYearly, repairYearly, type Comparison } from './comparison.ts';
import { roundMoney } from '../../money/index.ts';

/** Service years shown: whole years to twice the service given, at least 6 and at most 15, the given one among them. */
export function serviceSteps(service: number): number[] {
  const last = Math.min(15, Math.max(6, Math.ceil(2 * service)));
  const whole = Array.from({ length: last }, (_, k) => k + 1);
  return [...new Set([...whole, Number(service.toFixed(2))])].sort((a, b) => a - b);
}

export function serviceTable(c: Comparison): TableValue {
  const replaced = roundMoney(newYearly(c));
  return {
    kind: 'table',
    key: 'serviceTable',
    label: 'Yearly cost against years of service after the repair',
    columns: [
      { key: 'years', label: 'Years of service' },
      { key: 'repair', label: 'Repair, a year', money: true },
      { key: 'new', label: 'New, a year', money: true },
      { key: 'saved', label: 'Saved by repairing, a year', money: true },
    ],
    rows: serviceSteps(c.service).map((years) => {
      const repaired = roundMoney(repairYearly({ ...c, service: years }));
      return [years, repaired, replaced, roundMoney(replaced - repaired)];
    }),
  };
}

const serviceShares = [0.5, 0.75, 1, 1.5, 2];
const priceShares = [0.8, 0.9, 1, 1.1, 1.2];

/** Saved by repairing [currency a year] over service (down) and new price (across); below zero, new is cheaper. */
export function flipTable(c: Comparison, price: number): TableValue {
  return {
    kind: 'table',
    key: 'flipTable',
    label: 'What would flip the answer: saved a year by repairing (below zero, new is cheaper)',
    columns: [
      { key: 'years', label: 'Years of service', decimals: 1 },
      ...priceShares.map((s) => ({
        key: `price${Math.round(s * 100)}`,
        label:
          s === 1 ? 'At the new price given' : `New price ${s < 1 ? '−' : '+'}${Math.round(Math.abs(s - 1) * 100)} %`,
        money: true,
      })),
    ],
    rows: serviceShares.map((share) => {
      const at = { ...c, service: c.service * share };
      return [
        Number(at.service.toFixed(2)),
        ...priceShares.map((s) =>
          roundMoney(newYearly({ ...at, newFirst: c.newFirst + (s - 1) * price }) - repairYearly(at)),
        ),
      ];
    }),
  };
}
