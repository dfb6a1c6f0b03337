/** A paper's words in the language chosen for it. English comes with the script, any other is fetched when chosen. */
import { useRef, useState } from 'preact/hooks';
import type { Lang } from '../../words/lang.ts';

export interface Chosen<Words> {
  readonly lang: Lang;
  readonly words: Words;
  /** What was said before stays until the words have come; a choice made meanwhile counts. */
  readonly choose: (lang: Lang) => void;
}

export function useWords<Words>(english: Words, fetchIn: (lang: Lang) => Promise<Words>): Chosen<Words> {
  const [said, setSaid] = useState<{ readonly lang: Lang; readonly words: Words }>({ lang: 'en', words: english });
  const asked = useRef<Lang>('en');
  const choose = (lang: Lang) => {
    asked.current = lang;
    const fetched = lang === 'en' ? Promise.resolve(english) : fetchIn(lang);
    fetched.then(
      (words) => asked.current === lang && setSaid({ lang, words }),
      // A part of the site that is not at hand: the paper stays as it was, and the box says so.
      () => setSaid((now) => ({ ...now })),
    );
  };
  return { ...said, choose };
}
