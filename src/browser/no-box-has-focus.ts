/** Puts off what would disturb somebody typing: it is done when no box has the focus, which may be at once. */

const box = 'input, textarea, select, [contenteditable]';

export function whenNoBoxHasFocus(act: () => void): void {
  if (!document.activeElement?.matches(box)) return act();
  // Between two boxes the focus is nowhere for a moment.
  const look = () =>
    setTimeout(() => {
      if (document.activeElement?.matches(box)) return;
      document.removeEventListener('focusout', look);
      act();
    });
  document.addEventListener('focusout', look);
}
