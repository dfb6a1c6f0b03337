/**
 * Registers the service worker and keeps the reader told. What concerns the copy on the device is one line in the
 * foot, <p id="edition-line">. Only a newer edition may show more: a strip fixed at the bottom, <div id="edition-notice"
 * hidden>, which moves nothing and waits while a box has the focus. On a page opened from disk nothing is registered.
 */
import { fill } from '../words/say/fill.ts';
import type { NoticeWords } from '../words/notice.ts';
import { whenNoBoxHasFocus } from './no-box-has-focus.ts';
import type { FromWorker, ToWorker } from './worker/scope.ts';

type LineState = 'saving' | 'kept' | 'cut-short' | 'altered' | 'no-room';

function line(state: LineState, text: string): void {
  const element = document.getElementById('edition-line');
  if (!element) return;
  element.dataset['state'] = state;
  element.textContent = text;
}

function strip(state: 'newer' | 'elsewhere', text: string, label: string, press: () => void): void {
  const notice = document.getElementById('edition-notice');
  if (!notice) return;
  whenNoBoxHasFocus(() => {
    const words = document.createElement('p');
    words.textContent = text;
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = label;
    button.addEventListener('click', press);
    notice.setAttribute('role', 'status');
    notice.dataset['state'] = state;
    notice.replaceChildren(words, button);
    notice.hidden = false;
  });
}

async function start(say: NoticeWords): Promise<void> {
  const root = new URL(document.documentElement.dataset['root'] ?? './', location.href);
  addManifest(root);
  const container = navigator.serviceWorker;
  // A page below another saved site is answered by that site's worker; that one knows nothing of ours.
  const present = await container.getRegistration(root);
  const firstSave = present?.scope !== root.href || !present.active;
  let asked = false;
  // The last progress message can arrive after the end is known; it must not undo what was said then.
  let ended = false;
  // Said over "kept" as well: what is kept whole is then the earlier edition.
  let [full, whole] = [false, !firstSave];

  container.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
    if (data.type === 'kept') {
      [ended, whole] = [true, true];
      if (!full) line('kept', fill(say.kept, data));
    } else if (data.type === 'no-room') {
      [ended, full] = [true, true];
      line('no-room', whole ? say.noRoomForNewer : say.noRoom);
    } else if (data.type === 'altered') {
      ended = true;
      if (!data.again) line('altered', say.altered);
    } else if (firstSave && !ended) line('saving', fill(say.saving, data));
  });
  container.addEventListener('controllerchange', () => {
    if (asked) whenNoBoxHasFocus(() => location.reload());
    else if (firstSave && !ended) lookAfter(container.controller);
    else strip('elsewhere', say.elsewhere, say.reload, () => location.reload());
  });
  if (!firstSave) lookAfter(present.active);

  if (firstSave) await pageIsRead();
  const registration = await container.register(new URL('sw.js', root), { scope: root.href, updateViaCache: 'none' });
  const offer = (waiting: ServiceWorker) =>
    strip('newer', say.newer, say.show, () => {
      asked = true;
      waiting.postMessage({ type: 'take-over' } satisfies ToWorker);
    });
  const watch = (coming: ServiceWorker | null) =>
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && registration.active) offer(coming);
      // A little later: the worker's last word may come after its end.
      if (coming.state === 'redundant' && firstSave)
        setTimeout(() => {
          if (!ended) line('cut-short', say.cutShort);
          ended = true;
        }, 300);
    });
  if (registration.waiting && registration.active) offer(registration.waiting);
  watch(registration.installing);
  registration.addEventListener('updatefound', () => watch(registration.installing));
}

/** The first save fetches the whole site; what the reader came for, an answer of the search among it, goes before. */
async function pageIsRead(): Promise<void> {
  if (document.readyState !== 'complete') await new Promise((done) => addEventListener('load', done, { once: true }));
  await new Promise((done) => setTimeout(done, 1000));
}

function lookAfter(worker: ServiceWorker | null): void {
  worker?.postMessage({ type: 'look-after' } satisfies ToWorker);
}

/** Added here and not in the page: from disk, browsers refuse to read it and say so in the console. */
function addManifest(root: URL): void {
  const link = document.createElement('link');
  link.rel = 'manifest';
  link.href = new URL('manifest.webmanifest', root).href;
  document.head.append(link);
}

// Astro's server for writing has no worker: that keeps built pages.
const words = globalThis.almanacNotice;
if (!import.meta.env.DEV && words && location.protocol.startsWith('http') && 'serviceWorker' in navigator) {
  start(words).catch(() => {
    // Private windows and full disks refuse the worker; the site reads the same without it.
  });
}
