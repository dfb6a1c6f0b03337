/**
 * Registers the service worker and keeps the reader told, in <div id="edition-notice" hidden>:
 * how far the saving is, that the site now works without a signal, that a newer edition waits.
 * On a page opened from disk there is nothing to register.
 */
import { noticeWords } from '../words/index.ts';
import type { FromWorker, ToWorker } from './worker/scope.ts';

const say = noticeWords[document.documentElement.lang.startsWith('es') ? 'es' : 'en'];

type State = 'saving' | 'saved' | 'cut-short' | 'newer' | 'elsewhere';

function show(state: State, text: string, button?: { readonly label: string; readonly press: () => void }): void {
  const notice = document.getElementById('edition-notice');
  if (!notice) return;
  notice.setAttribute('role', 'status');
  notice.dataset['state'] = state;
  const line = document.createElement('p');
  line.textContent = text;
  notice.replaceChildren(line);
  if (button) {
    const element = document.createElement('button');
    element.type = 'button';
    element.textContent = button.label;
    element.addEventListener('click', button.press);
    notice.append(element);
  }
  notice.hidden = false;
}

function hide(): void {
  const notice = document.getElementById('edition-notice');
  if (notice) notice.hidden = true;
}

async function start(): Promise<void> {
  const root = new URL(document.documentElement.dataset['root'] ?? './', location.href);
  addManifest(root);
  const container = navigator.serviceWorker;
  const firstSave = container.controller === null;
  let asked = false;
  // The last progress message can arrive after the end is known; it must not undo what was said then.
  let ended = false;

  container.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
    if (firstSave && !ended) show('saving', say.saving(data.done, data.total));
  });
  container.addEventListener('controllerchange', () => {
    if (asked) location.reload();
    else if (!firstSave || ended)
      show('elsewhere', say.elsewhere, { label: say.reload, press: () => location.reload() });
    else {
      ended = true;
      show('saved', say.saved, { label: say.close, press: hide });
    }
  });

  const registration = await container.register(new URL('sw.js', root), { scope: root.href, updateViaCache: 'none' });
  const offer = (waiting: ServiceWorker) => {
    const takeOver: ToWorker = { type: 'take-over' };
    const press = () => {
      asked = true;
      waiting.postMessage(takeOver);
    };
    show('newer', say.newer, { label: say.show, press });
  };
  const watch = (coming: ServiceWorker | null) =>
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && container.controller) offer(coming);
      if (coming.state === 'redundant' && firstSave && !ended) {
        ended = true;
        show('cut-short', say.cutShort, { label: say.close, press: hide });
      }
    });
  if (registration.waiting && container.controller) offer(registration.waiting);
  watch(registration.installing);
  registration.addEventListener('updatefound', () => watch(registration.installing));
}

/** Added here and not in the page: from disk, browsers refuse to read it and say so in the console. */
function addManifest(root: URL): void {
  const link = document.createElement('link');
  link.rel = 'manifest';
  link.href = new URL('manifest.webmanifest', root).href;
  document.head.append(link);
}

if (location.protocol.startsWith('http') && 'serviceWorker' in navigator) {
  start().catch(() => {
    // Private windows and full disks refuse the worker; the site reads the same without it.
  });
}
