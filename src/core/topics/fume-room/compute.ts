import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { guarded } from '../../contract/guarded.ts';
import type { QuantityValue, Result, Value, VerdictValue } from '../../contract/result.ts';
import { isOver } from '../../thresholds/index.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';
import { band, ceiling, emissions, levels, lowest, shortTerm } from './levels.ts';
import {
  concentrationAt,
  density,
  meanOver,
  sourceOf,
  steadyConcentration,
  timeTo,
  timeToThin,
  type Room,
} from './room.ts';

type RoomInputs = InputsOf<typeof fields>;

const ppm = ['ppm', 'ppm'] as const;
const minutes = ['min', 'min'] as const;
/** Less than one change in a hundred hours is a shut room [1/s]. */
const leastChanges = 0.01 / 3600;

export const compute = guarded(fields, (i): Result => {
  const { room, steps } = roomOf(i);
  const part = i.what === 'stopped' ? stopped(i, room) : running(i, room);
  return {
    ok: true,
    values: [
      ...part.values,
      {
        kind: 'quantity',
        key: 'volume',
        label: 'Air in the room',
        value: room.volume,
        units: ['m3', 'ft3'],
        decimals: [0, 0],
      },
      {
        kind: 'quantity',
        key: 'changes',
        label: 'Air changes an hour',
        value: room.changes,
        units: ['1/h', '1/h'],
        decimals: [1, 1],
      },
      checkLocal,
    ],
    working: [...steps, ...part.steps],
    cautions: [{ hazard: 'carbon-monoxide', level: 'danger' }],
  };
});

/** Volume [m3] and changes of air [1/s] of the room, with the working; no change at all below the least that counts. */
export function roomOf(i: RoomInputs): { readonly room: Room; readonly steps: readonly WorkingStep[] } {
  const volume = i.length * i.width * i.height;
  const first = step(f.volume, { l: i.length, w: i.width, h: i.height }, volume);
  const fan = i.fan ?? 0;
  const changes = i.air === 'fan' ? fan / volume : i.air === 'changes' ? (i.changes ?? 0) : 0;
  if (changes < leastChanges) return { room: { volume, changes: 0 }, steps: [first] };
  if (i.air === 'changes') return { room: { volume, changes }, steps: [first] };
  return { room: { volume, changes }, steps: [first, step(f.fanChanges, { Q: fan, V: volume }, changes)] };
}

/** Carbon monoxide given off [m3/s], and half and twice of it for an engine. */
export function strengthOf(i: RoomInputs): { readonly low: number; readonly middle: number; readonly high: number } {
  if (i.what === 'leak') {
    const middle = (i.leak ?? 0) / density;
    return { low: middle, middle, high: middle };
  }
  const middle = sourceOf(emissions[i.kind ?? 'hand-held'], i.power ?? 0);
  return { low: middle * band.low, middle, high: middle * band.high };
}

interface Part {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

/** An engine in a room is refused whatever the figures say; a leak is measured, and refused where the model passes a limit. */
function running(i: RoomInputs, room: Room): Part {
  const strength = strengthOf(i);
  const run = i.run ?? 0;
  const at = (source: number) => concentrationAt(room, source, run);
  const steady = steadyConcentration(room, strength.middle);
  const end: QuantityValue = {
    kind: 'quantity',
    key: 'end',
    label: 'In the air at the end',
    value: at(strength.middle),
    low: at(strength.low),
    high: at(strength.high),
    units: ppm,
    figures: 2,
    main: true,
  };
  const values: Value[] = [
    runningVerdict(i, room, strength),
    ...passing(room, strength, 'ceilingTime', 'Passes NIOSH’s ceiling, 200 ppm, after', ceiling, true),
    end,
    ...(steady === undefined
      ? []
      : [
          {
            kind: 'quantity',
            key: 'steady',
            label: 'Where it ends, if nothing changes',
            value: steady,
            units: ppm,
            figures: 2,
          } as const,
        ]),
    {
      kind: 'quantity',
      key: 'quarter',
      label: 'Average of the first 15 min',
      value: meanOver(room, strength.middle, 900),
      units: ppm,
      figures: 2,
      note: 'As if it ran all that time. EU and Great Britain: 100 at most.',
    },
    {
      kind: 'quantity',
      key: 'source',
      label: 'Carbon monoxide given off',
      value: strength.middle * density,
      low: strength.low * density,
      high: strength.high * density,
      units: ['g/h', 'g/h'],
      figures: 2,
    },
    levelTable(room, strength),
  ];
  return { values, steps: runningSteps(i, room, strength.middle, steady, end.value) };
}

type Strength = ReturnType<typeof strengthOf>;

/** An engine is refused by itself; the figures only show how fast. Anything else is held against the limits. */
function runningVerdict(i: RoomInputs, room: Room, strength: Strength): VerdictValue {
  const one = (key: string, code: string, level: VerdictValue['level']): VerdictValue => ({
    kind: 'verdict',
    key,
    label: 'Answer',
    code,
    level,
    main: true,
  });
  if (i.what === 'engine') return one('engine', 'engine', 'stop');
  const steady = steadyConcentration(room, strength.middle);
  const most = Math.max(concentrationAt(room, strength.middle, i.run ?? 0), meanOver(room, strength.middle, 900));
  const passes = steady === undefined || isOver(steady, lowest) || isOver(most, shortTerm);
  return passes ? one('verdict', 'leak-stop', 'stop') : one('verdict', 'leak-measure', 'caution');
}

/** How long until a level: seconds while they are few, then minutes. */
const timeUnits = (seconds: number) => (seconds < 300 ? (['s', 's'] as const) : minutes);

function passing(room: Room, strength: Strength, key: string, label: string, level: number, main: boolean): Value[] {
  const value = timeTo(room, strength.middle, level);
  if (value === undefined) return [];
  const slow = timeTo(room, strength.low, level);
  return [
    {
      kind: 'quantity',
      key,
      label,
      value,
      ...(slow === undefined ? {} : { low: timeTo(room, strength.high, level) ?? value, high: slow }),
      units: timeUnits(value),
      figures: 2,
      main,
    },
  ];
}

/** Time to each level for half, the whole and twice the source; rounded down, so that nothing looks slower than it is. */
function levelTable(room: Room, strength: Strength): Value {
  const to = (source: number, value: number) => {
    const t = timeTo(room, source, value);
    if (t === undefined) return 'not by this reckoning';
    if (t < 1) return 'under 1 s';
    if (t < 300) return `${Math.floor(t)} s`;
    return t < 86400 ? `${Math.floor(t / 60)} min` : 'over a day';
  };
  return {
    kind: 'table',
    key: 'levels',
    label: 'How fast the air passes each level',
    columns: [
      { key: 'what', label: 'Level' },
      { key: 'ppm', label: 'That is', units: ppm, decimals: 0 },
      { key: 'law', label: 'Law and date' },
      { key: 'low', label: 'Half the exhaust' },
      { key: 'middle', label: 'Reckoned' },
      { key: 'high', label: 'Twice the exhaust' },
    ],
    rows: levels.map((l) => [
      l.what,
      l.value,
      l.law,
      to(strength.low, l.value),
      to(strength.middle, l.value),
      to(strength.high, l.value),
    ]),
  };
}

function runningSteps(
  i: RoomInputs,
  room: Room,
  source: number,
  steady: number | undefined,
  end: number,
): WorkingStep[] {
  const given =
    i.what === 'leak'
      ? step(f.fromLeak, { g: i.leak ?? 0, rho: density }, source)
      : step(f.fromEngine, { m: emissions[i.kind ?? 'hand-held'], P: i.power ?? 0, rho: density }, source);
  const to = timeTo(room, source, ceiling);
  if (steady === undefined)
    return [
      given,
      step(f.atEndShut, { G: source, t: i.run ?? 0, V: room.volume }, end),
      ...(to === undefined ? [] : [step(f.reachesShut, { C_l: ceiling, V: room.volume, G: source }, to)]),
    ];
  return [
    given,
    step(f.steady, { G: source, n: room.changes, V: room.volume }, steady),
    step(f.atEnd, { C_s: steady, n: room.changes, t: i.run ?? 0 }, end),
    ...(to === undefined ? [] : [step(f.reaches, { C_l: ceiling, C_s: steady, n: room.changes }, to)]),
  ];
}

/** Exhaust left in the air: how long it would take at best, and still nobody goes in without a meter. */
function stopped(i: RoomInputs, room: Room): Part {
  const now = i.now ?? 0;
  const wait = timeToThin(room, now, lowest);
  const high = isOver(now, lowest);
  const verdict: VerdictValue = {
    kind: 'verdict',
    key: 'verdict',
    label: 'Answer',
    code: high ? (wait === undefined ? 'stopped-shut' : 'stopped-wait') : 'stopped-measure',
    level: high ? 'stop' : 'caution',
    data: wait === undefined ? {} : { wait },
    main: true,
  };
  if (wait === undefined || !high) return { values: [verdict], steps: [] };
  return {
    values: [
      verdict,
      {
        kind: 'quantity',
        key: 'wait',
        label: 'Thinned to 20 ppm at best after',
        value: wait,
        units: minutes,
        decimals: [0, 0],
        main: true,
      },
    ],
    steps: [step(f.thins, { C_0: now, C_l: lowest, n: room.changes }, wait)],
  };
}

const checkLocal: VerdictValue = {
  kind: 'verdict',
  key: 'check',
  label: 'Rules of your place',
  code: 'check-local',
  level: 'note',
};
