/** What is known of a language's words comes in a script of its own: src/words/<language>/speech.ts as the build packs it. */
import type { Lang } from '../../words/lang.ts';
import { plain, type Speech } from '../../words/say/speech.ts';
import { readBundle } from './index-files.ts';

const learned = new Map<Lang, Speech>();
const asked = new Map<Lang, Promise<Speech>>();

/** Called by that script. */
export function learn(lang: Lang, speech: Speech): void {
  learned.set(lang, speech);
}

/** A language that has said nothing of its words is searched by them as they stand. */
export function speechIn(lang: Lang): Promise<Speech> {
  const known = asked.get(lang) ?? readBundle(`speech.${lang}`).then(() => learned.get(lang) ?? plain);
  asked.set(lang, known);
  return known;
}
