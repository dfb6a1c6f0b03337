/**
 * The engine in a folder of its own with a third language in it, as somebody would add it: one folder of words, one line
 * in the list of languages, and content written in it. The language is English with other vowels, so that a word that is
 * not its own shows wherever it stands.
 */
import { cpSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, stringify } from 'yaml';

export const trial = 'pt';

/** Letters, tags, addresses and {gaps} stay as they are, every a and e is another vowel; as long as it was. */
const keep = String.raw`<[^>]*>|\]\([^)]*\)|\{[^}]*\}|&#?\w+;`;
const vowels: Readonly<Record<string, string>> = { a: 'ã', e: 'ê', A: 'Ã', E: 'Ê' };
export const inTrial = (text: string): string =>
  text.replace(new RegExp(`${keep}|[aeAE]`, 'g'), (found) => vowels[found] ?? found);

/** The same as a script, for the words of the copy. Names in addresses and names of topics are no words. */
const marked = `import type { Language } from '../lang.ts';
const vowels: Readonly<Record<string, string>> = ${JSON.stringify(vowels)};
const names = new Set(['id', 'topic']);
const say = (text: string): string =>
  text
    .replace(/${keep}|[aeAE]/g, (found) => vowels[found] ?? found)
    .replace(/href="(\\/(?:a-z\\/|search\\/|trouble\\/|shop\\/)?)"/g, 'href="/${trial}$1"');
export function marked<T>(of: T, name = ''): T {
  if (typeof of === 'string') return (names.has(name) ? of : say(of)) as T;
  if (typeof of === 'function') return ((...given: unknown[]) => say(String((of as unknown as (...a: unknown[]) => unknown)(...given)))) as T;
  if (Array.isArray(of)) return of.map((one: unknown) => marked(one)) as T;
  if (typeof of === 'object' && of !== null)
    return Object.fromEntries(Object.entries(of).map(([key, value]) => [key, marked(value as unknown, key)])) as T;
  return of;
}
`;

/** Parts of the English folder that another language must bring: as the type check would ask for. */
function partsOf(engine: string): readonly { names: readonly string[]; file: string }[] {
  const index = readFileSync(join(engine, 'src/words/en/index.ts'), 'utf8');
  return [...index.matchAll(/export \{ ([^}]*) \} from '\.\/(.*)';/g)].map(([, names = '', file = '']) => ({
    names: names.split(', '),
    file,
  }));
}

/** @param without parts that the language leaves out, as it may */
export function addLanguage(engine: string, without: readonly string[]): void {
  const folder = join(engine, 'src/words', trial);
  mkdirSync(folder);
  writeFileSync(join(folder, 'marked.ts'), marked);
  const parts = partsOf(engine).filter(({ names }) => !names.some((name) => without.includes(name)));
  for (const { names, file } of parts)
    writeFileSync(
      join(folder, file),
      // Without accents, as the search compares words, the language is English.
      file === 'speech.ts'
        ? `export { speech } from '../en/speech.ts';\n`
        : `import { ${names.map((name) => `${name} as ${name}En`).join(', ')} } from '../en/${file}';
import { marked } from './marked.ts';
${names.map((name) => `export const ${name}: typeof ${name}En = marked(${name}En);`).join('\n')}
`,
    );
  const index = parts.map(({ names, file }) => `export { ${names.join(', ')} } from './${file}';\n`).join('');
  writeFileSync(join(folder, 'index.ts'), index);
  const list = join(engine, 'src/words/languages.ts');
  writeFileSync(list, `${readFileSync(list, 'utf8')}export * as ${trial} from './${trial}/index.ts';\n`);
}

type Data = Readonly<Record<string, unknown>>;

/** A page that customers read, in the language; a heading's address follows its words. */
const see = (address: string): string => {
  const [path = '', anchor] = address.split('#');
  const inside = /^\/(?:guides|trouble|check|glossary|hazards|shop)\//.test(path) ? `/${trial}${path}` : path;
  return inside + (anchor === undefined ? '' : `#${path.startsWith('/guides/') ? inTrial(anchor) : anchor}`);
};

function said(value: unknown, key = ''): unknown {
  if (typeof value === 'string') return key === 'see' ? see(value) : inTrial(value);
  return Array.isArray(value) ? value.map((one) => said(one)) : value;
}

/** Gives every record that has Spanish words the same fields in the trial language. */
function withTrial(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withTrial);
  if (typeof value !== 'object' || value === null) return value;
  const record = Object.fromEntries(Object.entries(value).map(([key, inside]) => [key, withTrial(inside)]));
  const { es } = record as { es?: unknown };
  if (es === undefined) return record;
  if (typeof es === 'string') return { ...record, [trial]: said((record as { name?: unknown }).name) };
  const own = Object.keys(es as Data).map((key) => [key, said((record as Data)[key], key)] as const);
  return { ...record, [trial]: Object.fromEntries(own.filter(([, words]) => words !== undefined)) };
}

export function writeContent(engine: string): void {
  const knowledge = join(engine, 'content/knowledge');
  for (const folder of ['hazards', 'glossary', 'trouble', 'checks', 'parts', 'sources'])
    for (const name of readdirSync(join(knowledge, folder)).filter((file) => file.endsWith('.yaml'))) {
      const file = join(knowledge, folder, name);
      writeFileSync(file, stringify(withTrial(parse(readFileSync(file, 'utf8')))));
    }
  const guides = join(knowledge, 'guides');
  mkdirSync(join(guides, trial));
  for (const name of readdirSync(guides).filter((file) => file.endsWith('.mdx'))) {
    const [, head = '', body = ''] =
      /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(join(guides, name), 'utf8')) ?? [];
    const front = parse(head) as Data;
    const words = Object.fromEntries(
      ['title', 'summary', 'line', 'time', 'tools', 'aliases'].flatMap((key) =>
        front[key] === undefined ? [] : [[key, said(front[key])]],
      ),
    );
    const text = inTrial(body).replace(/\]\((\/[^)]*)\)/g, (_, link: string) => `](${see(link)})`);
    writeFileSync(join(guides, trial, name), `---\n${stringify({ ...front, ...words, lang: trial })}---\n${text}`);
  }
}

/** Copies what an engine is made of; packages are reached through links, their caches are its own. */
export function copyEngine(from: string, to: string): void {
  for (const name of ['src', 'content', 'public', 'astro.config.mjs', 'package.json', 'tsconfig.json'])
    cpSync(join(from, name), join(to, name), { recursive: true, filter: (path) => !path.endsWith('chosen-shop') });
  const packages = join(from, 'node_modules');
  mkdirSync(join(to, 'node_modules'));
  for (const name of readdirSync(packages).filter((one) => !one.startsWith('.')))
    symlinkSync(join(packages, name), join(to, 'node_modules', name), 'junction');
}

/** Sets the shop's languages and address, and leaves out what only the bench reads. */
export function setShop(engine: string, leaveOut: readonly string[]): void {
  const file = join(engine, 'content/shop/shop.yaml');
  const shop = parse(readFileSync(file, 'utf8')) as { es: Data; languages: readonly string[] } & Data;
  const own = Object.fromEntries(Object.keys(shop.es).map((key) => [key, deep(shop[key])]));
  writeFileSync(
    file,
    stringify({ ...shop, languages: [...shop.languages, trial], [trial]: own, site: 'https://example.org/', leaveOut }),
  );
}

function deep(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(deep);
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, inside]) => [key, deep(inside)]));
  return typeof value === 'string' ? inTrial(value) : value;
}
