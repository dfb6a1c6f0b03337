/** Keeps the ticks of each list of checks on this device for the day, and clears them. */
import { load, ofDevice, save, ticksKind } from './device/index.ts';

const today = (now = new Date()): string =>
  new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);

for (const sheet of document.querySelectorAll<HTMLElement>('[data-checks]')) {
  const place = ofDevice(ticksKind, sheet.dataset['checks'] ?? '');
  const boxes = [...sheet.querySelectorAll<HTMLInputElement>('input[data-check]')];
  const clear = sheet.querySelector<HTMLButtonElement>('[data-clear-ticks]');
  const idOf = (box: HTMLInputElement) => box.dataset['check'] ?? '';

  const kept = load(place);
  for (const box of boxes) box.checked = kept?.day === today() && kept.done[idOf(box)] === true;

  const keep = () => save(place, { day: today(), done: Object.fromEntries(boxes.map((b) => [idOf(b), b.checked])) });
  for (const box of boxes) box.addEventListener('change', keep);
  clear?.addEventListener('click', () => {
    for (const box of boxes) box.checked = false;
    keep();
  });
}
