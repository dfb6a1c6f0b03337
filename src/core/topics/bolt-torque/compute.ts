import { step } from '../../contract/formula.ts';
import type { InputsOf } from '../../contract/field.ts';
import type { Result, Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { fields } from './fields.ts';
import { clampForce, greatestShare, torque as torqueFormula } from './formulas.ts';
import { conditionOf, conditions, proofStress, threadOf } from './tables.ts';
import { preload, tighteningTorque } from './torque.ts';

type BoltInputs = InputsOf<typeof fields>;

const torqueUnits = ['N·m', 'lbf·ft'] as const;
const kilo = ['kN', 'lbf'] as const;

export const compute = guarded(fields, (inputs): Result => {
  const thread = threadOf(inputs.size);
  const proof = proofStress(inputs.size, inputs.boltClass);
  const state = conditionOf(inputs.state);
  const K = inputs.ownFactor ?? state.K;
  const force = preload(inputs.share, proof, thread.area);
  const torque = tighteningTorque(K, force, thread.diameter);
  const high = force * (1 + state.scatter);
  const share = high / (proof * thread.area);
  const working = [
    step(clampForce, { x: inputs.share, S_p: proof, A_t: thread.area }, force),
    step(torqueFormula, { K, F: force, d: thread.diameter }, torque),
    step(greatestShare, { F: force, s: state.scatter, S_p: proof, A_t: thread.area }, share),
  ];
  const factorSource = inputs.ownFactor === undefined ? 'shigley-bolts' : undefined;
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'torque',
      label: 'Torque',
      value: torque,
      units: torqueUnits,
      main: true,
      source: factorSource,
    },
    {
      kind: 'quantity',
      key: 'preload',
      label: 'Preload it gives',
      value: force,
      low: force * (1 - state.scatter),
      high,
      units: kilo,
      main: true,
      source: 'preload-scatter-memory',
    },
    {
      kind: 'quantity',
      key: 'shareAtMost',
      label: 'Share of the proof load at most',
      value: share,
      units: ['%', '%'],
      decimals: [0, 0],
    },
    { kind: 'number', key: 'factor', label: 'Torque factor K', value: K, decimals: 2, source: factorSource },
    {
      kind: 'quantity',
      key: 'proofLoad',
      label: 'Proof load',
      value: proof * thread.area,
      units: kilo,
      source: 'iso-898-1',
    },
    ...reminders(inputs, share),
    stateTable(force, thread.diameter),
  ];
  const overloads = share > 1 ? [{ hazard: 'bolt-breaks', level: 'warning' } as const] : [];
  return { ok: true, values, working, cautions: overloads };
});

function reminders({ size, state, into, leftHand, locker }: BoltInputs, share: number): Value[] {
  const note = (
    key: string,
    label: string,
    code: string,
    level: 'note' | 'caution' = 'note',
    data?: Record<string, number | string>,
  ): Value => ({ kind: 'verdict', key, label, code, level, source: 'common-practice', ...(data ? { data } : {}) });
  return [
    note('manual', 'First', 'manual-first'),
    ...(share > 1 ? [note('overload', 'Preload', 'may-overload', 'caution', { share })] : []),
    note(
      'stateNote',
      'Thread',
      state === 'plain' || state === 'zinc' ? 'keep-dry' : 'greased-thread',
      state === 'anti-seize' ? 'caution' : 'note',
    ),
    ...(leftHand ? [note('leftHand', 'Left-hand thread', 'left-hand', 'caution')] : []),
    ...(locker ? [note('locker', 'Thread-locker', 'thread-locker')] : []),
    ...(into === 'light'
      ? [note('light', 'Light alloy', 'light-thread', 'caution', { depth: 2 * threadOf(size).diameter })]
      : []),
  ];
}

function stateTable(force: number, diameter: number): Value {
  return {
    kind: 'table',
    key: 'states',
    label: 'Torque for the same preload in other states',
    source: 'shigley-bolts',
    rows: conditions.map(({ label, K }) => [label, K, tighteningTorque(K, force, diameter)]),
    columns: [
      { key: 'state', label: 'Thread' },
      { key: 'factor', label: 'K', decimals: 2 },
      { key: 'torque', label: 'Torque', units: torqueUnits },
    ],
  };
}
