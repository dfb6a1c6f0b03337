/**
 * Folds what was written open. Until this runs a style rule keeps the folded part out of sight, so nothing moves; paper
 * opens all of it again, and a link into a folded part opens that part.
 */
const folds = [...document.querySelectorAll<HTMLDetailsElement>('details.fold')];

for (const fold of folds) {
  fold.open = false;
  fold.dataset['folded'] = '';
}

let opened: HTMLDetailsElement[] = [];
window.addEventListener('beforeprint', () => {
  opened = folds.filter((fold) => !fold.open);
  for (const fold of opened) fold.open = true;
});
window.addEventListener('afterprint', () => {
  for (const fold of opened) fold.open = false;
  opened = [];
});

for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-print]')) {
  button.hidden = false;
  button.addEventListener('click', () => window.print());
}
