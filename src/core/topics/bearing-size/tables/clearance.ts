/**
 * Radial internal clearance of deep-groove ball bearings with cylindrical bore, unmounted, µm [least, most].
 * Source: iso-5753-1 up to 100 mm bore; above that from memory (iso-5753-1-memory).
 */
export const groups = ['C2', 'CN', 'C3', 'C4'] as const;
export type Group = (typeof groups)[number];
type Span = readonly [number, number];

export interface ClearanceRow extends Readonly<Record<Group, Span>> {
  /** Bore step, mm. */
  readonly over: number;
  readonly upTo: number;
  readonly unseen: boolean;
}

export const clearanceRows: readonly ClearanceRow[] = [
  { over: 6, upTo: 10, C2: [0, 7], CN: [2, 13], C3: [8, 23], C4: [14, 29], unseen: false },
  { over: 10, upTo: 18, C2: [0, 9], CN: [3, 18], C3: [11, 25], C4: [18, 33], unseen: false },
  { over: 18, upTo: 24, C2: [0, 10], CN: [5, 20], C3: [13, 28], C4: [20, 36], unseen: false },
  { over: 24, upTo: 30, C2: [1, 11], CN: [5, 20], C3: [13, 28], C4: [23, 41], unseen: false },
  { over: 30, upTo: 40, C2: [1, 11], CN: [6, 20], C3: [15, 33], C4: [28, 46], unseen: false },
  { over: 40, upTo: 50, C2: [1, 11], CN: [6, 23], C3: [18, 36], C4: [30, 51], unseen: false },
  { over: 50, upTo: 65, C2: [1, 15], CN: [8, 28], C3: [23, 43], C4: [38, 61], unseen: false },
  { over: 65, upTo: 80, C2: [1, 15], CN: [10, 30], C3: [25, 51], C4: [46, 71], unseen: false },
  { over: 80, upTo: 100, C2: [1, 18], CN: [12, 36], C3: [30, 58], C4: [53, 84], unseen: false },
  { over: 100, upTo: 120, C2: [2, 20], CN: [15, 41], C3: [36, 66], C4: [61, 97], unseen: true },
  { over: 120, upTo: 140, C2: [2, 23], CN: [18, 48], C3: [41, 81], C4: [71, 114], unseen: true },
  { over: 140, upTo: 160, C2: [2, 23], CN: [18, 53], C3: [46, 91], C4: [81, 130], unseen: true },
  { over: 160, upTo: 180, C2: [2, 25], CN: [20, 61], C3: [53, 102], C4: [91, 147], unseen: true },
  { over: 180, upTo: 200, C2: [2, 30], CN: [25, 71], C3: [63, 117], C4: [107, 163], unseen: true },
];
