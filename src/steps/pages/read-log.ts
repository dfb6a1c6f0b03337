/** Notes while pages are made what of the content each of them reads; src/lib/collection.ts and src/lib/once.ts tell it. */

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
  /** A page and what is being made for it at this moment: what is read now counts for all of them. */
  readonly #open = new Set<Noting>();

  note(what: string): void {
    for (const noting of this.#open) noting.reads.add(what);
  }

  uses(name: string): void {
    for (const noting of this.#open) noting.uses.add(name);
  }

  async making<T>(name: string, make: () => Promise<T>): Promise<T> {
    const noting = new Noting();
    this.#made.set(name, noting);
    return this.#during(noting, make);
  }

  /** Makes one page; nobody else makes one meanwhile. */
  async page(make: () => Promise<string>): Promise<{ readonly html: string; readonly rests: Rests }> {
    const noting = new Noting();
    const html = await this.#during(noting, make);
    return { html, rests: noting.rests };
  }

  get made(): Readonly<Record<string, Rests>> {
    return Object.fromEntries([...this.#made].map(([name, noting]) => [name, noting.rests]));
  }

  async #during<T>(noting: Noting, make: () => Promise<T>): Promise<T> {
    this.#open.add(noting);
    try {
      return await make();
    } finally {
      this.#open.delete(noting);
    }
  }
}
