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
};

export const hasDrawing = (kind: MachineKind): boolean => drawings[kind] !== undefined;
