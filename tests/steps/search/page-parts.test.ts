/** What of a built page is searched: the page, and each word or caution of a list as an answer by itself. */
import { expect, it } from 'vitest';
import { partsOf } from '../../../src/steps/search/page-parts.ts';

const page = (main: string, lang = 'en') =>
  `<!doctype html><html lang="${lang}"><head><meta name="description" content="A summary."></head><body>` +
  `<main id="content" data-pagefind-body="true">${main}</main></body></html>`;

it('reads title, other words, reader and headings of a page', () => {
  const html = page(
    '<span hidden data-reader="customer"></span><h1>Cutting &amp; water</h1>' +
      '<h2 id="no-tap">No <em>tap</em> on site?</h2><h2>Unnamed</h2>' +
      '<p class="index-only" hidden data-pagefind-weight="7">‡ no tap. ‡ won&#39;t run. </p>',
  );
  expect(partsOf('guides/cutting-wet.html', html).map((part) => part.row)).toEqual([
    {
      address: 'guides/cutting-wet.html',
      lang: 'en',
      kind: 'guide',
      reader: 'customer',
      title: 'Cutting & water',
      aliases: ['no tap', "won't run"],
      headings: [{ anchor: 'no-tap', text: 'No tap on site?' }],
    },
  ]);
});

it('leaves a page out that is not to be searched', () => {
  expect(partsOf('search.html', '<html lang="en"><main><h1>Search</h1></main></html>')).toEqual([]);
});

it('does not read cautions again on every page that shows them, nor what is chosen on the bench', () => {
  const html = page(
    '<h1>A</h1><aside class="hazard hazard-danger" aria-label="x">Do not smoke</aside>' +
      '<details class="fold hazard-fold hazard-warning">b</details><div class="strip no-print">MP-1</div>',
  );
  const [part] = partsOf('jobs/a.html', html);
  expect(part?.html.match(/data-pagefind-ignore/g)).toHaveLength(3);
});

it('keeps the words of neighboring cells and choices apart', () => {
  const [part] = partsOf('tables/a.html', page('<h1>A</h1><table><tr><td>350 mm</td><td>14 in</td></tr></table>'));
  expect(part?.html).toContain('350 mm</td> <td>14 in</td>');
});

it('makes each word and each caution a part with its own anchor, in its own language', () => {
  const words = partsOf(
    'es/glossary.html',
    page('<h1>Glosario</h1><div><section><h2 id="slurry">Lodo</h2><p>Agua y polvo.</p></section></div>', 'es'),
  );
  expect(words.map(({ row }) => [row.address, row.kind, row.lang, row.title])).toEqual([
    ['es/glossary.html', 'page', 'es', 'Glosario'],
    ['es/glossary.html#slurry', 'word', 'es', 'Lodo'],
  ]);
  expect(words[0]?.html).not.toContain('Agua y polvo');
  const cautions = partsOf(
    'hazards.html',
    page(
      '<h1>Cautions</h1><section><h2 id="danger">Danger</h2><div id="kickback" class="hazard-entry"><aside class="hazard hazard-danger">' +
        '<p><span class="hazard-title">The saw is thrown</span></p><p>It rises.</p></aside></div></section>',
    ),
  );
  expect(cautions.map(({ row }) => row.address)).toEqual(['hazards.html', 'hazards.html#kickback']);
  expect(cautions[1]?.row.title).toBe('The saw is thrown');
  expect(cautions[1]?.html).toContain('It rises.');
});

it('takes the other words of a glossary entry', () => {
  const [, part] = partsOf(
    'glossary.html',
    page(
      '<h1>Words</h1><section><h2 id="carburetor">Carburetor</h2><p>Mixes.<span class="also"> Also: carburettor, carb.</span></p></section>',
    ),
  );
  expect(part?.row.aliases).toEqual(['carburettor', 'carb']);
});
