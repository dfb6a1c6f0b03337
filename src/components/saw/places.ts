/** Where the numbers stand on the drawing of a kind of machine: by part, the circle at the edge and the dot on the part. */
import type { MachineKind } from '../../schemas/machine-kinds.ts';

export interface PartPlace {
  readonly circle: readonly [x: number, y: number];
  readonly dot: readonly [x: number, y: number];
}

export interface Places {
  readonly width: number;
  readonly height: number;
  /** Clockwise from top left. */
  readonly parts: Readonly<Record<string, PartPlace>>;
}

export const drawings: Readonly<Partial<Record<MachineKind, Places>>> = {
  'cut-off-saw': {
    width: 768,
    height: 556,
    parts: {
      throttle: { circle: [52, 40], dot: [92, 212] },
      'stop-switch': { circle: [122, 40], dot: [158, 226] },
      'air-filter': { circle: [192, 40], dot: [212, 196] },
      cord: { circle: [262, 40], dot: [244, 120] },
      handle: { circle: [332, 40], dot: [294, 112] },
      cylinder: { circle: [402, 40], dot: [350, 166] },
      muffler: { circle: [472, 40], dot: [404, 214] },
      guard: { circle: [542, 40], dot: [500, 186] },
      nozzle: { circle: [612, 40], dot: [470, 238] },
      blade: { circle: [716, 150], dot: [676, 226] },
      flanges: { circle: [640, 512], dot: [566, 330] },
      bearings: { circle: [500, 512], dot: [540, 340] },
      belt: { circle: [386, 512], dot: [408, 346] },
      clutch: { circle: [290, 512], dot: [318, 338] },
      tank: { circle: [170, 512], dot: [196, 352] },
    },
  },
  'twin-blade-saw': {
    width: 768,
    height: 556,
    parts: {
      throttle: { circle: [52, 40], dot: [92, 212] },
      'stop-switch': { circle: [122, 40], dot: [158, 226] },
      'air-filter': { circle: [192, 40], dot: [212, 196] },
      cord: { circle: [262, 40], dot: [244, 120] },
      handle: { circle: [332, 40], dot: [294, 112] },
      cylinder: { circle: [402, 40], dot: [350, 166] },
      muffler: { circle: [472, 40], dot: [404, 214] },
      guard: { circle: [542, 40], dot: [560, 262] },
      nozzle: { circle: [612, 40], dot: [504, 268] },
      blade: { circle: [716, 200], dot: [676, 300] },
      flanges: { circle: [716, 420], dot: [602, 364] },
      pulley: { circle: [660, 512], dot: [612, 380] },
      bearings: { circle: [576, 512], dot: [584, 368] },
      arm: { circle: [480, 512], dot: [480, 350] },
      belt: { circle: [386, 512], dot: [400, 362] },
      clutch: { circle: [290, 512], dot: [318, 338] },
      tank: { circle: [170, 512], dot: [196, 352] },
    },
  },
  'ring-saw': {
    width: 768,
    height: 556,
    parts: {
      throttle: { circle: [52, 40], dot: [92, 212] },
      'stop-switch': { circle: [122, 40], dot: [158, 226] },
      'air-filter': { circle: [192, 40], dot: [212, 196] },
      cord: { circle: [262, 40], dot: [244, 120] },
      handle: { circle: [332, 40], dot: [294, 112] },
      cylinder: { circle: [402, 40], dot: [350, 166] },
      muffler: { circle: [472, 40], dot: [404, 214] },
      nozzle: { circle: [542, 40], dot: [432, 210] },
      guard: { circle: [612, 40], dot: [570, 166] },
      ring: { circle: [716, 150], dot: [690, 252] },
      rollers: { circle: [640, 512], dot: [474, 414] },
      support: { circle: [556, 512], dot: [508, 442] },
      'drive-wheel': { circle: [472, 512], dot: [502, 372] },
      belt: { circle: [386, 512], dot: [420, 356] },
      clutch: { circle: [290, 512], dot: [318, 338] },
      tank: { circle: [170, 512], dot: [196, 352] },
    },
  },
  'floor-saw': {
    width: 768,
    height: 556,
    parts: {
      handle: { circle: [52, 40], dot: [58, 150] },
      'stop-switch': { circle: [122, 40], dot: [90, 178] },
      drive: { circle: [192, 40], dot: [148, 208] },
      raising: { circle: [262, 40], dot: [212, 226] },
      'air-filter': { circle: [332, 40], dot: [256, 214] },
      tank: { circle: [402, 40], dot: [340, 172] },
      cylinder: { circle: [472, 40], dot: [368, 216] },
      muffler: { circle: [542, 40], dot: [420, 222] },
      water: { circle: [612, 40], dot: [520, 230] },
      guard: { circle: [682, 40], dot: [600, 282] },
      nozzle: { circle: [716, 170], dot: [582, 358] },
      pointer: { circle: [726, 262], dot: [700, 342] },
      blade: { circle: [700, 516], dot: [606, 470] },
      flanges: { circle: [616, 516], dot: [528, 416] },
      bearings: { circle: [470, 516], dot: [492, 402] },
      belt: { circle: [396, 516], dot: [440, 392] },
      oil: { circle: [312, 516], dot: [300, 316] },
      wheels: { circle: [120, 516], dot: [190, 452] },
    },
  },
};

export const hasDrawing = (kind: MachineKind): boolean => drawings[kind] !== undefined;
