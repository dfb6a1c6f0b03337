/** What the step-through is given: one list of checks in the reader's language. */
import type { CheckWords } from '../../words/check.ts';
import type { Lang } from '../../words/lang.ts';

export interface ShownCheck {
  readonly id: string;
  readonly name: string;
  readonly say: string;
  readonly more: string;
  readonly running: boolean;
  readonly caution:
    | {
        readonly level: 'danger' | 'warning' | 'caution' | 'notice';
        readonly word: string;
        readonly title: string;
        readonly first: string;
        readonly say: string;
        readonly do: readonly string[];
      }
    | undefined;
}

export interface CutCheckProps {
  readonly lang: Lang;
  readonly words: CheckWords;
  /** File name of the list. */
  readonly list: string;
  readonly title: string;
  readonly checks: readonly ShownCheck[];
  readonly shop: { readonly name: string; readonly phone: string; readonly tel: string; readonly call: string };
}
