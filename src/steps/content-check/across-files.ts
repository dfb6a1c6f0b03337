/** Rules that need more than one file: titles, names, twins, the shop's own file. */
import { wordsOf } from '../../browser/language/words-of.ts';
import { first as english, isLang, nameIn, nameOf, others, speechOf, splitName, type Lang } from '../../words/lang.ts';
import { kindOf, kinds } from '../../schemas/kinds.ts';
import { places, shopFile, shopFolder } from '../../schemas/places.ts';
import type { ContentFile } from './content-file.ts';
import type { Library } from './library.ts';
import { didYouMean, shown, type Problem } from './problem.ts';
import { otherLanguagesOf, saidInEach } from './said-in-each.ts';

export function acrossFiles(files: readonly ContentFile[], library: Library, today: string): Problem[] {
  return [
    ...shopMissing(files),
    ...sameTitles(files),
    ...sharedAliases(files),
    ...twinsMissing(files),
    ...saidInEach(files),
    ...files.flatMap((f) => reviewedLater(f, today)),
    ...files.flatMap((f) => [...badName(f, library), ...twinProblems(f, library)]),
  ];
}

function shopMissing(files: readonly ContentFile[]): Problem[] {
  if (files.some((f) => f.path === shopFile)) return [];
  return [
    {
      file: shopFile,
      line: 1,
      field: 'the file',
      got: 'nothing',
      allowed: 'this file with the name, address and rates of your shop; src/schemas/shop.ts lists its fields',
    },
  ];
}

function sameTitles(files: readonly ContentFile[]): Problem[] {
  const first = new Map<string, string>();
  const problems: Problem[] = [];
  for (const file of files) {
    const title = (file.yaml.data as { title?: unknown } | null | undefined)?.title;
    if (!kindOf(file.folder)?.page || file.draft || typeof title !== 'string') continue;
    const key = `${splitName(file.id).lang} ${title.trim().toLowerCase()}`;
    const other = first.get(key);
    if (other === undefined) first.set(key, file.path);
    else
      problems.push({
        file: file.path,
        line: file.yaml.lineOf(['title']),
        field: 'title',
        got: shown(title),
        allowed: `a title of its own; ${other} has this one`,
      });
  }
  return problems;
}

/** Another word for a page leads to that page: on two, it decides nothing, and the search lets chance decide. */
function sharedAliases(files: readonly ContentFile[]): Problem[] {
  const first = new Map<string, string>();
  const problems: Problem[] = [];
  const look = (file: ContentFile, lang: Lang, aliases: unknown, path: readonly string[]): void => {
    if (!Array.isArray(aliases)) return;
    aliases.forEach((alias: unknown, at) => {
      if (typeof alias !== 'string') return;
      const key = `${lang} ${wordsOf(alias, speechOf(lang))
        .map((word) => word.replace(/s$/, ''))
        .join(' ')}`;
      const other = first.get(key);
      if (other === undefined) first.set(key, file.path);
      else
        problems.push({
          file: file.path,
          line: file.yaml.lineOf([...path, 'aliases', at]),
          field: 'aliases',
          got: shown(alias),
          allowed:
            other === file.path
              ? 'each word once; the search finds plurals and accents by itself'
              : `a phrase of its own; ${other} has this one`,
        });
    });
  };
  for (const file of files) {
    if (!kindOf(file.folder)?.page) continue;
    const data = file.yaml.data as Readonly<Record<string, unknown>> | null | undefined;
    look(file, splitName(file.id).lang, data?.['aliases'], []);
    for (const lang of others)
      look(file, lang, (data?.[lang] as { aliases?: unknown } | null | undefined)?.aliases, [lang]);
  }
  return problems;
}

/** A customer who reads another language is not left with half the guides. */
function twinsMissing(files: readonly ContentFile[]): Problem[] {
  const guides = files.filter((f) => f.folder === 'guides' && f.place !== '' && f.ending === 'mdx' && !f.draft);
  const written = new Set(guides.map((f) => f.id));
  const drafts = new Set(files.filter((f) => f.folder === 'guides' && f.draft).map((f) => f.id));
  const english = guides.filter((f) => splitName(f.id).name === f.id);
  return otherLanguagesOf(files).flatMap((lang) =>
    english
      .filter((f) => !written.has(nameIn(lang, f.id)))
      .map((f) => ({
        file: f.path,
        line: 1,
        field: 'file name',
        got: drafts.has(nameIn(lang, f.id))
          ? `a guide whose ${nameOf(lang)} twin is still a draft`
          : `a guide without a ${nameOf(lang)} twin`,
        allowed: `guides/${nameIn(lang, f.id)}.mdx with the same in ${nameOf(lang)}, or languages without ${lang} in ${shopFile}`,
      })),
  );
}

function reviewedLater(file: ContentFile, today: string): Problem[] {
  const reviewed = (file.yaml.data as { reviewed?: unknown } | null | undefined)?.reviewed;
  if (typeof reviewed !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(reviewed) || reviewed <= today) return [];
  return [
    {
      file: file.path,
      line: file.yaml.lineOf(['reviewed']),
      field: 'reviewed',
      got: reviewed,
      allowed: `a day that has been; today is ${today}`,
    },
  ];
}

/** Folders whose articles have a twin of their own in other languages, in the folder of each. */
const twinned = (folder: string): boolean => folder === 'guides' || folder === 'pages';

function badName(file: ContentFile, library: Library): Problem[] {
  const at = (got: string, allowed: string): Problem[] => [
    { file: file.path, line: 1, field: 'file name', got, allowed },
  ];
  if (file.path === shopFile) return [];
  if (file.place === '') return at(file.path, `a file below ${places.join(' or ')}`);
  if (file.folder === '')
    return at(
      file.id,
      `no file directly in ${file.place}${file.place === shopFolder ? ' but shop.yaml' : ''}; articles and records go into their folder`,
    );
  const kind = kindOf(file.folder);
  if (!kind) return at(`the folder ${file.folder}`, `one of the folders ${Object.keys(kinds).join(', ')}`);
  if (kind.ending !== file.ending)
    return at(file.ending === '' ? 'no ending' : `.${file.ending}`, `a file ending in .${kind.ending}`);
  const { name } = twinned(file.folder) ? splitName(file.id) : { name: file.id };
  if (name === 'index') return at(name, `a name of its own: index is the list of ${file.folder}`);
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(name))
    return at(name, 'small letters, digits and single hyphens, like wet-cutting');
  if (file.folder === 'calculators' && !library.topics.has(name))
    return at(name, `the name of a calculator that exists.${didYouMean(name, library.topics)}`);
  return [];
}

function twinProblems(file: ContentFile, library: Library): Problem[] {
  if (!twinned(file.folder)) return [];
  const { lang: wanted, name } = splitName(file.id);
  const one = file.folder.replace(/s$/, '');
  const problems: Problem[] = [];
  if (wanted !== english && !library.ids[file.folder]?.has(name))
    problems.push({
      file: file.path,
      line: 1,
      field: 'file name',
      got: `a ${nameOf(wanted)} ${one} without an English one`,
      allowed: `${file.folder}/${name}.mdx beside it, or the file name of the ${one} it translates`,
    });
  const lang = (file.yaml.data as { lang?: unknown } | null | undefined)?.lang ?? english;
  if (lang !== wanted)
    problems.push({
      file: file.path,
      line: file.yaml.lineOf(['lang']),
      field: 'lang',
      got: shown(lang),
      allowed:
        wanted === english
          ? `lang: ${english}, or the file moved to ${file.folder}/${typeof lang === 'string' && isLang(lang) ? lang : others.join('/ or ')}/`
          : `lang: ${wanted}, since the file stands in ${file.folder}/${wanted}/`,
    });
  return problems;
}
