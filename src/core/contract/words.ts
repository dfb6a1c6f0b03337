/**
 * Words for the codes a topic may return. Each topic keeps its own in `words.ts`;
 * what all topics share stands in `messages.ts`.
 */
import type { UnitSystem } from '../quantity/format.ts';

export interface Say {
  /** Formats an SI number for the reader's unit system: say.quantity(x, ['mm', 'in']). */
  quantity: (
    si: number,
    units: readonly [import('../quantity/units.ts').UnitKey, import('../quantity/units.ts').UnitKey],
  ) => string;
  money: (amount: number) => string;
  system: UnitSystem;
}

export type Sentence = (data: Readonly<Record<string, number | string>>, say: Say) => string;

export interface Words {
  /** Verdict code -> sentence. */
  readonly verdicts: Readonly<Record<string, Sentence>>;
  /** Problem codes of this topic only -> sentence. Shared codes are in messages.ts. */
  readonly problems: Readonly<Record<string, Sentence>>;
}
