/** Ids in front matter and records: every hazard, source and page named must exist. */
import type { ContentFile } from './content-file.ts';
import { hasAddress, type Library } from './library.ts';
import { didYouMean, shown, type Problem } from './problem.ts';
import type { Path } from './yaml-text.ts';

/** Field name -> folder its ids live in, wherever in a file the field stands. */
const idFields: Readonly<Record<string, string>> = {
  hazard: 'hazards',
  hazards: 'hazards',
  source: 'sources',
  sources: 'sources',
  likelihoodsFrom: 'sources',
};

export function referenceProblems(file: ContentFile, library: Library): Problem[] {
  const problems: Problem[] = [];
  walk(file.yaml.data, [], (value, path) => {
    const wanted = checkOne(value, nameOf(path), library);
    if (wanted !== undefined)
      problems.push({
        file: file.path,
        line: file.yaml.lineOf(path),
        field: path.join('.'),
        got: shown(value),
        allowed: wanted,
      });
  });
  return problems;
}

/** The field a value belongs to: "sources" for sources.2. */
function nameOf(path: Path): string {
  return String(path.findLast((step) => typeof step === 'string') ?? '');
}

function checkOne(value: string, field: string, library: Library): string | undefined {
  const folder = idFields[field];
  if (folder !== undefined)
    return library.ids[folder]?.has(value)
      ? undefined
      : `a file name from ${folder}/.${didYouMean(value, library.ids[folder] ?? [])}`;
  if (field === 'related' || field === 'fix' || field === 'pages')
    return library.pages.has(value)
      ? undefined
      : `a page that exists, like jobs/drive-belt-change.${didYouMean(value, library.pages)}`;
  if (field === 'see')
    return hasAddress(library, value.startsWith('/') ? value : `/${value}`)
      ? undefined
      : `the address of a page that exists, like /jobs/drive-belt-change/.${didYouMean(value, library.addresses)}`;
  return undefined;
}

function walk(value: unknown, path: Path, visit: (text: string, path: Path) => void): void {
  if (typeof value === 'string') visit(value, path);
  else if (Array.isArray(value)) value.forEach((item, i) => walk(item, [...path, i], visit));
  else if (value !== null && typeof value === 'object')
    for (const [key, item] of Object.entries(value)) walk(item, [...path, key], visit);
}
