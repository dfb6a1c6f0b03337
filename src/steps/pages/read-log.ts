/** Notes while pages are made what of the content each of them reads; src/lib/collection.ts and src/lib/once.ts tell it. */

import { AsyncLocalStorage } from 'node:async_hooks';

/** What one page, or one thing made for the whole site, rests on. */
export interface Rests {
  /** Pieces of the content, named as in said.ts. */
  readonly reads: readonly string[];
  /** What was made for the whole site, by name. */
  readonly uses: readonly string[];
}

class Noting {
  readonly reads = new Set<string>();
  readonly uses = new Set<string>();

  get rests(): Rests {
    return { reads: [...this.reads], uses: [...this.uses] };
  }
}

export class ReadLog {
  readonly #made = new Map<string, Noting>();
  /** For whom something is read at this place of the program: a page, and what is being made for it. */
  readonly #here = new AsyncLocalStorage<readonly Noting[]>();
  /** All that is being made at this moment. */
  readonly #open = new Set<Noting>();

  note(what: string): void {
    for (const noting of this.#readers()) noting.reads.add(what);
  }

  uses(name: string): void {
    for (const noting of this.#readers()) noting.uses.add(name);
  }

  making<T>(name: string, make: () => Promise<T>): Promise<T> {
    const noting = new Noting();
    this.#made.set(name, noting);
    return this.#during([...(this.#here.getStore() ?? []), noting], make);
  }

  /** Makes one page; nobody else makes one meanwhile. */
  async page(make: () => Promise<string>): Promise<{ readonly html: string; readonly rests: Rests }> {
    const noting = new Noting();
    const html = await this.#during([noting], make);
    return { html, rests: noting.rests };
  }

  get made(): Readonly<Record<string, Rests>> {
    return Object.fromEntries([...this.#made].map(([name, noting]) => [name, noting.rests]));
  }

  /** Where nobody can say who reads, it counts for all: one page too many is made, never one too few. */
  #readers(): Iterable<Noting> {
    return this.#here.getStore() ?? this.#open;
  }

  async #during<T>(notings: readonly Noting[], make: () => Promise<T>): Promise<T> {
    const added = notings.filter((noting) => !this.#open.has(noting));
    for (const noting of added) this.#open.add(noting);
    try {
      return await this.#here.run(notings, make);
    } finally {
      for (const noting of added) this.#open.delete(noting);
    }
  }
}
