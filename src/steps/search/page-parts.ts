/** What of a built page the search is made of, read from its HTML as this site writes it. */
import type { ResultKind } from '../../browser/language/packed-list.ts';

export interface Row {
  readonly address: string;
  readonly lang: string;
  readonly kind: ResultKind;
  readonly reader: string;
  readonly title: string;
  readonly aliases: readonly string[];
  readonly headings: readonly { readonly anchor: string; readonly text: string }[];
}

/** One thing the index holds: a page, or an entry of a list that is an answer by itself. */
export interface Part {
  readonly row: Row;
  /** What Pagefind reads. */
  readonly html: string;
}

const ofFolder: Readonly<Record<string, ResultKind>> = {
  guides: 'guide',
  trouble: 'trouble',
  faults: 'fault',
  jobs: 'job',
  calculators: 'calculator',
  tables: 'table',
  explainers: 'explainer',
  machines: 'machine',
};

/** The page itself, and each word or caution of a list as a part of its own. */
export function partsOf(url: string, html: string): Part[] {
  if (!html.includes('data-pagefind-body')) return [];
  const lang = /<html[^>]*\blang="([a-z]+)/.exec(html)?.[1] ?? 'en';
  const list = /(?:^|\/)(glossary|hazards)\.html$/.exec(url)?.[1];
  const kind: ResultKind = list === 'glossary' ? 'word' : 'caution';
  const entries = list === undefined ? [] : entriesOf(html, kind);
  const parts = entries.map(({ anchor, title, aliases, text }): Part => {
    const address = `${url}#${anchor}`;
    return {
      row: { address, lang, kind, reader: '', title, aliases, headings: [] },
      html: entryPage(lang, title, aliases, text),
    };
  });
  const rest = entries.reduce((page, entry) => page.replace(entry.html, ''), html);
  return [{ row: pageRow(url, lang, rest), html: readable(rest) }, ...parts];
}

function pageRow(url: string, lang: string, html: string): Row {
  const folder = /^(?:es\/)?([a-z]+)\//.exec(url)?.[1] ?? '';
  const main = /<main\b.*?<\/main>/s.exec(html)?.[0] ?? html;
  return {
    address: url,
    lang,
    kind: ofFolder[folder] ?? 'page',
    reader: /\bdata-reader="(\w+)"/.exec(main)?.[1] ?? '',
    title: plain(/<h1\b[^>]*>(.*?)<\/h1>/s.exec(main)?.[1] ?? ''),
    aliases: aliasesOf(main),
    headings: [...main.matchAll(/<h[23]\b[^>]*?\bid="([^"]+)"[^>]*>(.*?)<\/h[23]>/gs)].map(([, anchor = '', text]) => ({
      anchor,
      text: plain(text ?? ''),
    })),
  };
}

function aliasesOf(main: string): string[] {
  const hidden = /<p class="index-only"[^>]*>(.*?)<\/p>/s.exec(main)?.[1] ?? '';
  return plain(hidden)
    .split('‡')
    .map((word) => word.trim().replace(/\.$/, ''))
    .filter((word) => word !== '');
}

interface Entry {
  readonly anchor: string;
  readonly title: string;
  readonly aliases: readonly string[];
  readonly text: string;
  readonly html: string;
}

function entriesOf(html: string, kind: ResultKind): Entry[] {
  const found =
    kind === 'word'
      ? [...html.matchAll(/<section>\s*<h2 id="([^"]+)">(.*?)<\/h2>(.*?)<\/section>/gs)]
      : [
          ...html.matchAll(
            /<div id="([^"]+)" class="hazard-entry">.*?class="hazard-title">(.*?)<\/span>(.*?)(?=<div id="[^"]+" class="hazard-entry">|<\/section>)/gs,
          ),
        ];
  return found.map(([whole, anchor = '', title = '', rest = '']) => {
    const also = /<span class="also">\s*[^:]+:(.*?)<\/span>/s.exec(rest)?.[1] ?? '';
    return {
      anchor,
      title: plain(title),
      aliases: plain(also)
        .replace(/\.\s*$/, '')
        .split(', ')
        .map((word) => word.trim())
        .filter((word) => word !== ''),
      text: rest.replace(/<a\b.*?<\/a>/gs, ''),
      html: whole,
    };
  });
}

function entryPage(lang: string, title: string, aliases: readonly string[], text: string): string {
  const summary = wordsApart(text.replace(/<span class="also">.*?<\/span>/s, ''));
  const said = plain(summary).slice(0, 200).replaceAll('"', '&quot;');
  return `<html lang="${lang}"><head><meta data-pagefind-meta="summary[content]" content="${said}"></head><body>
<main data-pagefind-body><h1 data-pagefind-weight="10">${title}</h1> ${summary}
<p data-pagefind-weight="7">${aliases.map((word) => `‡ ${word}. `).join('')}</p></main></body></html>`;
}

/**
 * A page as it is indexed: its description is the hit's summary; cautions are answers by themselves and are not repeated
 * on every page that shows them; what is chosen on the bench is no text of the page.
 */
function readable(html: string): string {
  const unread = html
    .replace('name="description"', 'data-pagefind-meta="summary[content]" name="description"')
    .replace(/<(?:aside|details|div) class="(?:fold )?hazard(?:-fold)? hazard-/g, (tag) =>
      tag.replace(' class', ' data-pagefind-ignore class'),
    )
    .replace(/<(\w+) class="strip\b/g, '<$1 data-pagefind-ignore class="strip');
  return wordsApart(indexedOnly(unread));
}

/** Of a page only what is indexed: its language, title, description and main part. */
function indexedOnly(html: string): string {
  const lang = /<html[^>]*\blang="[^"]*"/.exec(html)?.[0] ?? '<html';
  const title = /<title>.*?<\/title>/s.exec(html)?.[0] ?? '';
  const summary = /<meta [^>]*data-pagefind-meta[^>]*>/.exec(html)?.[0] ?? '';
  const main = /<main\b.*<\/main>/s.exec(html)?.[0] ?? '';
  return `${lang}><head>${title}${summary}</head><body>${main.replace(/<svg\b.*?<\/svg>/gs, '')}</body></html>`;
}

/** Pagefind joins the text of neighboring cells, items and labels unless a space stands between them. */
function wordsApart(html: string): string {
  return html.replace(
    /<\/(?:caption|td|th|li|dt|dd|p|h\d|figcaption|summary|option|label|legend|text|title|desc|button|div|span)>/g,
    '$& ',
  );
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', nbsp: ' ', '#39': "'" };

/** The text of a piece of HTML. */
export function plain(html: string): string {
  return html
    .replace(/<[^>]*>/g, '')
    .replace(/&(#x?[\da-f]+|\w+);/gi, (whole, name: string) => entities[name] ?? numbered(name) ?? whole)
    .replace(/\s+/g, ' ')
    .trim();
}

function numbered(name: string): string | undefined {
  const [, hex, digits = ''] = /^#(x?)([\da-f]+)$/i.exec(name) ?? [];
  return digits === '' ? undefined : String.fromCodePoint(parseInt(digits, hex ? 16 : 10));
}
