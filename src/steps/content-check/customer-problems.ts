/** What customers read: two cautions at most at the top of a guide, and words that are easy to read. */
import { kinds } from '../../schemas/kinds.ts';
import type { CheckList } from '../../schemas/checks.ts';
import type { TroubleFile } from '../../schemas/trouble.ts';
import { saidIn } from '../../schemas/languages.ts';
import { first, languages, nameOf, splitName, wordsIn, type Lang } from '../../words/lang.ts';
import { readingOf } from '../../words/say/reading.ts';
import type { ContentFile } from './content-file.ts';
import type { Problem } from './problem.ts';

/** Too short a text says nothing about its words. */
const leastWords = 60;

export function customerProblems(file: ContentFile): Problem[] {
  return [...tooManyAtTop(file), ...hardToRead(file)];
}

function tooManyAtTop(file: ContentFile): Problem[] {
  const hazards = (file.yaml.data as { hazards?: unknown } | null | undefined)?.hazards;
  if (file.folder !== 'guides' || !Array.isArray(hazards)) return [];
  const top = hazards.filter((id) => typeof id === 'string' && !file.body.includes(`<Hazard id="${id}"`));
  if (top.length <= 2) return [];
  return [
    {
      file: file.path,
      line: file.yaml.lineOf(['hazards']),
      field: 'hazards',
      got: `${top.length} cautions at the top`,
      allowed: 'two at most; put the others before the step they protect, as <Hazard id="..." />',
    },
  ];
}

/** A language without an index of its own is not measured; `npm run content` says so. */
function hardToRead(file: ContentFile): Problem[] {
  return textsFor(file).flatMap(({ lang, text }) => {
    const index = wordsIn(lang).reading;
    if (!index) return [];
    const reading = readingOf(text, index);
    const wrong = reading.words < leastWords ? undefined : index.tooHard(reading);
    if (!wrong) return [];
    const long = `sentences of ${(reading.words / reading.sentences).toFixed(1)} words on average`;
    return [
      {
        file: file.path,
        line: 1,
        field: lang === first ? 'text' : `text in ${nameOf(lang)}`,
        got: `${wrong.got}, ${long}`,
        allowed: `${wrong.allowed}: shorter sentences, shorter words`,
      },
    ];
  });
}

/** The running text of a customer's page, by language, one sentence or list item a line. */
export function textsFor(file: ContentFile): { lang: Lang; text: string }[] {
  if (file.folder === 'guides' && file.ending === 'mdx')
    return [{ lang: splitName(file.id).lang, text: proseOf(file.body) }];
  if (file.folder === 'trouble') {
    const read = kinds.trouble.schema.safeParse(file.yaml.data);
    return read.success ? inEach(read.data, troubleText) : [];
  }
  if (file.folder === 'checks') {
    const read = kinds.checks.schema.safeParse(file.yaml.data);
    return read.success ? inEach(read.data, checksText) : [];
  }
  return [];
}

/** In the languages the file has. */
function inEach<T extends TroubleFile | CheckList>(data: T, textOf: (data: T, lang: Lang) => string) {
  return languages
    .filter((lang) => lang === first || data[lang] !== undefined)
    .map((lang) => ({ lang, text: textOf(data, lang) }));
}

function troubleText(data: TroubleFile, lang: Lang): string {
  const { title, line, look, leave, bring } = saidIn(data, lang);
  return [title, line, ...look, ...leave, ...bring].join('\n').replaceAll('**', '');
}

function checksText(data: CheckList, lang: Lang): string {
  return data.groups
    .flatMap((g) => g.checks.map((c) => saidIn(c, lang)))
    .flatMap((c) => [c.name, c.say, c.more])
    .join('\n');
}

/** Without headings, tables and components; a link keeps its words. */
function proseOf(body: string): string {
  return body
    .split('\n')
    .filter((line) => !/^\s*(?:\||#)/.test(line))
    .map((line) =>
      line
        .replace(/<[^>]*>/g, '')
        .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
        .replace(/^\s*(?:[-*]|\d+\.)\s+/, '')
        .replace(/&#8209;/g, '-')
        .replace(/[*_`\\]/g, ''),
    )
    .join('\n');
}
