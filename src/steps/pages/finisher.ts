/** The other end of finish-thread.ts. */
import { Worker } from 'node:worker_threads';
import type { Finished, FinisherGiven, FromFinisher, ToFinisher } from './between-threads.ts';

/** Pages on their way to it; more would only fill the memory. */
const atMost = 48;

export class Finisher {
  readonly #thread: Worker;
  readonly #ended: Promise<Finished>;
  #waiting = 0;
  #wake: (() => void) | undefined;
  #copied: (() => void) | undefined;

  /** It gets ready while the content is still being read. */
  constructor() {
    this.#thread = new Worker(new URL('./finish-thread.ts', import.meta.url));
    this.#ended = new Promise((done, failed) => {
      let finished: Finished | undefined;
      this.#thread.on('message', (said: FromFinisher) => {
        if (said === 'copied') this.#copied?.();
        else if (said === 'taken') {
          if (--this.#waiting < atMost) this.#wake?.();
        } else if ('finished' in said) ({ finished } = said);
        else failed(Object.assign(said.failed as Error, { name: said.name }));
      });
      this.#thread.on('error', failed);
      this.#thread.on('exit', () => {
        if (finished) done(finished);
        else failed(new Error('The thread that finishes pages ended before they were all done.'));
      });
    });
    this.#ended.catch(() => this.#wake?.());
  }

  /** Copies a folder, while the other thread has its hands full. */
  copy(from: string, to: string): Promise<void> {
    this.#thread.postMessage({ copy: from, to } satisfies ToFinisher);
    return Promise.race([this.#ended.then(() => undefined), new Promise<void>((done) => (this.#copied = done))]);
  }

  begin(given: FinisherGiven): void {
    this.#thread.postMessage({ given } satisfies ToFinisher);
  }

  async page(file: string, html: string): Promise<void> {
    this.#thread.postMessage({ file, html } satisfies ToFinisher);
    this.#waiting += 1;
    if (this.#waiting < atMost) return;
    await Promise.race([this.#ended, new Promise<void>((wake) => (this.#wake = wake))]);
  }

  added(file: string): void {
    this.#thread.postMessage({ added: file } satisfies ToFinisher);
  }

  /** All pages are on their way; ends when the last is written and the search stands. */
  end(): Promise<Finished> {
    this.#thread.postMessage({ end: true } satisfies ToFinisher);
    return this.#ended;
  }

  /** Pages will not come. */
  async stop(): Promise<void> {
    await this.#thread.terminate();
  }
}
