/** What customers read: two cautions at most at the top of a guide, and words that are easy to read. */
import { kinds } from '../../schemas/kinds.ts';
import type { CheckList } from '../../schemas/checks.ts';
import type { TroubleFile } from '../../schemas/trouble.ts';
import type { ContentFile } from './content-file.ts';
import type { Problem } from './problem.ts';
import {
  englishEase,
  englishGrade,
  readingOf,
  spanishEase,
  targets,
  type Reading,
  type ReadingLanguage,
} from './reading-level.ts';

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

function hardToRead(file: ContentFile): Problem[] {
  return textsFor(file).flatMap(({ lang, text }) => {
    const reading = readingOf(text, lang);
    const wrong = reading.words < leastWords ? undefined : tooHard(reading, lang);
    return wrong ? [{ file: file.path, line: 1, field: lang === 'es' ? 'text in Spanish' : 'text', ...wrong }] : [];
  });
}

function tooHard(reading: Reading, lang: ReadingLanguage): Pick<Problem, 'got' | 'allowed'> | undefined {
  const long = `sentences of ${(reading.words / reading.sentences).toFixed(1)} words on average`;
  if (lang === 'es') {
    const ease = spanishEase(reading);
    if (ease >= targets.spanishEase) return undefined;
    return {
      got: `reading ease ${ease.toFixed(1)} (Szigriszt-Pazos), ${long}`,
      allowed: `${targets.spanishEase} or more: shorter sentences, shorter words`,
    };
  }
  const [grade, ease] = [englishGrade(reading), englishEase(reading)];
  if (grade <= targets.grade && ease >= targets.englishEase) return undefined;
  return {
    got: `grade ${grade.toFixed(1)} (Flesch-Kincaid), reading ease ${ease.toFixed(1)} (Flesch), ${long}`,
    allowed: `grade ${targets.grade} or less and ease ${targets.englishEase} or more: shorter sentences, shorter words`,
  };
}

/** The running text of a customer's page, by language, one sentence or list item a line. */
export function textsFor(file: ContentFile): { lang: ReadingLanguage; text: string }[] {
  if (file.folder === 'guides' && file.ending === 'mdx')
    return [{ lang: file.id.startsWith('es/') ? 'es' : 'en', text: proseOf(file.body) }];
  if (file.folder === 'trouble') {
    const read = kinds.trouble.schema.safeParse(file.yaml.data);
    return read.success ? both(read.data, troubleText) : [];
  }
  if (file.folder === 'checks') {
    const read = kinds.checks.schema.safeParse(file.yaml.data);
    return read.success ? both(read.data, checksText) : [];
  }
  return [];
}

function both<T>(data: T, textOf: (data: T, lang: ReadingLanguage) => string) {
  return (['en', 'es'] as const).map((lang) => ({ lang, text: textOf(data, lang) }));
}

function troubleText(data: TroubleFile, lang: ReadingLanguage): string {
  const { title, line, look, leave, bring } = lang === 'es' ? data.es : data;
  return [title, line, ...look, ...leave, ...bring].join('\n').replaceAll('**', '');
}

function checksText(data: CheckList, lang: ReadingLanguage): string {
  return data.groups
    .flatMap((g) => g.checks.map((c) => (lang === 'es' ? c.es : c)))
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
