import { printAlone } from './print-alone.ts';

/** Prints one calculator alone, as a card for the bench, with today's date. */
export function printSheet(id: string): void {
  const card = document.getElementById(`${id}-calculator`);
  const date = document.getElementById(`${id}-date`);
  if (!card) return;
  if (date) date.textContent = new Intl.DateTimeFormat('en', { dateStyle: 'long' }).format(new Date());
  printAlone(card);
}
