/** Puts the reader at a box, in a drawer or not. A list of rows has no box of its own: its first one is meant. */
export function goToBox(id: string): void {
  const box = document.getElementById(id);
  box?.closest('details')?.setAttribute('open', '');
  (box?.matches('fieldset') ? (box.querySelector<HTMLElement>('input, select') ?? box) : box)?.focus();
}
