/** Words that say the same thing in another town, trade or country. */
import type { Speech } from '../../words/say/speech.ts';

/** Each word -> the one these pages use, without accents. */
export function kinOf({ kin }: Speech): ReadonlyMap<string, string> {
  return new Map(
    kin.flatMap((line) => {
      const [own = '', ...others] = plainLetters(line).split(' ');
      return [own, ...others].map((word) => [word, own] as const);
    }),
  );
}

const plainLetters = (text: string): string => text.normalize('NFD').replace(/[\u0300-\u036f]/g, '');
