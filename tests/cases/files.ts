/** The check cases of a topic, from the three folders. */
import { existsSync, readFileSync } from 'node:fs';
import type { Case, CaseFile } from './case.ts';

/** Folders under tests/; see case.ts for what each holds. */
export const folders = ['published', 'derived', 'memory'] as const;
export type Folder = (typeof folders)[number];

export function caseFile(folder: Folder, topic: string): CaseFile | undefined {
  const file = new URL(`../${folder}/${topic}.json`, import.meta.url);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as CaseFile) : undefined;
}

export function casesOf(topic: string): readonly Case[] {
  return folders.flatMap((folder) => caseFile(folder, topic)?.cases ?? []);
}
