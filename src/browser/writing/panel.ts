/**
 * While one writes (npm run dev): what the content check finds, in its own words, at the foot of the page; gone when it
 * is mended. Never part of a built site.
 */
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

const path = decodeURIComponent(location.pathname).replace(/\.html$|\/$/g, '');
/** A page in another language, "/xx/guides/cutting-wet", is made from guides/xx/cutting-wet. */
const page = path.replace(new RegExp(`^/(${document.documentElement.lang})/(\\w+)/`), '/$2/$1/');
const isHere = ({ file }: Finding): boolean => page !== '' && file.replace(/\.\w+$/, '').endsWith(page);

function show(findings: readonly Finding[]): void {
  document.querySelector('almanac-findings')?.remove();
  if (findings.length === 0) return;
  uncover();
  const ordered = [...findings].sort((a, b) => Number(isHere(b)) - Number(isHere(a)));
  const host = document.createElement('almanac-findings');
  const root = host.attachShadow({ mode: 'open' });
  const style = document.createElement('style');
  style.textContent = look;
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
  root.append(style, box);
  document.body.append(host);
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
  const findings = JSON.parse(data) as Finding[];
  if (standsIn && (findings.length === 0 || (before !== undefined && before !== data))) location.reload();
  before = data;
  show(findings);
};
