/** The glossary's list of misspellings: a later folder in place of an earlier one. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { misspelledWords } from '../../../src/steps/search/misspelled.ts';

it('gives each misspelled word the one that is meant', async () => {
  const [knowledge, shop] = ['a-', 'b-'].map((start) => mkdtempSync(join(tmpdir(), start))) as [string, string];
  try {
    const entry = (term: string, misspelled: string) =>
      `term: ${term}\nmeans: A part of a machine.\nmisspelled: [${misspelled}]\n`;
    writeFileSync(join(knowledge, 'carburetor.yaml'), entry('Carburetor', 'carborator, two words'));
    writeFileSync(join(knowledge, 'blade.yaml'), entry('Blade', 'blaid'));
    writeFileSync(join(shop, 'blade.yaml'), entry('Blade', 'Blayd'));
    expect(await misspelledWords([knowledge, shop, join(shop, 'not-there')])).toEqual({
      carborator: 'carburetor',
      blayd: 'blade',
    });
  } finally {
    for (const folder of [knowledge, shop]) rmSync(folder, { recursive: true, force: true });
  }
});
