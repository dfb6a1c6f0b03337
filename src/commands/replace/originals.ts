/** Pages of the shop that stand in for one of the knowledge, and whether that one has changed since they were compared. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, stringify } from 'yaml';
import { replaced, replacedFile, type Replaced } from '../../schemas/replaced.ts';
import { listFiles } from '../../steps/support/files.ts';

/** What became of an original since somebody last compared the two. */
export type State = 'as it was' | 'changed' | 'gone' | 'never compared';

export interface Standing {
  /** "jobs/drive-belt-change.mdx" */
  readonly page: string;
  readonly state: State;
}

/** The mark of a text: it follows every change but that of line ends, which a stick or an archive may turn. */
export function markOf(text: string): string {
  return createHash('sha256').update(text.replaceAll('\r\n', '\n')).digest('hex').slice(0, 16);
}

/** @throws Error with a sentence when the list cannot be read */
export function readMarks(shop: string): Replaced {
  const path = join(shop, replacedFile);
  if (!existsSync(path)) return {};
  try {
    return replaced.parse(parse(readFileSync(path, 'utf8')) ?? {});
  } catch {
    throw new Error(
      `${path} cannot be read: wanted are lines like "jobs/belt.mdx: 0123456789abcdef". Mend it or take it away.`,
    );
  }
}

export function writeMarks(shop: string, marks: Replaced): void {
  const sorted = Object.fromEntries(Object.entries(marks).sort(([a], [b]) => (a < b ? -1 : 1)));
  const head = `# Written by "npm run replace" and "npm run update": the mark of each original when yours was last compared with it.\n`;
  writeFileSync(join(shop, replacedFile), head + (Object.keys(sorted).length > 0 ? stringify(sorted) : ''));
}

/** Every file of the shop that has the name of one in the knowledge, or had when it was compared. */
export async function standings(shop: string, knowledge: string, marks: Replaced): Promise<Standing[]> {
  const own = (await listFiles(shop)).filter((file) => /^[^/.][^/]*\/.+\.(?:mdx|yaml)$/.test(file));
  return own.flatMap((page): Standing[] => {
    const mark = marks[page];
    const original = join(knowledge, page);
    if (!existsSync(original)) return mark === undefined ? [] : [{ page, state: 'gone' }];
    if (mark === undefined) return [{ page, state: 'never compared' }];
    return [{ page, state: markOf(readFileSync(original, 'utf8')) === mark ? 'as it was' : 'changed' }];
  });
}
