/** One thing wrong in content/, said so that the person who wrote it can put it right. */
import { editDistance } from '../../browser/language/distance.ts';
import { pathToSay } from '../../schemas/places.ts';

export interface Problem {
  /** Path from the project folder: "content/jobs/drive-belt-change.mdx". */
  readonly file: string;
  readonly line: number;
  /** Field of the front matter, component or "text". */
  readonly field: string;
  readonly got: string;
  readonly allowed: string;
}

export function report(problems: readonly Problem[]): string {
  const ordered = [...problems].sort((a, b) => a.file.localeCompare(b.file) || a.line - b.line);
  const lines = ordered.map((p) =>
    pathToSay(`${p.file}:${p.line}  ${p.field}\n    found:  ${p.got}\n    wanted: ${p.allowed}`),
  );
  const count = `${problems.length} problem${problems.length === 1 ? '' : 's'} in content/.`;
  return `${lines.join('\n')}\n\n${count}`;
}

/** A value as it reads in a message; long ones are cut. */
export function shown(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > 90 ? `${text.slice(0, 87)}...` : text;
}

/** "a, b or c" */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} or ${names.at(-1) ?? ''}`;
}

/** "... Did you mean x?" when a known name is close to what was written. */
export function didYouMean(written: string, known: Iterable<string>): string {
  let best = '';
  let least = Math.max(2, Math.floor(written.length / 4)) + 1;
  for (const name of known) {
    const distance = editDistance(written.toLowerCase(), name.toLowerCase(), least);
    if (distance < least) [best, least] = [name, distance];
  }
  return best === '' ? '' : ` Did you mean ${best}?`;
}
