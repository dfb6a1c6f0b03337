/** The part of a service worker's surroundings that ours uses; the page's own types do not name them. */

export interface WaitingEvent {
  waitUntil(work: Promise<unknown>): void;
}

export interface FetchEvent extends WaitingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

export interface MessageEvent extends WaitingEvent {
  readonly data: unknown;
}

export interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly clients: {
    claim(): Promise<void>;
    matchAll(options: { includeUncontrolled: boolean }): Promise<readonly { postMessage(message: unknown): void }[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: WaitingEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
}

/** What the worker tells the pages. */
export type FromWorker =
  | { readonly type: 'saving'; readonly done: number; readonly total: number }
  /** Pages that can be read without a signal. */
  | { readonly type: 'kept'; readonly pages: number }
  /** The host alters files on their way; they cannot be kept. The reader is told once. */
  | { readonly type: 'altered'; readonly again: boolean }
  /** The device has no room for all of this edition. */
  | { readonly type: 'no-room' };

/** What the pages tell the worker. */
export type ToWorker =
  | { readonly type: 'take-over' }
  /** A visit: mend the saved copy where the device lost parts of it, and say how much there is. */
  | { readonly type: 'look-after' };
