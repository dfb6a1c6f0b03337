import { bench } from '../../../browser/device/index.ts';
import { plateOnBench } from '../state/plate.ts';
import type { IslandProps } from '../state/props.ts';
import { printAlone } from './print-alone.ts';

/**
 * Prints one calculator alone, as a card for the bench: with the job it is for, today's date, and a square code that
 * opens the page with these figures. Without the code when its part did not load.
 */
export async function printSheet(page: IslandProps, query: string): Promise<void> {
  const card = document.getElementById(`${page.id}-calculator`);
  if (!card) return;
  fillJobLine(page);
  await drawCode(page, query);
  printAlone(card);
}

/** The job on the bench and today's date, on the head that only paper shows. */
export function fillJobLine(page: IslandProps): void {
  const fill = (part: string, text: string) => {
    const at = document.getElementById(`${page.id}-job-${part}`);
    if (at) at.textContent = text;
  };
  const { ticket, machine } = bench();
  fill('ticket', ticket);
  fill('machine', plateOnBench(page)?.name ?? page.plates?.[machine]?.name ?? '');
  fill('date', new Intl.DateTimeFormat('en', { dateStyle: 'long' }).format(new Date()));
}

async function drawCode(page: IslandProps, query: string): Promise<void> {
  const svg = document.getElementById(`${page.id}-code`);
  // Without an address of the site's own, another device has nowhere to go.
  if (!svg || !page.address) return;
  try {
    const { squareCode } = await import('./square-code.ts');
    const code = squareCode(`${page.address}?${query}`);
    if (!code) return;
    svg.setAttribute('viewBox', `0 0 ${code.size} ${code.size}`);
    svg.firstElementChild?.setAttribute('d', code.path);
  } catch {
    svg.removeAttribute('viewBox');
  }
}
