import { step, type WorkingStep } from '../../contract/formula.ts';
import type { InputsOf } from '../../contract/field.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { fromUnit } from '../../quantity/index.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import {
  ceilingVerdict,
  housingCeiling,
  isPast,
  ringCeiling,
  slidesByHand,
  warmLabel,
  worthWarming,
  type Ceiling,
} from './ceilings.ts';
import { growth, housingMaterials, materialOf, temperatureChange } from '../../materials/index.ts';
import { fields } from './fields.ts';
import { dropNeeded, gapAtHeat, riseNeeded, riseWithCold, shrinkOfInner } from './formulas.ts';
import { openTimeValues } from './open-time.ts';

type WarmInputs = InputsOf<typeof fields>;

const degrees = ['°C', '°F'] as const;
const micro = ['µm', 'thou'] as const;
/** What a household freezer holds and what dry ice gives [K]; common practice. */
const freezer = fromUnit(-18, '°C');
const dryIce = fromUnit(-78, '°C');
/** Colder than anything a shop could use: not worth a figure [K]. */
const liquidNitrogen = 77;
/** A thousandth of a micrometer: less than any gap anybody asks for [m]. */
const hair = 1e-9;
/** Nearer to its ceiling than this, a part is as hot as it may be: a shop's thermometer shows whole degrees [K]. */
const nearCeiling = 1;
/** Metal hotter than this hurts to hold, metal colder than this sticks to the skin [K]; common practice, no source. */
const hotToHold = fromUnit(45, '°C');
const coldToHold = fromUnit(-10, '°C');

export const compute = guarded(fields, (inputs): Result => {
  const { part, diameter: d, interference: I, gap: c, room, cold, sealed } = inputs;
  if (isOver(cold, room)) return refuse('cold', 'room-too-hot', { cold, room });
  if (inputs.heatTo !== undefined && isUnder(inputs.heatTo, room))
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
  const open = openTimeValues({ wall: inputs.wall, material: outer, diameter: d, interference: I, rise: hot - room });
  const needed: WorkingStep[] = [
    step(riseNeeded, { I, c, alpha_o: outer.alpha, d }, rise),
    step(dropNeeded, { I, c, alpha_i: inner.alpha, d }, drop),
    step(shrinkOfInner, { alpha_i: inner.alpha, d, dT_i: room - cold }, shrink),
    ...(I + c > shrink ? [step(riseWithCold, { I, c, u_i: shrink, alpha_o: outer.alpha, d }, riseBoth)] : []),
  ];
  const working: WorkingStep[] = [
    ...(I + c > 0 ? needed : []),
    step(gapAtHeat, { alpha_o: outer.alpha, d, dT_h: hot - room, I }, gapThere),
    ...open.steps,
  ];

  // Two sizes are compared: a fit worked out as nothing may be a last bit off it.
  const slides = !isOver(d + I, d);
  const warms = isOver(slides ? (inputs.heatTo ?? room) - room : rise, worthWarming);
  const judged = ceilingVerdict(part, room + rise, room, ceiling, sealed);

  const values: Value[] = [
    slides ? slidesByHand(judged) : judged,
    {
      kind: 'quantity',
      key: 'temperature',
      label: warmLabel(part, room + rise, ceiling, slides),
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
    ...coldValues(inputs, slides ? room : room - drop, room + riseBoth, cold, ceiling),
    { kind: 'quantity', key: 'gapThere', label: 'Gap at the temperature warmed to', value: gapThere, units: micro },
    ...heatToVerdict(inputs.heatTo, ceiling, isUnder(gapThere + hair, c)),
    ...open.values,
    ...(warms
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
    cautions: cautionsFor(
      inputs,
      slides ? (inputs.heatTo ?? room) : Math.max(hot, room + rise),
      slides ? room : room - drop,
      warms,
    ),
  };
});

/** The reader's own temperature: too hot for the part, or not hot enough to open the fit. */
function heatToVerdict(heatTo: number | undefined, ceiling: Ceiling, short: boolean): Value[] {
  const base = { kind: 'verdict', key: 'heatTo', label: 'Temperature you mean to use' } as const;
  if (heatTo !== undefined && isPast(heatTo, ceiling))
    return [
      {
        ...base,
        code: 'heat-to-over',
        level: 'stop',
        data: { hot: heatTo, ceiling: ceiling.temperature },
        source: ceiling.source,
      },
    ];
  if (!short || heatTo === undefined) return [];
  // Within a degree of the ceiling there is no hotter to go.
  const spent = !isUnder(heatTo, ceiling.temperature - nearCeiling);
  return [{ ...base, code: spent ? 'heat-to-short-at-ceiling' : 'heat-to-short', level: 'caution' }];
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
  if (!isUnder(alone, room))
    return [{ kind: 'verdict', key: 'coldVerdict', label: 'Chilling alone', code: 'cool-not-needed', level: 'good' }];
  const code = !isUnder(alone, Math.max(cold, freezer))
    ? 'cool-freezer'
    : sealedInner
      ? 'cool-sealed'
      : !isUnder(alone, dryIce)
        ? 'cool-dry-ice'
        : 'cool-not-enough';
  return [
    ...(isOver(alone, liquidNitrogen)
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
      label: `With the ${inner} chilled as well, ${isPast(both, ceiling) ? 'it would still take' : 'warm to'}`,
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
    { hazard: part === 'housing' ? 'heating-housings' : 'heating-bearings', level: 'warning' },
    ...(isOver(hot, hotToHold) ? [{ hazard: 'hot-parts', level: 'caution' } as const] : []),
    ...(isUnder(chilled, coldToHold) ? [{ hazard: 'cold-parts', level: 'warning' } as const] : []),
  ];
}
