/**
 * What is folded (components/frame/BeforePaint.astro does it) opens for paper. It is never folded from here: by now it
 * may be read, and nothing that is read moves.
 */
const folds = [...document.querySelectorAll<HTMLDetailsElement>('details.fold')];

let opened: HTMLDetailsElement[] = [];
window.addEventListener('beforeprint', () => {
  opened = folds.filter((fold) => !fold.open);
  for (const fold of opened) fold.open = true;
});
window.addEventListener('afterprint', () => {
  for (const fold of opened) fold.open = false;
  opened = [];
});

for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-print]'))
  button.addEventListener('click', () => window.print());
