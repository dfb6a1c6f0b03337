/**
 * The US control table, 29 CFR 1926.1153 Table 1, as far as its rows were seen: what control a task must have, and the
 * protection factor its respirator must have, up to 4 h and over 4 h a shift. 0 stands for no respirator asked.
 */
import { isOver } from '../../thresholds/index.ts';

export type Control = 'water' | 'extraction' | 'none';
export type Place = 'outdoors' | 'enclosed';
export type Factors = readonly [upTo4h: number, over4h: number];

export interface TableRow {
  /** Number of the row in the table. */
  readonly row: string;
  /** For a narrow box or a drawing. */
  readonly short: string;
  readonly what: string;
  readonly control: Exclude<Control, 'none'>;
  readonly asks: string;
  /** undefined: the table does not list the task there, and exposure must be assessed. */
  readonly outdoors: Factors | undefined;
  readonly enclosed: Factors | undefined;
  readonly source: string;
}

const water = 'water fed through the saw to the blade, all the time';
const shroud = 'shroud and dust collector: 25 cfm for each inch of disc, filter of 99 % or better';
const seen = 'osha-1926-1153';
const secondHand = 'osha-1926-1153-grinders';

// prettier-ignore
const rows = {
  'stationary-saw': { row: 'i', short: 'Stationary saw', what: 'Stationary masonry saw', control: 'water', asks: water, outdoors: [0, 0], enclosed: [0, 0], source: seen },
  'hand-held-saw': { row: 'ii', short: 'Hand-held saw', what: 'Hand-held power saw: cut-off, ring, twin-blade', control: 'water', asks: water, outdoors: [0, 10], enclosed: [10, 10], source: seen },
  'fiber-cement-saw': { row: 'iii', short: 'Fiber cement saw', what: 'Hand-held saw for fiber cement, blade up to 8 in', control: 'extraction', asks: 'dust collection made for the saw, filter of 99 % or better', outdoors: [0, 0], enclosed: undefined, source: seen },
  'walk-behind-saw': { row: 'iv', short: 'Walk-behind saw', what: 'Walk-behind floor saw', control: 'water', asks: water, outdoors: [0, 0], enclosed: [10, 10], source: seen },
  'ride-on-saw': { row: 'v', short: 'Ride-on saw', what: 'Ride-on floor saw', control: 'water', asks: water, outdoors: [0, 0], enclosed: undefined, source: seen },
  'core-drill': { row: 'vi', short: 'Core drill', what: 'Core drill on a rig', control: 'water', asks: 'water fed to the cutting face', outdoors: [0, 0], enclosed: [0, 0], source: seen },
  'drill': { row: 'vii', short: 'Drill', what: 'Drill, hand-held or on a stand', control: 'extraction', asks: 'shroud or cowling with dust collector; HEPA vacuum for the holes', outdoors: [0, 0], enclosed: [0, 0], source: seen },
  'dowel-rig': { row: 'viii', short: 'Dowel rig', what: 'Dowel drilling rig', control: 'extraction', asks: 'shroud with dust collector; HEPA vacuum for the holes', outdoors: [10, 10], enclosed: undefined, source: secondHand },
  'breaker': { row: 'x', short: 'Breaker, wet', what: 'Jackhammer or chipping tool, with water', control: 'water', asks: 'steady stream or spray of water where it strikes', outdoors: [0, 10], enclosed: [10, 10], source: seen },
  'breaker-extraction': { row: 'x', short: 'Breaker, vacuum', what: 'Jackhammer or chipping tool, with extraction', control: 'extraction', asks: 'shroud and dust collector', outdoors: [0, 10], enclosed: [10, 10], source: seen },
  'grinder-mortar': { row: 'xi', short: 'Mortar grinder', what: 'Grinder, mortar removal', control: 'extraction', asks: shroud, outdoors: [10, 25], enclosed: [10, 25], source: secondHand },
  'grinder': { row: 'xii', short: 'Grinder, vacuum', what: 'Grinder, other uses, with extraction', control: 'extraction', asks: shroud, outdoors: [0, 0], enclosed: [0, 10], source: secondHand },
  'grinder-wet': { row: 'xii', short: 'Grinder, wet', what: 'Grinder, other uses, with water', control: 'water', asks: 'water fed to the disc, all the time', outdoors: [0, 0], enclosed: undefined, source: secondHand },
} as const satisfies Readonly<Record<string, TableRow>>;

export type Task = keyof typeof rows;
export const controlTable: Readonly<Record<Task, TableRow>> = rows;
export const tasks = Object.keys(rows) as Task[];

/** Tasks that cut with a blade. */
const saws: readonly Task[] = ['stationary-saw', 'hand-held-saw', 'fiber-cement-saw', 'walk-behind-saw', 'ride-on-saw'];

/**
 * True for a blade that cuts without water, with a vacuum too. The one the table lists, fiber cement with a vacuum,
 * is dry indoors alone: outdoors the law has a row for it.
 * Example: hand-held-saw, extraction, enclosed -> true; fiber-cement-saw, extraction, outdoors -> false. Source: osha-1926-1153.
 */
export function isDryCut({
  task,
  control,
  place,
}: {
  readonly task: Task;
  readonly control: Control;
  readonly place: Place;
}): boolean {
  if (!saws.includes(task) || control === 'water') return false;
  return control === 'none' || place === 'enclosed' || task !== 'fiber-cement-saw';
}

/** Hours a shift over which the second figure counts: more than four, all tasks of the table together [s]. */
export const fourHours = 4 * 3600;

/**
 * Protection factor the table asks for.
 * @param hours of all tasks of the table in the shift [s]
 * @returns 0 for none asked, undefined where the table does not list the task so, or its control is not the one asked
 * Example: hand-held-saw, water, outdoors, 4 h -> 0; 4.01 h -> 10. Source: osha-1926-1153.
 */
export function factorAsked(task: Task, control: Control, place: Place, hours: number): number | undefined {
  const row = controlTable[task];
  if (control !== row.control) return undefined;
  return row[place]?.[isOver(hours, fourHours) ? 1 : 0];
}

/**
 * Least air of a dust collector for a grinder: 25 cfm for each inch of disc.
 * @param disc diameter [m] @returns [m3/s]
 * Example: 4 in -> 100 cfm. Source: osha-1926-1153-grinders.
 */
export function collectorFlow(disc: number): number {
  return 25 * (0.3048 ** 3 / 60) * (disc / 0.0254);
}
