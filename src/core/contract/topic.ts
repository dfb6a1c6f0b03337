/**
 * One calculator, as the rest of the almanac sees it.
 * A topic's `index.ts` exports these names; the registry collects them.
 */
import type { Field, Inputs, RawInputs } from './field.ts';
import type { Formula } from './formula.ts';
import type { Result } from './result.ts';
import type { Words } from './words.ts';
import type { Block } from './block.ts';
import type { Carry } from './carry.ts';
import type { Part } from './part.ts';
import type { PlateMap } from './plate.ts';

export interface Topic {
  readonly title: string;
  readonly fields: readonly Field[];
  /** Raw inputs of the worked example that stands on the page when scripts are off. */
  readonly example: RawInputs;
  readonly compute: (inputs: Inputs) => Result;
  readonly formulas: readonly Formula[];
  /** Every source id the topic's formulas, constants and values may name. */
  readonly sources: readonly string[];
  /** Every hazard id the topic may raise. */
  readonly hazards: readonly string[];
  readonly words: Words;
  /**
   * Which fields decide a verdict, by the key of the verdict value: every field whose figure can change its code, its
   * level or a figure in its sentence. A verdict is said only when all of these that are asked for and filled are the
   * reader's own. Held by a test that changes one field at a time.
   */
  readonly decides?: Readonly<Record<string, readonly string[]>>;
  /**
   * Which values can be given while other boxes are still empty, with the fields each hangs on. A value not named hangs
   * on all of them; verdicts go by `decides`. Held by a test that leaves out one needed figure at a time.
   */
  readonly parts?: readonly Part[];
  /** In place of `parts`: why no figure of this topic can be given before every needed box is filled. Held by a test. */
  readonly wholeOnly?: string;
  /** Figures that the next calculators of the same job ask for, in the order of the job. */
  readonly carries?: readonly Carry[];
  /**
   * Which fact of a machine fills which box: key of a field -> key in `core/machine`. A machine that knows the fact
   * fills the box; the rest is asked for. Held by a test: both exist, and both are of one kind, dimension and choice.
   */
  readonly plate?: PlateMap;
  /** The documented functions the topic is built of, each callable alone. */
  readonly blocks: Readonly<Record<string, Block>>;
}
