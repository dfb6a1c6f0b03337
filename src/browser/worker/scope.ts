/** The part of a service worker's surroundings that ours uses; the page's own types do not name them. */

export interface WaitingEvent {
  waitUntil(work: Promise<unknown>): void;
}

export interface FetchEvent extends WaitingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

export interface MessageEvent {
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

/** What the worker tells the pages, and they tell it. */
export interface FromWorker {
  readonly type: 'saving';
  readonly done: number;
  readonly total: number;
}
export interface ToWorker {
  readonly type: 'take-over';
}
