import { step } from '../../contract/formula.ts';
import type { InputsOf } from '../../contract/field.ts';
import type { Result, Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver } from '../../thresholds/index.ts';
import { fields } from './fields.ts';
import { clampForce, greatestShare, strip, stripHalf, torque as torqueFormula } from './formulas.ts';
import {
  conditionOf,
  conditions,
  gradeProofStress,
  inchThreadOf,
  proofStress,
  threadOf,
  type Thread,
} from './tables.ts';
import { preload, stripForce, tighteningTorque } from './torque.ts';

type BoltInputs = InputsOf<typeof fields>;

const torqueUnits = ['N·m', 'lbf·ft'] as const;
const kilo = ['kN', 'lbf'] as const;

/** Share of the stripping force a joint may use: half is kept for soft spots, worn threads and the scatter of the pull. Our choice. */
export const stripReserve = 2;

export const compute = guarded(fields, (inputs): Result => {
  const bolt = boltOf(inputs);
  const state = conditionOf(inputs.state);
  const K = inputs.ownFactor ?? state.K;
  const clamp = clampOf(inputs, bolt);
  const { force } = clamp.value;
  const torque = tighteningTorque(K, force, bolt.diameter);
  const high = force * (1 + state.scatter);
  const share = high / bolt.proofLoad;
  const factorSource = inputs.ownFactor === undefined ? 'shigley-bolts' : undefined;
  const notes = reminders(inputs, clamp.value, share);
  // A bolt not to be fitted has no torque at the head of the answer.
  const head = !notes.some((v) => v.key === 'plated');
  const values: Value[] = [
    ...notes.filter(first),
    {
      kind: 'quantity',
      key: 'torque',
      label: 'Torque',
      value: torque,
      units: torqueUnits,
      figures: 2,
      main: head,
      source: factorSource,
      note: 'Where the machine’s manual gives a torque, use that. This figure is for a bolt nobody gave one for.',
    },
    {
      kind: 'quantity',
      key: 'preload',
      label: 'Preload it gives',
      value: force,
      low: force * (1 - state.scatter),
      high,
      units: kilo,
      figures: 2,
      main: head,
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
      value: bolt.proofLoad,
      units: kilo,
      source: inputs.series === 'inch' ? 'ifi-torque-table' : 'iso-898-1',
    },
    ...clamp.value.shown,
    ...notes.filter((v) => !first(v)),
    stateTable(force, bolt.diameter),
  ];
  return {
    ok: true,
    values,
    working: [
      ...clamp.steps,
      step(torqueFormula, { K, F: force, d: bolt.diameter }, torque),
      step(greatestShare, { F: force, s: state.scatter, S_p: bolt.proof, A_t: bolt.area }, share),
    ],
    cautions: isOver(share, 1) || clamp.value.castingGoverns ? [{ hazard: 'bolt-breaks', level: 'warning' }] : [],
  };
});

/** What forbids the bolt or cuts its torque stands above the figure, not below it. */
const first = (v: Value) => v.key === 'plated' || v.key === 'casting';

interface Bolt extends Thread {
  /** Proof stress [Pa]. */
  readonly proof: number;
  /** [N] */
  readonly proofLoad: number;
}

function boltOf(i: BoltInputs): Bolt {
  const thread = i.series === 'inch' ? inchThreadOf(i.inchSize ?? '5/16-18') : threadOf(i.size ?? 'M8');
  const proof =
    i.series === 'inch' ? gradeProofStress(i.grade ?? '5') : proofStress(i.size ?? 'M8', i.boltClass ?? '8.8');
  return { ...thread, proof, proofLoad: proof * thread.area };
}

interface Clamp {
  /** Preload the joint may have [N]. */
  readonly force: number;
  readonly castingGoverns: boolean;
  /** Thread engaged from which the bolt, not the casting, sets the torque [m]. */
  readonly needed: number;
  readonly shown: readonly Value[];
}

/** The preload: the bolt's share of proof load, or what the casting bears where that is less. */
function clampOf(i: BoltInputs, bolt: Bolt): Worked<Clamp> {
  const ofBolt = preload(i.share, bolt.proof, bolt.area);
  const aimed = step(clampForce, { x: i.share, S_p: bolt.proof, A_t: bolt.area }, ofBolt);
  if (i.into === 'steel')
    return { value: { force: ofBolt, castingGoverns: false, needed: 0, shown: [] }, steps: [aimed] };
  const [engaged, shear] = [i.engaged ?? 0, i.shear ?? 0];
  const strips = stripForce(bolt.diameter, engaged, shear);
  const borne = strips / stripReserve;
  const castingGoverns = isOver(ofBolt, borne);
  return {
    value: {
      force: castingGoverns ? borne : ofBolt,
      castingGoverns,
      needed: (engaged * ofBolt) / borne,
      shown: [
        {
          kind: 'quantity',
          key: 'strips',
          label: 'Force that strips the thread out of the casting',
          value: strips,
          units: kilo,
          figures: 2,
          source: 'thread-shear',
        },
      ],
    },
    steps: [
      aimed,
      step(strip, { d: bolt.diameter, L_e: engaged, tau: shear }, strips),
      ...(castingGoverns ? [step(stripHalf, { F_s: strips, q: stripReserve }, borne)] : []),
    ],
  };
}

function reminders(i: BoltInputs, clamp: Clamp, share: number): Value[] {
  const note = (
    key: string,
    label: string,
    code: string,
    level: 'note' | 'caution' | 'stop' = 'note',
    data?: Record<string, number | string>,
  ): Value => ({ kind: 'verdict', key, label, code, level, source: 'common-practice', ...(data ? { data } : {}) });
  const plated = i.state === 'zinc' || i.state === 'cadmium';
  const wet = i.state === 'oiled' || i.state === 'anti-seize';
  const notes = [
    ...(i.series === 'metric' && i.boltClass === '12.9' && plated
      ? [{ ...note('plated', 'Plated 12.9', 'plated-12-9', 'stop'), source: 'iso-4042' }]
      : []),
    ...(i.into === 'light'
      ? [
          clamp.castingGoverns
            ? note('casting', 'Light alloy', 'casting-governs', 'caution', {
                engaged: i.engaged ?? 0,
                needed: clamp.needed,
              })
            : note('casting', 'Light alloy', 'casting-bears-it'),
        ]
      : []),
    ...(isOver(share, 1) ? [note('overload', 'Preload', 'may-overload', 'caution', { share })] : []),
    // Locker wants a clean thread: no word on oiling it beside that.
    ...(i.locker && wet
      ? []
      : [
          note(
            'stateNote',
            'Thread',
            wet ? 'greased-thread' : 'keep-dry',
            i.state === 'anti-seize' ? 'caution' : 'note',
          ),
        ]),
    ...(i.leftHand ? [note('leftHand', 'Left-hand thread', 'left-hand', 'caution')] : []),
    ...(i.locker
      ? [note('locker', 'Thread-locker', wet ? 'locker-on-oil' : 'thread-locker', wet ? 'caution' : 'note')]
      : []),
  ];
  return notes.map((v) => (v.key === 'plated' || v.key === 'casting' ? { ...v, main: true } : v));
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
      { key: 'torque', label: 'Torque', units: torqueUnits, decimals: [1, 1] },
    ],
  };
}
