/** What an answer says in the record. */
import type { Answer, Draft } from '../../browser/device/index.ts';
import type { CheckWords } from '../../words/check.ts';
import type { Lang } from '../../words/lang.ts';

export function saidOf(given: Answer | undefined, words: CheckWords): string {
  if (given === undefined) return words.notSeen;
  if (given.said === 'yes') return words.saidYes;
  return given.said === 'no' ? words.saidNo : `${words.saidNotHere}: ${given.why}`;
}

/** Every check was looked at and none failed. */
export function isClear(one: Draft, checks: readonly { readonly id: string }[]): boolean {
  return checks.every((c) => one.answers[c.id] !== undefined && one.answers[c.id]?.said !== 'no');
}

export function dayAndTime(at: number, lang: Lang): string {
  return new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeStyle: 'short' }).format(at);
}
