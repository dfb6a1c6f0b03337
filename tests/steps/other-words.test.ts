/** The glossary turned round: what people write, misspelled or not, finds the almanac's own word. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { otherWords } from '../../src/steps/search/other-words.ts';

it('takes aliases and misspellings, a later folder in place of an earlier one', async () => {
  const [knowledge, shop] = ['a-', 'b-'].map((start) => mkdtempSync(join(tmpdir(), start))) as [string, string];
  try {
    const entry = (term: string, aliases: string, misspelled: string) =>
      `term: ${term}\nmeans: A part of a machine.\naliases: [${aliases}]\nmisspelled: [${misspelled}]\n`;
    writeFileSync(join(knowledge, 'carburetor.yaml'), entry('Carburetor', 'carburettor', 'carborator'));
    writeFileSync(join(knowledge, 'blade.yaml'), entry('Blade', 'disc', 'blaid'));
    writeFileSync(join(shop, 'blade.yaml'), entry('Blade', 'wheel', 'blayd'));
    expect(await otherWords([knowledge, shop, join(shop, 'not-there')])).toEqual({
      carburettor: 'carburetor',
      carborator: 'carburetor',
      wheel: 'blade',
      blayd: 'blade',
    });
  } finally {
    for (const folder of [knowledge, shop]) rmSync(folder, { recursive: true, force: true });
  }
});
