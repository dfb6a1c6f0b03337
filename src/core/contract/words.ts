/**
 * Words for the codes a topic may return. Each topic keeps its own in `words.ts`;
 * what all topics share stands in `messages.ts`.
 */
import type { UnitPair, UnitSystem } from '../quantity/index.ts';

export interface Say {
  /** Formats an SI number for the reader's unit system: say.quantity(x, ['mm', 'in']); in so many figures where told. */
  quantity: (si: number, units: UnitPair, figures?: number) => string;
  money: (amount: number) => string;
  system: UnitSystem;
}

export type Sentence = (data: Readonly<Record<string, number | string>>, say: Say) => string;

export interface Words {
  /** Verdict code -> sentence. */
  readonly verdicts: Readonly<Record<string, Sentence>>;
  /** Problem codes of this topic only -> sentence. Shared codes are in messages.ts. */
  readonly problems: Readonly<Record<string, Sentence>>;
  /**
   * Units of figures in a verdict's data that neither its sentence says nor a value of the answer repeats, by their
   * key in the data; for whoever reads the data and not the sentence. Left out, the figure is a pure number.
   */
  readonly figures?: Readonly<Record<string, UnitPair | 'money'>>;
}
