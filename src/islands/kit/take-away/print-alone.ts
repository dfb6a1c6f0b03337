/** Prints one part of the page alone. The stylesheet hides the rest while the mark is set. */
export function printAlone(part: HTMLElement): void {
  const root = document.documentElement;
  // Browsers that cannot show a closed fold by style alone print it open.
  const folded = [...part.querySelectorAll<HTMLDetailsElement>('details.calc-caution:not([open])')];
  for (const one of folded) one.open = true;
  const clean = () => {
    for (const one of folded) one.open = false;
    root.removeAttribute('data-bench-card');
    part.classList.remove('calc-printing');
  };
  // The mark names the part, so that a sheet can ask for its own paper.
  root.setAttribute('data-bench-card', part.id);
  part.classList.add('calc-printing');
  window.addEventListener('afterprint', clean, { once: true });
  window.print();
}
