/**
 * Reading level of Spanish: Szigriszt-Pazos 206.835 - 62.3 Y/W - W/S, read on the INFLESZ bands (65 and more is fairly
 * easy); W words, S sentences, Y syllables.
 */
import { isOneSyllable, type Reading, type ReadingIndex } from '../say/reading.ts';

const least = 65;

export const ease = ({ words, sentences, syllables }: Reading): number =>
  206.835 - (62.3 * syllables) / words - words / sentences;

/** Two strong vowels, or a weak one with an accent beside a strong one, are two syllables; any other group is one. */
export function syllables(written: string): number {
  if (isOneSyllable(written)) return 1;
  const groups =
    written
      .toLowerCase()
      .replace(/qu(?=[eiéí])/g, 'q')
      .replace(/gu(?=[eiéí])/g, 'g')
      .replace(/y(?=[aeiouáéíóú])/g, 'j')
      .match(/[aeiouáéíóúüy]+/g) ?? [];
  const inGroup = (group: string): number => {
    const strong = group.match(/[aeoáéóíú]/g)?.length ?? 0;
    return Math.max(1, strong);
  };
  return Math.max(
    1,
    groups.reduce((sum, group) => sum + inGroup(group), 0),
  );
}

export const reading: ReadingIndex = {
  syllables,
  tooHard: (text) => {
    const easy = ease(text);
    if (easy >= least) return undefined;
    return { got: `reading ease ${easy.toFixed(1)} (Szigriszt-Pazos)`, allowed: `${least} or more` };
  },
};
