/** The drive itself, as values: sizes a drawing needs, and the strands under both names. */
import type { Value } from '../../contract/result.ts';
import type { BeltInputs, Drive } from './drive.ts';
import { grooveSize, ribbedFace } from './pulley-size.ts';
import { isRibbed } from './sections.ts';
import { serviceSource } from './service-factor.ts';
import type { Setting } from './setting.ts';

const lengthUnits = ['mm', 'in'] as const;
const forceUnits = ['N', 'lbf'] as const;

/** Length, wrap, speed and span of a solved drive as values [SI]. */
export function driveValues(i: BeltInputs, d: Drive): Value[] {
  const engineIsSmall = d.engine <= d.blade;
  const [small, large] = [d.wrap, 2 * Math.PI - d.wrap];
  return [
    {
      kind: 'quantity',
      key: 'length',
      label: 'Belt length',
      value: d.length,
      units: lengthUnits,
      decimals: [1, 2],
      main: i.known === 'centre',
    },
    {
      kind: 'quantity',
      key: 'centre',
      label: 'Distance between the shaft centers',
      value: d.centre,
      units: lengthUnits,
      decimals: [1, 2],
      main: i.known === 'length',
    },
    { kind: 'quantity', key: 'span', label: 'Free span', value: d.span, units: lengthUnits, decimals: [1, 2] },
    {
      kind: 'quantity',
      key: 'enginePitch',
      label: 'Engine pulley, pitch diameter',
      value: d.engine,
      units: lengthUnits,
      decimals: [1, 3],
    },
    {
      kind: 'quantity',
      key: 'bladePitch',
      label: 'Blade pulley, pitch diameter',
      value: d.blade,
      units: lengthUnits,
      decimals: [1, 3],
    },
    {
      kind: 'quantity',
      key: 'engineWrap',
      label: 'Wrap on the engine pulley',
      value: engineIsSmall ? small : large,
      units: ['°', '°'],
    },
    {
      kind: 'quantity',
      key: 'bladeWrap',
      label: 'Wrap on the blade pulley',
      value: engineIsSmall ? large : small,
      units: ['°', '°'],
    },
    { kind: 'quantity', key: 'speed', label: 'Belt speed', value: d.speed, units: ['m/s', 'ft/min'] },
    {
      kind: 'quantity',
      key: 'otherRotation',
      label: i.speedOf === 'engine' ? 'Blade-shaft speed, no slip' : 'Engine speed, no slip',
      value: d.otherRotation,
      units: ['rpm', 'rpm'],
    },
    {
      kind: 'quantity',
      key: 'face',
      label: 'Least width of the pulley',
      value: isRibbed(i.section) ? ribbedFace(i.section, d.belts) : grooveSize(i.section, d.small, d.belts).face,
      units: lengthUnits,
      decimals: [1, 2],
      source: isRibbed(i.section) ? 'iso-9982' : 'din-2211-grooves',
    },
    ...(d.tooSmall
      ? [
          {
            kind: 'verdict',
            key: 'pulleyVerdict',
            label: 'Small pulley',
            code: 'pulley-small',
            level: 'caution',
          } as const,
        ]
      : []),
  ];
}

/** The window of tension and what it rests on as values [SI]. */
export function settingValues(i: BeltInputs, s: Setting): Value[] {
  const t = s.strands;
  return [
    {
      kind: 'quantity',
      key: 'staticTension',
      label: 'Static tension of one belt or rib',
      value: s.aim,
      low: s.low,
      high: s.high,
      units: forceUnits,
      decimals: [0, 1],
      main: true,
    },
    {
      kind: 'number',
      key: 'serviceFactor',
      label: 'Service factor',
      value: s.factor,
      decimals: 1,
      ...(i.factor === undefined ? { source: serviceSource(i.load) } : {}),
    },
    {
      kind: 'quantity',
      key: 'designPower',
      label: 'Power the belt is set for',
      value: s.designPower,
      units: ['kW', 'hp'],
    },
    {
      kind: 'quantity',
      key: 'pull',
      label: 'Effective pull of one belt or rib',
      value: s.pull,
      units: forceUnits,
      decimals: [1, 2],
    },
    {
      kind: 'quantity',
      key: 'centrifugal',
      label: 'Tension from the belt’s own mass',
      value: s.ownTension,
      units: forceUnits,
      decimals: [1, 2],
    },
    {
      kind: 'table',
      key: 'strands',
      label: 'Strands of one belt or rib, running, set to the middle of the window',
      note: 'Books use the same letters for both columns. The first turns the pulley and loads the shaft; the second is what the belt’s cords feel.',
      columns: [
        { key: 'side', label: 'Side' },
        { key: 'working', label: 'Working tension (without centrifugal)', units: forceUnits, decimals: [1, 2] },
        { key: 'inBelt', label: 'Tension in the belt (with centrifugal)', units: forceUnits, decimals: [1, 2] },
      ],
      rows: [
        ['Tight side', t.tightWorking, t.tightInBelt],
        ['Slack side', t.slackWorking, t.slackInBelt],
      ],
    },
  ];
}
