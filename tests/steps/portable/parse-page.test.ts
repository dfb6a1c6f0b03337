/** Pages read in leaps are read as the HTML standard has it: held against parse5, which reads every sign. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseByStandard, parsePage } from '../../../src/steps/portable/parse-page.ts';
import { readPlainTags, type RawText, type StartTag } from '../../../src/steps/portable/plain-tags.ts';

const asAstroWrites = `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Belts &amp; <b>pulleys</title>
<style>a > b { color: red }</style><script>if (1 < 2) document.write("<a href='x'>")</script>
<script type="module" src="/_astro/page.js"></script></head><body class="wide" data-x data-y="">
<!-- a note with <a href="/none/"> in it --><h1 id="top">5 < 6 &lt; 7</h1>
<a href="/tables/?a=1&amp;b=2#c" title="&quot;so&quot; &nbsp;&copy it&#39;s &unknown; a&b">x</a><br><img src="/a.png" alt="">
<svg viewBox="0 0 1 1"><title>A drawing</title><linearGradient id="g"/><path d="M0 0"/><a xlink:href="#g">y</a></svg>
<textarea rows="2"><a href="/none/"></textarea><ul><li>one<li>two</ul>
<astro-island props="{&quot;a&quot;:[0,1]}" component-url="/_astro/a.js" await-children></astro-island></body></html>`;

const same = (html: string) => {
  expect(parsePage('a.html', html)).toEqual(parseByStandard('a.html', html));
};
const isPlain = (html: string) => readPlainTags(html, { begin: () => undefined, end: () => undefined });

test('a page as Astro writes it is plain, and nothing of it is read otherwise', () => {
  const raw = new Map<string, RawText>([
    ['script', 'script'],
    ['style', 'raw'],
    ['textarea', 'title'],
  ]);
  const tags: string[] = [];
  const begin = ({ tag }: StartTag) => {
    tags.push(tag);
    return raw.get(tag);
  };
  expect(readPlainTags(asAstroWrites, { begin, end: () => undefined })).toBe(true);
  expect(tags).toContain('astro-island');
  same(asAstroWrites);
  const page = parsePage('a.html', asAstroWrites);
  expect([...page.ids]).toEqual(['top', 'g']);
  expect(page.elements.find((e) => e.tag === 'a')?.attributes).toEqual({
    href: '/tables/?a=1&b=2#c',
    title: '"so" \u00A0© it\'s &unknown; a&b',
  });
});

test('what is not plain is left to the standard', () => {
  for (const html of [
    "<a href='x'>",
    '<a href=x>',
    '<a href="x"id="y">',
    '<a href="x" href="y">',
    '<a href="x',
    '<a\r\nhref="x">',
    '<a href = "x">',
    '</a href="x">',
    '</>',
    '<?xml?>',
    '<!-->',
    '<!-- a --!> -->',
    '<!-- a -- b -->',
    '<svg><![CDATA[<a>]]></svg>',
    '<!DOCTYPE html PUBLIC "x">',
    '\uFEFF<a>',
  ]) {
    expect(isPlain(html), html).toBe(false);
    same(html);
  }
  same('<script><!-- <script></script> --></script><a href="x">');
  same('<style></STYLE ><a href="x"></style>');
  same('<title>a');
});

test('whatever the pieces of a page are, and in whatever order, both ways give the same', () => {
  const pieces = [
    ...[
      '<a',
      '<svg',
      '<script',
      '<style',
      '<title',
      '<br',
      '<P',
      '</a>',
      '</svg>',
      '</script>',
      '</STYLE>',
      '</title>',
    ],
    ...['</p >', '<', '>', '/>', '/', ' ', '\n', ' id="x"', ' href="/a/?b&amp;c"', ' b="&nbsp;&#x41;"', ' viewBox="0"'],
    ...[' c', ' d=e', " f='g'", '"', '=', '&', 'word', '<!--', '-->', '--', '<!doctype html>', '<![CDATA[', ']]>'],
  ];
  const html = fc.array(fc.constantFrom(...pieces), { maxLength: 24 }).map((list) => list.join(''));
  fc.assert(fc.property(html, same), { numRuns: 5000 });
});
