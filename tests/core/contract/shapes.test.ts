/**
 * What an answer looks like, whatever its figures: every value and column has its name, its units and as many decimals
 * as units; no two have one key; something stands first, and an answer with a stop says it there.
 */
import { describe, expect, it } from 'vitest';
import { topics } from '../../../src/core/registry.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import type { TableColumn, TableValue, Value } from '../../../src/core/contract/result.ts';
import { readSum } from '../../../src/core/quantity/sum.ts';
import { unitOf } from '../../../src/core/quantity/index.ts';
import { examplesFor } from '../../cases/examples.ts';

type Shown = Pick<TableColumn, 'units' | 'decimals'>;

/** Units of one dimension, a name for each, and decimals for each where there are two. */
function hasItsUnits({ units, decimals }: Shown, where: string): void {
  if (units !== undefined) {
    expect(units.length, where).toBe(2);
    expect(unitOf(units[0]).dimension, where).toBe(unitOf(units[1]).dimension);
  }
  if (Array.isArray(decimals)) expect(decimals.length, where).toBe(2);
}

function hasItsColumns(table: TableValue): void {
  expect(table.columns.length, table.key).toBeGreaterThan(0);
  for (const column of table.columns) {
    const where = `${table.key}.${column.key}`;
    expect(column.key, table.key).toMatch(/^[a-zA-Z]/);
    expect(column.label, where).toBeTruthy();
    hasItsUnits(column, where);
  }
  expect(new Set(table.columns.map((c) => c.key)).size, table.key).toBe(table.columns.length);
  for (const row of table.rows) expect(row.length, table.key).toBe(table.columns.length);
}

function isWhole(v: Value): void {
  expect(v.key).toMatch(/^[a-zA-Z]/);
  expect(v.label, v.key).toBeTruthy();
  if (v.kind === 'quantity') hasItsUnits(v, v.key);
  if (v.kind === 'quantity') expect(v.units, v.key).toBeDefined();
  if (v.kind === 'table') hasItsColumns(v);
}

/** What each calculator may show first and large; a key that is never first would be a slip. */
// prettier-ignore
const first: Readonly<Record<string, readonly string[]>> = {
  'belt-tension': ['centre', 'deflection', 'length', 'loadVerdict', 'measured', 'pluck', 'pushForce', 'staticTension', 'verdict'],
  'blade-speed': ['marksVerdict', 'share', 'speed', 'verdict', 'wantedVerdict'],
  'limits-fits': ['upper', 'lower', 'largest', 'smallest', 'fitKind', 'interference'],
  'repair-worth': ['mostWorth', 'engineFirst', 'verdict', 'repairYearly', 'newYearly', 'spent'],
  'bearing-fit': ['interference', 'warmTemperature', 'warmVerdict', 'advisedZone', 'seatVerdict'],
  'bearing-size': ['match', 'designation', 'nominalBore', 'nominalOutside', 'nominalWidth'],
  warming: ['warmVerdict', 'temperature'],
  'part-change': ['verdict', 'costNow', 'costLeave', 'mendVerdict'],
  'split-pulley': ['climb', 'passes', 'turns', 'verdict'],
  'fault-order': ['verdict', 'expectedMinutes'],
  'clutch-speed': ['verdict', 'engagement', 'margin', 'observedVerdict'],
  'press-fit': ['tool', 'stress', 'pressure', 'pushIn', 'torque'],
  'running-clearance': ['verdict', 'left'],
  'bearing-life': ['life', 'worth', 'loadVerdict', 'sealedLife'],
  'bolt-torque': ['torque', 'preload', 'casting'],
  'blade-rundown': ['energy', 'verdict', 'time', 'runOutVerdict'],
  'fuel-mix': ['oil', 'fuel', 'verdict', 'addOil', 'addFuel'],
  'compression-check': ['oilVerdict', 'verdict', 'expected', 'share'],
  'service-interval': ['verdict', 'dueDate', 'clock', 'bestAge', 'meter'],
  'dust-control': ['verdict', 'factor', 'mask', 'average', 'longShift'],
  'water-supply': ['verdict', 'water', 'time', 'fills', 'collect'],
  'noise-dose': ['niosh', 'osha', 'europe', 'protectors', 'nioshDose', 'oshaDose', 'nioshLeft'],
  'hand-arm-vibration': ['verdict', 'day', 'points'],
  'fume-room': ['engine', 'ceilingTime', 'end', 'verdict', 'wait'],
};

describe.each(Object.entries(topics))('%s', (name, topic) => {
  it('gives whole values, each once, what matters first, and a stop among it', () => {
    const seen = new Set<string>();
    for (const raw of examplesFor(name, topic.example)) {
      const read = readInputs(topic.fields, raw, { sum: readSum });
      if (!read.ok) throw new Error(`Not readable: ${JSON.stringify(read)}`);
      const result = topic.compute(read.inputs);
      if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result.problems)}`);
      const { values } = result;
      for (const v of values) isWhole(v);
      expect(new Set(values.map((v) => v.key)).size, JSON.stringify(raw)).toBe(values.length);
      const main = values.filter((v) => v.main);
      for (const v of main) seen.add(v.key);
      expect(main.length, JSON.stringify(raw)).toBeGreaterThan(0);
      const isStop = (v: Value) => v.kind === 'verdict' && v.level === 'stop';
      expect(main.some(isStop), JSON.stringify(raw)).toBe(values.some(isStop));
    }
    expect([...seen].toSorted()).toEqual(first[name]?.toSorted());
  });
});
