/** What "npm run new" asks at a terminal: only what was not typed, each answer checked before the next question. */
import { machineKinds } from '../../schemas/machine-kinds.ts';
import { twinOptions, wantedOf, type Typed, type Wanted } from './arguments.ts';
import { folderOf } from './skeleton.ts';

/** Puts one question to whoever sits there; the usual answer stands in for an empty one. */
export type Ask = (question: string, usual: string) => Promise<string>;

/** @param tell says what is wrong with an answer, before the question is put again */
export async function askedFor(typed: Typed, ask: Ask, tell: (sentence: string) => void): Promise<Wanted> {
  const words = [...typed.words];
  const given = { ...typed.given };
  /** Puts a question until its answer makes the page possible, as far as it is known. */
  const until = async (question: string, usual: string, put: (answer: string) => void): Promise<void> => {
    for (;;) {
      put((await ask(question, usual)).trim() || usual);
      const wrong = wantedOf({ words: words[1] === undefined ? [words[0] ?? '', 'any title'] : words, given });
      if (typeof wrong !== 'string') return;
      tell(wrong);
    }
  };
  if (words[0] === undefined || !Object.hasOwn(folderOf, words[0])) {
    tell('job: work at the bench. guide: care, for customers. explainer: why it works. table: figures to look up.');
    await until(`What shall it be? ${Object.keys(folderOf).join(', ')}`, 'job', (answer) => (words[0] = answer));
  }
  if (words[1] === undefined)
    await until(words[0] === 'machine' ? 'Name of the machine' : 'Title', '', (answer) => (words[1] = answer));
  if (given['--for'] === undefined)
    await until(
      words[0] === 'machine'
        ? `Its kind: ${machineKinds.join(', ')}`
        : `For which kinds of machine? ${machineKinds.join(', ')}`,
      words[0] === 'machine' ? 'other' : 'all',
      (answer) => (given['--for'] = answer === 'all' ? machineKinds.join(',') : answer),
    );
  if (given['--reader'] === undefined && words[0] !== 'machine')
    await until('Who reads it? mechanic, customer', words[0] === 'guide' ? 'customer' : 'mechanic', (answer) => {
      given['--reader'] = answer;
    });
  for (const { option, language } of words[0] === 'guide' ? twinOptions : [])
    if (given[option] === undefined)
      await until(`Its title in ${language} (none: leave empty)`, '', (answer) => {
        if (answer === '') delete given[option];
        else given[option] = answer;
      });
  const wanted = wantedOf({ words, given });
  if (typeof wanted === 'string') throw new Error(wanted);
  return wanted;
}
