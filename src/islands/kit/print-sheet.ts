/** Prints one calculator alone, as a card for the bench. The stylesheet hides the rest while the mark is set. */
export function printSheet(id: string): void {
  const root = document.documentElement;
  const card = document.getElementById(`${id}-calculator`);
  const date = document.getElementById(`${id}-date`);
  if (!card) return;
  if (date) date.textContent = new Intl.DateTimeFormat('en', { dateStyle: 'long' }).format(new Date());
  const clean = () => {
    root.removeAttribute('data-bench-card');
    card.classList.remove('calc-printing');
  };
  root.setAttribute('data-bench-card', id);
  card.classList.add('calc-printing');
  window.addEventListener('afterprint', clean, { once: true });
  window.print();
}
