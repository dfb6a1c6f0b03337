/**
 * Cards drawn in a thread of their own, from the titles alone: while the bundler is at work and the first pages are made
 * there is room for it, and after the last page everything waits for them.
 */
import { Worker } from 'node:worker_threads';
import type { TitlesAhead } from './add-cards.ts';

export class CardsAhead {
  readonly #thread: Worker;
  /** Nothing more is drawn. What could not be is drawn with the pages, and its fault told there. */
  readonly ended: Promise<void>;

  constructor(titles: TitlesAhead) {
    this.#thread = new Worker(new URL('./ahead-thread.ts', import.meta.url), { workerData: titles });
    this.#thread.on('error', () => undefined);
    this.ended = new Promise((done) => {
      this.#thread.on('exit', () => done());
    });
  }

  async stop(): Promise<void> {
    await this.#thread.terminate();
  }
}
