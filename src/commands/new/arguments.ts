/** What is typed after "npm run new --", read into one page to make; or a sentence that says what is wrong with it. */
import { machineKinds, type MachineKind } from '../../schemas/machine-kinds.ts';
import { nameOf, others, type Other } from '../../words/lang.ts';
import { didYouMean, listed } from '../../steps/content-check/problem.ts';
import { folderOf, type NewKind, type Reader } from './skeleton.ts';

export interface Wanted {
  readonly kind: NewKind;
  readonly title: string;
  readonly kinds: readonly MachineKind[];
  readonly reader: Reader;
  /** Titles of a guide's twins, by language. */
  readonly twins: Readonly<Partial<Record<Other, string>>>;
}

const usage = 'npm run new -- job "Change the recoil cord" --for cut-off-saw,floor-saw --reader mechanic';
const names = Object.keys(folderOf);
const twinOption = <L extends Other>(lang: L): `--${L}` => `--${lang}`;
/** A language's code, for the title of the twin in it. */
export const twinOptions = others.map((lang) => ({ lang, option: twinOption(lang), language: nameOf(lang) }));
const options = ['--for', '--reader', ...twinOptions.map(({ option }) => option)] as const;
export type Option = (typeof options)[number];

/** What was typed, taken apart: the words in their order, and what each option was given. */
export interface Typed {
  readonly words: readonly string[];
  readonly given: Readonly<Partial<Record<Option, string>>>;
}

export function takeApart(args: readonly string[]): Typed | string {
  const words: string[] = [];
  const given: Partial<Record<Option, string>> = {};
  for (let at = 0; at < args.length; at += 1) {
    const arg = args[at] ?? '';
    const option = options.find((o) => o === arg);
    if (option) {
      const text = args[(at += 1)];
      if (text === undefined || text.trim() === '') return `${option} stands without a word after it.`;
      given[option] = text.trim();
    } else if (arg.startsWith('--')) return `There is no option "${arg}"; there are ${options.join(', ')}.`;
    else words.push(arg);
  }
  return { words, given };
}

export function readWanted(args: readonly string[]): Wanted | string {
  const typed = takeApart(args);
  return typeof typed === 'string' ? typed : wantedOf(typed);
}

export function wantedOf({ words, given }: Typed): Wanted | string {
  const [kind = '', title = '', ...more] = words;
  if (kind === '') return `What shall it be? One of ${names.join(', ')}, then its title: ${usage}`;
  if (!isKind(kind)) return `"${kind}" cannot be made. There are ${listed(names)}.${didYouMean(kind, names)}`;
  if (title.trim() === '') return `It needs a title: ${usage}`;
  if (more.length > 0) return `One title, please, in quotes: "${[title, ...more].join(' ')}"`;
  const longest = kind === 'machine' ? Infinity : 70;
  const asked = twinOptions.filter(({ option }) => given[option] !== undefined);
  for (const text of [title, ...asked.map(({ option }) => given[option] ?? '')])
    if (text.trim().length < 3 || text.length > longest) return `"${text}": a title has 3 to 70 letters.`;
  for (const { option, language } of kind === 'guide' ? [] : asked)
    return `Only a guide has a ${language} twin of its own; ${option} does not go with ${kind}.`;
  const kinds = (given['--for'] ?? '')
    .split(',')
    .map((k) => k.trim())
    .filter((k) => k !== '');
  const strange = kinds.find((k) => !isMachineKind(k));
  if (strange !== undefined)
    return `"${strange}" is no kind of machine (--for): one of ${machineKinds.join(', ')}.${didYouMean(strange, machineKinds)}`;
  if (kind === 'machine' && kinds.length > 1) return `A machine is of one kind, not of ${kinds.join(' and ')}.`;
  const reader = given['--reader'] ?? (kind === 'guide' ? 'customer' : 'mechanic');
  if (reader !== 'customer' && reader !== 'mechanic')
    return `"${reader}" is no reader (--reader): mechanic or customer.`;
  return {
    kind,
    title: title.trim(),
    kinds: kinds.filter(isMachineKind),
    reader,
    twins: Object.fromEntries(asked.map(({ lang, option }) => [lang, given[option]])),
  };
}

const isKind = (text: string): text is NewKind => Object.hasOwn(folderOf, text);
const isMachineKind = (text: string): text is MachineKind => (machineKinds as readonly string[]).includes(text);

/** "Change the belt: 3 steps" -> "change-the-belt-3-steps"; accents fall off. */
export function fileNameOf(title: string): string {
  return title
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
}
