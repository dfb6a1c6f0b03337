/** What must be so before a site goes out to readers. The content check asks whether it is right; this, whether it is ready. */
import { kindOf } from '../../schemas/kinds.ts';
import type { ContentFile } from '../../steps/content-check/content-file.ts';
import { placeholders } from '../new/skeleton.ts';
import { shopFolder } from '../../schemas/places.ts';
import { shown, type Problem } from '../../steps/content-check/problem.ts';

/** Months after which somebody must have gone through a page again. */
export const mostMonths = 24;

/** A picture a reader waits for on a phone, and that every device keeps. */
export const mostPictureBytes = 300_000;

/** A file of the built site. */
export interface BuiltFile {
  /** "jobs/drive-belt-change.html" */
  readonly name: string;
  readonly bytes: Uint8Array;
}

export function drafts(files: readonly ContentFile[]): Problem[] {
  return files
    .filter((file) => file.draft)
    .map((file) => ({
      file: file.path,
      line: file.yaml.lineOf(['draft']),
      field: 'draft',
      got: 'true',
      allowed: 'no draft left: finish it and take the line away, or keep the file elsewhere until it is done',
    }));
}

/** What "npm run new" put there to say what belongs there, and nobody has written over. */
export function unwritten(files: readonly ContentFile[]): Problem[] {
  return files
    .filter((file) => !file.draft && file.place === shopFolder)
    .flatMap((file) => {
      const summary = fieldOf(file, 'summary');
      const tools = fieldOf(file, 'tools');
      const fields = [
        ...(typeof summary === 'string' ? [{ text: summary, line: file.yaml.lineOf(['summary']) }] : []),
        ...(Array.isArray(tools) ? tools : []).map((text, at) => ({
          text: String(text),
          line: file.yaml.lineOf(['tools', at]),
        })),
      ];
      const lines = file.body.split('\n').map((text, at) => ({ text: text.trim(), line: at + 1 }));
      return [...fields, ...lines]
        .filter(({ text }) => placeholders.has(text))
        .map(({ text, line }) => ({
          file: file.path,
          line,
          field: 'text',
          got: shown(text),
          allowed: 'what belongs there: this is how "npm run new" began the page. Write it, or take the line away',
        }));
    });
}

/** @param today YYYY-MM-DD */
export function pastReview(files: readonly ContentFile[], today: string): Problem[] {
  const oldest = monthsBefore(today, mostMonths);
  return files.flatMap((file) => {
    const reviewed = fieldOf(file, 'reviewed');
    if (file.draft || typeof reviewed !== 'string' || reviewed >= oldest) return [];
    return [
      {
        file: file.path,
        line: file.yaml.lineOf(['reviewed']),
        field: 'reviewed',
        got: reviewed,
        allowed: `${oldest} or later: no more than ${mostMonths} months ago. Go through the page, then write the day`,
      },
    ];
  });
}

/**
 * A page that rests on a source nobody has seen says so beside it.
 * @param pageOf the built page of an article, or nothing when there is none
 */
export function unmarked(files: readonly ContentFile[], pageOf: (file: ContentFile) => string | undefined): Problem[] {
  const unseen = new Set(
    files.filter((f) => f.folder === 'sources' && fieldOf(f, 'how') === 'memory').map((f) => f.id),
  );
  return files
    .filter((file) => file.ending === 'mdx' && !file.draft && kindOf(file.folder)?.page)
    .flatMap((file) => {
      const sources = fieldOf(file, 'sources');
      const page = pageOf(file);
      if (!Array.isArray(sources) || page === undefined) return [];
      return sources
        .filter((id): id is string => typeof id === 'string' && unseen.has(id) && !isMarked(page, id))
        .map((id) => ({
          file: file.path,
          line: file.yaml.lineOf(['sources']),
          field: 'sources',
          got: `${shown(id)}, which nobody has seen, without the mark on the built page`,
          allowed: 'the mark "unchecked" in the list of sources at the end of the page, or a source somebody has seen',
        }));
    });
}

/** The row of that source in the page's own list bears the mark. */
function isMarked(page: string, id: string): boolean {
  const start = page.indexOf(`id="source-${id}"`);
  if (start < 0) return false;
  const row = page.slice(start, page.indexOf('</li>', start));
  return /class="[^"]*\bunchecked\b/.test(row);
}

const endings = /\.(?:jpe?g|png|webp|gif|avif|svg)$/i;

export const isPicture = (name: string): boolean => endings.test(name);

export function largePictures(built: readonly BuiltFile[]): Problem[] {
  return built
    .filter((file) => isPicture(file.name) && file.bytes.length > mostPictureBytes)
    .map((file) => ({
      file: `dist/${file.name}`,
      line: 1,
      field: 'the picture',
      got: `${Math.ceil(file.bytes.length / 1000)} kB`,
      allowed: `at most ${mostPictureBytes / 1000} kB: put it beside its article, where the build shrinks it, or save it smaller`,
    }));
}

/** Marks of Exif in JPEG, WebP and PNG: what the camera wrote, often with the place. */
const exif = ['Exif\0\0', 'EXIF', 'eXIf'].map((mark) => Buffer.from(mark, 'latin1'));
/** It stands before the picture's own data, or, in WebP, after it. */
const told = 65_536;

export function tellingPictures(built: readonly BuiltFile[]): Problem[] {
  return built
    .filter(({ name }) => isPicture(name))
    .filter(({ bytes }) => {
      const ends = [bytes.subarray(0, told), bytes.subarray(-told)].map((part) => Buffer.from(part));
      return ends.some((end) => exif.some((mark) => end.includes(mark)));
    })
    .map(({ name }) => ({
      file: `dist/${name}`,
      line: 1,
      field: 'the picture',
      got: 'what the camera wrote into it (Exif), often with place and day',
      allowed: 'nothing of it: put it beside its article, where the build leaves it out, or take it out of the file',
    }));
}

function fieldOf(file: ContentFile, field: string): unknown {
  return (file.yaml.data as Record<string, unknown> | null | undefined)?.[field];
}

/** The same day of an earlier month, or that month's last. */
function monthsBefore(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const last = new Date(Date.UTC(year, month - months, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 1 - months, Math.min(date, last))).toISOString().slice(0, 10);
}
