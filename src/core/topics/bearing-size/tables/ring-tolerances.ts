/**
 * Ring tolerances of radial bearings: lower deviation of the mean bore and of the mean outside diameter. The upper one is 0.
 * Source: iso-492; cells listed in `unseen` are from memory (iso-492-memory).
 */
export const ringClasses = ['Normal', 'P6', 'P5'] as const;
export type RingClass = (typeof ringClasses)[number];

export interface RingRow {
  /** Size step, mm. */
  readonly over: number;
  readonly upTo: number;
  /** Lower deviation, µm. */
  readonly Normal: number;
  readonly P6: number;
  readonly P5: number;
  readonly unseen: readonly RingClass[];
}

export const ringBores: readonly RingRow[] = [
  { over: 2.5, upTo: 10, Normal: -8, P6: -7, P5: -5, unseen: [] },
  { over: 10, upTo: 18, Normal: -8, P6: -7, P5: -5, unseen: [] },
  { over: 18, upTo: 30, Normal: -10, P6: -8, P5: -6, unseen: [] },
  { over: 30, upTo: 50, Normal: -12, P6: -10, P5: -8, unseen: [] },
  { over: 50, upTo: 80, Normal: -15, P6: -12, P5: -9, unseen: [] },
  { over: 80, upTo: 120, Normal: -20, P6: -15, P5: -10, unseen: [] },
  { over: 120, upTo: 180, Normal: -25, P6: -18, P5: -13, unseen: [] },
  { over: 180, upTo: 250, Normal: -30, P6: -22, P5: -15, unseen: [] },
  { over: 250, upTo: 315, Normal: -35, P6: -25, P5: -18, unseen: ['P6'] },
  { over: 315, upTo: 400, Normal: -40, P6: -30, P5: -23, unseen: ['P6'] },
  { over: 400, upTo: 500, Normal: -45, P6: -35, P5: -28, unseen: ['P6'] },
];

export const ringOutsides: readonly RingRow[] = [
  { over: 6, upTo: 18, Normal: -8, P6: -7, P5: -5, unseen: ['Normal', 'P6'] },
  { over: 18, upTo: 30, Normal: -9, P6: -8, P5: -6, unseen: ['P6'] },
  { over: 30, upTo: 50, Normal: -11, P6: -9, P5: -7, unseen: ['P6'] },
  { over: 50, upTo: 80, Normal: -13, P6: -11, P5: -9, unseen: ['P6'] },
  { over: 80, upTo: 120, Normal: -15, P6: -13, P5: -10, unseen: ['P6'] },
  { over: 120, upTo: 150, Normal: -18, P6: -15, P5: -11, unseen: ['P6'] },
  { over: 150, upTo: 180, Normal: -25, P6: -18, P5: -13, unseen: ['P6'] },
  { over: 180, upTo: 250, Normal: -30, P6: -20, P5: -15, unseen: ['P6'] },
  { over: 250, upTo: 315, Normal: -35, P6: -25, P5: -18, unseen: ['P6'] },
  { over: 315, upTo: 400, Normal: -40, P6: -28, P5: -20, unseen: ['P6'] },
  { over: 400, upTo: 500, Normal: -45, P6: -33, P5: -23, unseen: ['Normal', 'P6'] },
];
