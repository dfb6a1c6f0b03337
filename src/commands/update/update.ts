/** What "npm run update" does, in one folder: takes the new files, and says which pages of the shop to compare. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToSay, places, shopFolder } from '../../schemas/places.ts';
import { markOf, readMarks, standings, writeMarks } from '../replace/originals.ts';
import { brokenOff, compare, finish, keptIn, newFiles, take } from './take.ts';

const knowledge = places[0] ?? '';

/** @returns what to tell whoever asked @throws Error with a sentence when there is nothing to take it from */
export async function update(projectFolder: string, from: string, lookOnly: boolean): Promise<string> {
  const lines: string[] = [];
  const shop = join(projectFolder, shopFolder);
  const files = await newFiles(from);
  const changes = await compare(projectFolder, files);
  const { changed, added, removed, version } = changes;
  const goesOn = brokenOff(projectFolder);
  if (changed.length + added.length + removed.length === 0) {
    finish(projectFolder);
    return `Nothing is new: engine and knowledge are the same.${goesOn ? ' The update before was broken off: npm ci' : ''}`;
  }
  const of = (list: readonly string[], place: string) => list.filter((name) => name.startsWith(`${place}/`));
  const inKnowledge = [
    ...of(added, knowledge).map((name) => `  new      ${name}`),
    ...of(changed, knowledge).map((name) => `  changed  ${name}`),
    ...of(removed, knowledge).map((name) => `  gone     ${name}`),
  ];
  lines.push(`Version ${version}: ${changed.length} files changed, ${added.length} new, ${removed.length} gone.`);
  if (inKnowledge.length > 0) lines.push(`In the knowledge:\n${inKnowledge.join('\n')}`);
  if (lookOnly) return [...lines, 'Looked only: nothing was changed.'].join('\n');

  // A page copied by hand has no mark yet; what its original is now is the best that is known of it.
  const marks = { ...readMarks(shop) };
  for (const { page, state } of await standings(shop, join(projectFolder, knowledge), marks))
    if (state === 'never compared') marks[page] = markOf(readFileSync(join(projectFolder, knowledge, page), 'utf8'));
  // Noted before the first original changes, for an update that is broken off.
  if (Object.keys(marks).length > 0) writeMarks(shop, marks);
  const newPackages = goesOn || changed.includes('package-lock.json');
  take(projectFolder, files, changes);

  const since = await standings(shop, join(projectFolder, knowledge), marks);
  const stale = since.filter(({ state }) => state === 'changed' || state === 'gone');
  if (stale.length > 0) {
    lines.push(
      '\nPages of yours whose original changed. Compare each, take over what you want, then say so with --seen:',
    );
    for (const { page, state } of stale) lines.push(said(projectFolder, page, state));
  } else if (since.length > 0) lines.push('\nNo original of a page of yours changed.');
  lines.push(`\nYour shop was not touched. What stood here before is in ${keptIn}/ until the next update.`);
  lines.push(`Next: ${newPackages ? 'npm ci && ' : ''}npm run content, then npm start`);
  return lines.join('\n');
}

function said(projectFolder: string, page: string, state: string): string {
  const before = `${keptIn}/${knowledge}/${page}`;
  const was = existsSync(join(projectFolder, before)) ? `\n      before:   ${before}` : '';
  return state === 'gone'
    ? `  ${pathToSay(`${shopFolder}/${page}`)}\n      original: gone from the knowledge; yours stands alone now${was}`
    : `  ${pathToSay(`${shopFolder}/${page}`)}\n      original: ${knowledge}/${page}${was}\n      npm run replace -- ${page} --seen`;
}
