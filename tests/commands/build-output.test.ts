/** A short build says nothing on the way, a long one how far it is, and every warning comes through. */
import { expect, test } from 'vitest';
import { BuildOutput, longBuild } from '../../src/commands/build/build-output.ts';

/** Lines as Astro 7.3 writes them. */
const pages = (count: number) => Array.from({ length: count }, (_, i) => `10:15:02   ├─ /jobs/job-${i}.html (+3ms) `);
const warning = ['10:15:01 [WARN] [build] Something is odd', '  and goes on here', '10:15:02 [build] Completed in 2s.'];

function said(seconds: number, lines: readonly string[]): string[] {
  const heard: string[] = [];
  const output = new BuildOutput(
    () => seconds,
    (line) => heard.push(line),
  );
  for (const line of lines) output.hear(line);
  return heard;
}

const talk = ['10:15:00 [types] Generated 1ms', ...pages(1000), '10:15:09 [almanac-portable] search index'];

test.each([
  [longBuild - 0.1, []],
  [longBuild, ['8 s: 500 pages made', '8 s: 1000 pages made', '8 s: search index']],
  [30, ['30 s: 500 pages made', '30 s: 1000 pages made', '30 s: search index']],
])('after %s s', (seconds, lines) => {
  expect(said(seconds, talk)).toEqual(lines);
});

// As Astro 7.3.5 wrote them for a shop without pages of its own.
test('that a shop has none of a kind of content is not worth a word', () => {
  const none = [
    '22:46:23 [WARN] [glob-loader] No files found matching "knowledge/pages/**/*.mdx,shop/pages/**/*.mdx" in directory "content"',
    '22:49:21 [WARN] [content] The collection "pages" does not exist or is empty. Please check your content config file for errors.',
  ];
  expect(said(30, none)).toEqual([]);
  expect(said(30, [...none, ...warning])).toEqual(warning.slice(0, 2));
});

test('a warning is told whole, however short the build', () => {
  expect(said(0, warning)).toEqual(warning.slice(0, 2));
  expect(said(0, ['\u001B[2m10:15:01\u001B[22m \u001B[33m[WARN]\u001B[39m [x] colored'])).toHaveLength(1);
});
