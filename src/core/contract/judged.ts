/**
 * Whether a verdict may be said. A verdict tells somebody to go on, to stop, to buy or to throw away; it is said only
 * when every figure that decides it is the reader's own, from a machine the reader chose, or usual for a stated reason.
 */
import { filledIn, isPencil, type Entries } from './entry.ts';
import type { Field } from './field.ts';
import type { Answer, VerdictValue } from './result.ts';

/** By the key of a verdict value, the fields that can change its code, its level or a figure in its sentence. */
export type Decides = Readonly<Record<string, readonly string[]>>;

/**
 * The boxes that keep a verdict from being said: asked for, filled, and neither own, nor plate, nor usual, nor carried
 * from such. @param verdict key of the verdict value @param asked the fields asked for now @param entries the boxes
 * @param decides the topic's list; a verdict missing there is taken to hang on every box asked for
 * @returns field keys in the order of the form; none when the verdict may be said
 */
export function heldBackBy(
  verdict: string,
  asked: readonly Field[],
  entries: Entries,
  decides: Decides | undefined,
): readonly string[] {
  const deciding = decides?.[verdict];
  return asked
    .filter((f) => (deciding ? deciding.includes(f.key) : true))
    .filter((f) => filledIn(entries[f.key]).some(isPencil))
    .map((f) => f.key);
}

export interface Judged {
  /** Verdict key -> boxes that hold it back. A verdict that may be said is not in it. */
  readonly heldBack: Readonly<Record<string, readonly string[]>>;
  /**
   * All of those boxes, in the order of the form, and those of verdicts that were not raised: that nothing is wrong is
   * a finding too, and must not rest on somebody else's figures.
   */
  readonly stillToEnter: readonly string[];
}

/** Judges every verdict of an answer; see `heldBackBy`. Cautions are no verdicts and are never held back. */
export function judged(
  answer: Answer,
  asked: readonly Field[],
  entries: Entries,
  decides: Decides | undefined,
): Judged {
  const heldBack: Record<string, readonly string[]> = {};
  for (const v of answer.values) {
    if (v.kind !== 'verdict') continue;
    const by = heldBackBy(v.key, asked, entries, decides);
    if (by.length > 0) heldBack[v.key] = by;
  }
  const raised = new Set(answer.values.map((v) => v.key));
  const silent = Object.keys(decides ?? {}).filter((key) => !raised.has(key));
  const waiting = new Set([
    ...Object.values(heldBack).flat(),
    ...silent.flatMap((key) => heldBackBy(key, asked, entries, decides)),
  ]);
  return { heldBack, stillToEnter: asked.map((f) => f.key).filter((key) => waiting.has(key)) };
}

/** A verdict as it goes into a record: with its level only where it may be said. */
export function mayBeSaid(verdict: VerdictValue, { heldBack }: Judged): boolean {
  return heldBack[verdict.key] === undefined;
}
