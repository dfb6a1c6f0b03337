/** Long work done a few milliseconds at a time, so that clicks, keys and paints come between. */

/** Well within the time in which an answer to the hand is felt to be at once, with what the hand asked for beside it [ms]. */
const slice = 8;
/** A page that is not looked at paints nothing; there the work begins all the same [ms]. */
const noPaint = 100;

export interface Underway {
  /** Lays the work aside for good: nothing comes of it any more. */
  readonly stop: () => void;
  /** Does the rest at once: before printing, say. */
  readonly finish: () => void;
}

/**
 * Begins once what is on the page by now has been painted.
 * @param work gives way between its pieces @param done gets what comes out
 */
export function inSlices<T>(work: Iterator<void, T>, done: (result: T) => void): Underway {
  // A message is a task like a timer's, but comes without a timer's least wait.
  const { port1, port2 } = new MessageChannel();
  let begun = false;
  let over = false;
  function begin(): void {
    if (!begun) port2.postMessage(undefined);
    begun = true;
  }
  function stop(): void {
    over = true;
    port1.close();
  }
  function goOn(time: number): void {
    const end = performance.now() + time;
    while (!over) {
      const piece = work.next();
      if (piece.done) {
        stop();
        done(piece.value);
      } else if (performance.now() > end) {
        port2.postMessage(undefined);
        return;
      }
    }
  }
  port1.onmessage = () => goOn(slice);
  // What a frame's own task leaves for later comes after that frame's paint.
  requestAnimationFrame(begin);
  setTimeout(begin, noPaint);
  return { stop, finish: () => goOn(Infinity) };
}
