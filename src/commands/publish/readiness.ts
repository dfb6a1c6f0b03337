/** Everything that stands between a built site and its readers. Missing twins are among what the content check finds. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { addressIn, splitName } from '../../words/lang.ts';
import { checkContent, readContent } from '../../steps/content-check/check-content.ts';
import type { ContentFile } from '../../steps/content-check/content-file.ts';
import type { Known } from '../../steps/content-check/library.ts';
import type { Problem } from '../../steps/content-check/problem.ts';
import { listFiles } from '../../steps/support/files.ts';
import { drafts, largePictures, isPicture, pastReview, tellingPictures, unmarked, unwritten } from './rules.ts';

/** @param today YYYY-MM-DD */
export async function notReady(projectFolder: string, dist: string, known: Known, today: string): Promise<Problem[]> {
  const files = await readContent(projectFolder);
  const built = (await listFiles(dist))
    .filter(isPicture)
    .map((name) => ({ name, bytes: readFileSync(join(dist, name)) }));
  return [
    ...(await checkContent(projectFolder, known, today)),
    ...drafts(files),
    ...unwritten(files),
    ...pastReview(files, today),
    ...unmarked(files, (file) => pageOf(file, dist)),
    ...largePictures(built),
    ...tellingPictures(built),
  ];
}

function pageOf({ folder, id }: ContentFile, dist: string): string | undefined {
  const { lang, name } = splitName(id);
  const path = join(dist, `${addressIn(lang, `/${folder}/${name}`)}.html`);
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
}
