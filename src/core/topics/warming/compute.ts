import { step, type WorkingStep } from '../../contract/formula.ts';
import type { InputsOf } from '../../contract/field.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { ceilingVerdict, housingCeiling, ringCeiling, warmLabel, type Ceiling } from './ceilings.ts';
import { growth, housingMaterials, materialOf, temperatureChange } from '../../materials/index.ts';
import { fields } from './fields.ts';
import { dropNeeded, gapAtHeat, riseNeeded, riseWithCold, shrinkOfInner } from './formulas.ts';
import { openTimeValues } from './open-time.ts';

type WarmInputs = InputsOf<typeof fields>;

const degrees = ['°C', '°F'] as const;
const micro = ['µm', 'thou'] as const;
const freezer = 273.15 - 18;
const dryIce = 273.15 - 78;
/** Colder than anything a shop could use: not worth a figure. */
const liquidNitrogen = 77;

export const compute = guarded(fields, (inputs): Result => {
  const { part, diameter: d, interference: I, gap: c, room, cold, sealed } = inputs;
  if (cold > room) return refuse('cold', 'room-too-hot', { cold, room });
  if (inputs.heatTo !== undefined && inputs.heatTo < room)
    return refuse('heatTo', 'heat-below-room', { hot: inputs.heatTo, room });
  const outer = materialOf(part === 'housing' ? (inputs.housingMaterial ?? 'aluminium-die-cast') : 'bearing-steel');
  const inner = materialOf(part === 'housing' ? 'bearing-steel' : (inputs.shaftMaterial ?? 'carbon-steel'));
  const ceiling =
    part === 'housing' ? housingCeiling(inputs.housingMaterial ?? 'aluminium-die-cast') : ringCeiling(sealed);

  const rise = temperatureChange(d, I, c, outer.alpha);
  const drop = temperatureChange(d, I, c, inner.alpha);
  const shrink = growth(d, inner.alpha, room - cold);
  const riseBoth = temperatureChange(d, I - shrink, c, outer.alpha);
  const hot = inputs.heatTo ?? room + rise;
  const gapThere = growth(d, outer.alpha, hot - room) - I;
  const working: WorkingStep[] = [];
  if (I + c > 0) {
    working.push(
      step(riseNeeded, { I, c, alpha_o: outer.alpha, d }, rise),
      step(dropNeeded, { I, c, alpha_i: inner.alpha, d }, drop),
    );
    working.push(step(shrinkOfInner, { alpha_i: inner.alpha, d, dT_i: room - cold }, shrink));
    if (I + c > shrink) working.push(step(riseWithCold, { I, c, u_i: shrink, alpha_o: outer.alpha, d }, riseBoth));
  }
  working.push(step(gapAtHeat, { alpha_o: outer.alpha, d, dT_h: hot - room, I }, gapThere));

  const values: Value[] = [
    ceilingVerdict(part, room + rise, room, ceiling, sealed),
    {
      kind: 'quantity',
      key: 'temperature',
      label: warmLabel(part, room + rise, ceiling),
      value: room + rise,
      units: degrees,
      main: true,
      source: outer.alphaSource,
    },
    { kind: 'quantity', key: 'rise', label: 'Rise over the room', value: rise, units: ['°C diff', '°F diff'] },
    {
      kind: 'quantity',
      key: 'ceiling',
      label: 'Highest temperature for this part',
      value: ceiling.temperature,
      units: degrees,
      source: ceiling.source,
    },
    ...coldValues(inputs, room - drop, room + riseBoth, cold, ceiling),
    { kind: 'quantity', key: 'gapThere', label: 'Gap at the temperature warmed to', value: gapThere, units: micro },
    ...heatToVerdict(inputs.heatTo, ceiling, gapThere < c - 1e-9),
    ...openTimeValues({ wall: inputs.wall, material: outer, diameter: d, interference: I, rise: hot - room }, working),
    ...(rise > 0.5
      ? [
          {
            kind: 'verdict',
            key: 'measuring',
            label: 'Knowing the temperature',
            code: 'how-to-measure',
            level: 'note',
            source: 'common-practice',
          } as const,
        ]
      : []),
    ...(part === 'housing' ? [materialTable(d, I, c, room)] : []),
  ];
  return {
    ok: true,
    values,
    working,
    cautions: cautionsFor(inputs, Math.max(hot, room + rise), room - drop, rise > 0.5),
  };
});

/** The reader's own temperature: too hot for the part, or not hot enough to open the fit. */
function heatToVerdict(heatTo: number | undefined, ceiling: Ceiling, short: boolean): Value[] {
  const base = { kind: 'verdict', key: 'heatTo', label: 'Temperature you mean to use' } as const;
  if (heatTo !== undefined && heatTo > ceiling.temperature)
    return [
      {
        ...base,
        code: 'heat-to-over',
        level: 'stop',
        data: { hot: heatTo, ceiling: ceiling.temperature },
        source: ceiling.source,
      },
    ];
  return short ? [{ ...base, code: 'heat-to-short', level: 'caution' }] : [];
}

function coldValues(
  { part, sealed, room }: WarmInputs,
  alone: number,
  both: number,
  cold: number,
  ceiling: Ceiling,
): Value[] {
  const inner = part === 'housing' ? 'bearing' : 'shaft';
  const sealedInner = part === 'housing' && sealed;
  if (alone >= room)
    return [{ kind: 'verdict', key: 'coldVerdict', label: 'Chilling alone', code: 'cool-not-needed', level: 'good' }];
  const code =
    alone >= cold && alone >= freezer
      ? 'cool-freezer'
      : sealedInner
        ? 'cool-sealed'
        : alone >= dryIce
          ? 'cool-dry-ice'
          : 'cool-not-enough';
  return [
    ...(alone > liquidNitrogen
      ? [
          {
            kind: 'quantity',
            key: 'coldAlone',
            label: `Instead, chill the ${inner} alone to`,
            value: alone,
            units: degrees,
          } as const,
        ]
      : []),
    {
      kind: 'verdict',
      key: 'coldVerdict',
      label: 'Chilling alone',
      code,
      level: code === 'cool-freezer' ? 'good' : code === 'cool-dry-ice' ? 'note' : 'caution',
    },
    {
      kind: 'quantity',
      key: 'both',
      label: `With the ${inner} chilled as well, ${both > ceiling.temperature ? 'it would still take' : 'warm to'}`,
      value: both,
      units: degrees,
    },
  ];
}

/** The same fit in each housing material. */
function materialTable(d: number, I: number, c: number, room: number): Value {
  const rows = housingMaterials.map(({ value, label }): (string | number)[] => {
    const m = materialOf(value);
    return [
      label,
      m.alpha,
      room + temperatureChange(d, I, c, m.alpha),
      m.alphaSource === 'materials-memory' ? 'from memory' : 'textbook',
    ];
  });
  return {
    kind: 'table',
    key: 'byMaterial',
    label: 'The same fit in other housings',
    rows,
    columns: [
      { key: 'material', label: 'Housing' },
      { key: 'alpha', label: 'Expansion', units: ['µm/(m·K)', 'µin/(in·°F)'] },
      { key: 'temperature', label: 'Warm to', units: degrees },
      { key: 'source', label: 'Expansion from' },
    ],
  };
}

function cautionsFor({ part, housingMaterial }: WarmInputs, hot: number, chilled: number, warms: boolean): Caution[] {
  if (!warms) return [];
  return [
    ...(part === 'housing' && housingMaterial === 'magnesium'
      ? [{ hazard: 'magnesium', level: 'warning' } as const]
      : []),
    { hazard: 'heating-housings', level: 'warning' },
    ...(hot > 273.15 + 45 ? [{ hazard: 'hot-parts', level: 'caution' } as const] : []),
    ...(chilled < 273.15 - 10 ? [{ hazard: 'cold-parts', level: 'warning' } as const] : []),
  ];
}
