/**
 * While one writes (npm run dev): what the content check finds, in its own words, at the foot of the page, gone when it
 * is mended; and at the head of a draft, that it is one. Never part of a built site.
 */
interface Told {
  readonly findings: readonly Finding[];
  /** Path of each page that is a draft, with its file. */
  readonly drafts: Readonly<Record<string, string>>;
}

interface Finding {
  readonly file: string;
  readonly line: number;
  readonly field: string;
  readonly got: string;
  readonly allowed: string;
}

/** More than fit are counted. */
const most = 12;
const look = `
:host { position: fixed; inset: auto 0 0 0; z-index: 99; font: 15px/1.4 system-ui, sans-serif; color: #182023; }
details { background: #fff6e0; border-top: 3px solid #9c4300; max-height: 50vh; overflow: auto; padding: 0 1rem; }
summary { padding: .7rem 0; font-weight: 700; cursor: pointer; }
ul { margin: 0; padding: 0 0 .8rem; list-style: none; }
li { padding: .4rem 0; border-top: 1px solid #d9c9a5; }
code { font: 600 14px/1.4 ui-monospace, monospace; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 0 .6rem; margin: 0; }
dd { margin: 0; overflow-wrap: anywhere; }
`;
const draftLook = `
p { margin: 0; padding: .6rem 1rem; background: #fff6e0; color: #182023; border-bottom: 3px solid #9c4300;
  font: 15px/1.4 system-ui, sans-serif; }
code { font: 600 14px/1.4 ui-monospace, monospace; }
@media print { p { display: none; } }
`;

const path = decodeURIComponent(location.pathname).replace(/\.html$|\/$/g, '');
/** A page in another language, "/xx/guides/cutting-wet", is made from guides/xx/cutting-wet. */
const page = path.replace(new RegExp(`^/(${document.documentElement.lang})/(\\w+)/`), '/$2/$1/');
const isHere = ({ file }: Finding): boolean => page !== '' && file.replace(/\.\w+$/, '').endsWith(page);

/** An element of its own with its own look, whatever the page's is; in place of the one that stands there. */
function put(name: string, css: string, parts: readonly Node[], where: 'append' | 'prepend'): void {
  document.querySelector(name)?.remove();
  const host = document.createElement(name);
  const style = document.createElement('style');
  style.textContent = css;
  host.attachShadow({ mode: 'open' }).append(style, ...parts);
  document.body[where](host);
}

function showDraft(file: string | undefined): void {
  if (file === undefined) return document.querySelector('almanac-draft')?.remove();
  const line = document.createElement('code');
  line.textContent = 'draft: true';
  const words = document.createElement('p');
  words.append(
    'A draft: only this server shows it. A build holds it once the line ',
    line,
    ` in ${file} is taken away.`,
  );
  put('almanac-draft', draftLook, [words], 'prepend');
}

function show(findings: readonly Finding[]): void {
  if (findings.length === 0) return document.querySelector('almanac-findings')?.remove();
  uncover();
  const ordered = [...findings].sort((a, b) => Number(isHere(b)) - Number(isHere(a)));
  const box = document.createElement('details');
  box.open = true;
  const head = document.createElement('summary');
  head.textContent = `${findings.length} problem${findings.length === 1 ? '' : 's'} in content/`;
  const list = document.createElement('ul');
  for (const finding of ordered.slice(0, most)) list.append(row(finding));
  if (ordered.length > most) {
    const rest = document.createElement('li');
    rest.textContent = `and ${ordered.length - most} more: npm run content lists all`;
    list.append(rest);
  }
  box.append(head, list);
  put('almanac-findings', look, [box], 'append');
}

/** Where a page broke half-way the server lays its own words over all of it, and so over what the check says. */
function uncover(): void {
  document.querySelector('vite-error-overlay')?.remove();
}
new MutationObserver(() => {
  if (document.querySelector('almanac-findings')) uncover();
}).observe(document.body, { childList: true });

function row({ file, line, field, got, allowed }: Finding): HTMLLIElement {
  const item = document.createElement('li');
  const place = document.createElement('code');
  place.textContent = `${file}:${line}`;
  const said = document.createElement('dl');
  for (const [name, text] of [
    ['found:', got],
    ['wanted:', allowed],
  ]) {
    const term = document.createElement('dt');
    term.textContent = name ?? '';
    const what = document.createElement('dd');
    what.textContent = text ?? '';
    said.append(term, what);
  }
  item.append(place, `  ${field}`, said);
  return item;
}

// A page that could not be made stands in for the real one until what kept it is mended; that may be so before the first
// word arrives here, when file after file is saved.
const standsIn = document.documentElement.dataset['standsIn'] !== undefined;
let before: string | undefined;
new EventSource('/@almanac/findings').onmessage = ({ data }: MessageEvent<string>) => {
  const { findings, drafts } = JSON.parse(data) as Told;
  if (standsIn && (findings.length === 0 || (before !== undefined && before !== data))) location.reload();
  before = data;
  show(findings);
  showDraft(drafts[`${path}/`]);
};
