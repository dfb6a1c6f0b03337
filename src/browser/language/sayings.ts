/** What takes several words to say and is one thing: "fire up" is "start". */
import type { Speech } from '../../words/say/speech.ts';

/** A question, folded (./words-of.ts), in the words of these pages. */
export function plainly(text: string, { sayings, machine }: Speech): string {
  const said = sayings.reduce((now, [saying, meant]) => now.replace(saying, meant), text);
  const rest = machine ? said.replace(machine, ' ') : said;
  // Asked for by name alone, the machine is what is asked for.
  return /[^\W\d_]{4}/.test(rest) ? rest : said;
}
