import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Caution, QuantityValue, Result, Value, VerdictValue } from '../../contract/result.ts';
import { isUnder } from '../../thresholds/index.ts';
import { fillsOf, flowOf, passes, rateOf, stoneOf, timeByFeed, timeByRate } from './cut.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';

type WaterInputs = InputsOf<typeof fields>;

/** A figure with the working that led to it. */
interface Worked {
  readonly value: number;
  readonly steps: readonly WorkingStep[];
}

/** The figure usually named in Britain for hand-held saws [m3/s]; a floor, from memory. Source: hse-water-flow. */
export const leastFlow = 0.5e-3 / 60;
const waterDensity = 1000;

const cautions: readonly Caution[] = [
  { hazard: 'silica-dust', level: 'danger' },
  { hazard: 'slurry-burns', level: 'warning' },
  { hazard: 'slurry-discharge', level: 'notice' },
];

export const compute = guarded(fields, (i): Result => {
  const [time, flow] = [cuttingTime(i), flowFrom(i)];
  const water = flow.value * time.value;
  const stone = stoneOf(i.length, i.depth, i.width);
  const collect = water * (1 - i.lost) + stone;
  const mass = water * (1 - i.lost) * waterDensity + stone * i.density;
  const tank = tankPart(i, water, flow.value);
  const verdict = flowVerdict(i, flow.value);
  // Water by a flow that forbids the cut is no amount to fetch: it stays a figure, and heads nothing.
  const fetched = verdict.level !== 'stop';
  return {
    ok: true,
    values: [
      verdict,
      ...(i.supply === 'bottle' ? [fading] : []),
      volume('water', fetched ? 'Water to have at hand' : 'Water this flow would use', water, fetched),
      minutes('time', 'Cutting time', time.value, fetched),
      ...tank.values.map((v) => (v.key === 'fills' ? { ...v, main: fetched } : v)),
      flowValue(flow.value),
      volume('stone', 'Stone ground out', stone),
      volume('slurry', 'Slurry made', water + stone),
      volume('collect', 'Slurry to take up and carry away', collect, fetched),
      { kind: 'quantity', key: 'mass', label: 'It weighs about', value: mass, units: ['kg', 'lb'], decimals: [0, 0] },
      disposal,
      checkLocal,
    ],
    working: [
      ...time.steps,
      ...flow.steps,
      step(f.waterUsed, { q: flow.value, t: time.value }, water),
      ...tank.steps,
      step(f.stone, { l: i.length, d: i.depth, w: i.width }, stone),
      step(f.slurryMade, { V_w: water, V_s: stone }, water + stone),
      step(f.toCollect, { V_w: water, e: i.lost, V_s: stone }, collect),
      step(f.weight, { V_w: water, e: i.lost, rho_w: waterDensity, V_s: stone, rho: i.density }, mass),
    ],
    cautions,
  };
});

function cuttingTime(i: WaterInputs): Worked {
  if (i.paceFrom === 'feed') {
    const [pace, count] = [i.feed ?? 1, passes(i.depth, i.step)];
    const value = timeByFeed(i.length, count, pace);
    const counted = i.step === undefined ? [] : [step(f.passCount, { d: i.depth, s: i.step }, count)];
    return { value, steps: [...counted, step(f.feedTime, { n: count, l: i.length, v: pace }, value)] };
  }
  const timed = i.paceFrom === 'timed';
  const [l, d, t] = [i.timedLength ?? 1, i.timedDepth ?? 1, i.timedFor ?? 1];
  const rate = timed ? rateOf(l, d, t) : (i.rate ?? 1);
  const value = timeByRate(i.length, i.depth, rate);
  return {
    value,
    steps: [
      ...(timed ? [step(f.timedRate, { l_1: l, d_1: d, t_1: t }, rate)] : []),
      step(f.rateTime, { l: i.length, d: i.depth, r: rate }, value),
    ],
  };
}

function flowFrom(i: WaterInputs): Worked {
  if (i.flowFrom === 'typed') return { value: i.flow ?? 0, steps: [] };
  const [jug, seconds] = [i.jug ?? 0, i.jugFor ?? 1];
  const value = flowOf(jug, seconds);
  return { value, steps: [step(f.jugFlow, { V_j: jug, t_j: seconds }, value)] };
}

function tankPart(i: WaterInputs, water: number, flow: number): { values: Value[]; steps: WorkingStep[] } {
  if (i.supply === 'mains' || i.tank === undefined) return { values: [], steps: [] };
  const [fills, lasts] = [fillsOf(water, i.tank), i.tank / flow];
  return {
    values: [
      {
        kind: 'count',
        key: 'fills',
        label: i.supply === 'bottle' ? 'Bottles to fill' : 'Tanks to fill',
        value: fills,
        main: true,
      },
      minutes('fillLasts', 'One fill lasts', lasts),
    ],
    steps: [step(f.fills, { V_w: water, V_t: i.tank }, fills), step(f.fillLasts, { V_t: i.tank, q: flow }, lasts)],
  };
}

/** The manual's flow rules. Without it the British figure is a floor, and a flow above it is not called enough. */
function flowVerdict(i: WaterInputs, flow: number): VerdictValue {
  const wanted = i.manual ?? leastFlow;
  const short = isUnder(flow, wanted);
  const code = i.manual === undefined ? (short ? 'flow-low' : 'flow-look') : short ? 'flow-short' : 'flow-enough';
  return {
    kind: 'verdict',
    key: 'verdict',
    label: 'Flow',
    code,
    level: short ? 'stop' : i.manual === undefined ? 'note' : 'good',
    data: { flow, wanted },
    main: true,
    ...(i.manual === undefined ? { source: 'hse-water-flow' } : {}),
  };
}

const fading: VerdictValue = {
  kind: 'verdict',
  key: 'fading',
  label: 'Pressure bottle',
  code: 'bottle-fades',
  level: 'caution',
  source: 'thorpe-1999',
};

const disposal: VerdictValue = {
  kind: 'verdict',
  key: 'disposal',
  label: 'What to do with the slurry',
  code: 'slurry-away',
  level: 'caution',
  source: 'slurry-ph',
};

const checkLocal: VerdictValue = {
  kind: 'verdict',
  key: 'check',
  label: 'Rules of your place',
  code: 'check-local',
  level: 'note',
};

function volume(key: string, label: string, value: number, main = false): QuantityValue {
  return { kind: 'quantity', key, label, value, units: ['L', 'gal'], decimals: [1, 1], main };
}

function minutes(key: string, label: string, value: number, main = false): QuantityValue {
  return { kind: 'quantity', key, label, value, units: ['min', 'min'], decimals: [0, 0], main };
}

function flowValue(value: number): QuantityValue {
  return { kind: 'quantity', key: 'flow', label: 'Flow', value, units: ['L/min', 'gal/min'], decimals: [2, 2] };
}
