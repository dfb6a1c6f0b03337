/**
 * Long work that can be laid aside between two pieces of it, so that who waits at a page is answered meanwhile. What
 * comes out, to the last bit, does not hang on where it was laid aside. The core knows no clock: how long to go on for
 * is its caller's choice.
 */
export type Pieces<T> = Generator<void, T>;

/** Does all of it at once. Example: toEnd({ next: () => ({ done: true, value: 5 }) }) -> 5. */
export function toEnd<T>(work: Pieces<T>): T {
  for (;;) {
    const piece = work.next();
    if (piece.done) return piece.value;
  }
}
