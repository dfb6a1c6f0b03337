/** The content check and the list of drafts, made again whenever something is saved, and told to every page that is open. */
import type { ServerResponse } from 'node:http';
import { isDeepStrictEqual } from 'node:util';
import { pathToSay } from '../../schemas/places.ts';
import { report, type Problem } from '../content-check/problem.ts';

/** Several files saved at once are one change. */
const settle = 80;

export interface Seen {
  readonly problems: readonly Problem[];
  /** Path of each page that is a draft, with its file. */
  readonly drafts: Readonly<Record<string, string>>;
}

export class Findings {
  readonly #look: () => Promise<Seen>;
  readonly #pages = new Set<ServerResponse>();
  #now: Seen = { problems: [], drafts: {} };
  #running: Promise<void> | undefined;
  #again = false;
  #timer: NodeJS.Timeout | undefined;

  constructor(look: () => Promise<Seen>) {
    this.#look = look;
  }

  /** Something was saved. */
  changed(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.newest(), settle);
  }

  /** What the check finds in what is saved by now. */
  async newest(): Promise<readonly Problem[]> {
    this.#again = true;
    this.#running ??= this.#run().finally(() => (this.#running = undefined));
    await this.#running;
    return this.#now.problems;
  }

  async #run(): Promise<void> {
    while (this.#again) {
      this.#again = false;
      const before = this.#now;
      this.#now = await this.#look();
      if (isDeepStrictEqual(before, this.#now)) continue;
      const { problems } = this.#now;
      if (!isDeepStrictEqual(before.problems, problems))
        console.error(problems.length > 0 ? report(problems) : 'content/ is in order again.');
      for (const page of this.#pages) this.#tell(page);
    }
  }

  /** Keeps an open page told, from now on. */
  follow(page: ServerResponse): void {
    page.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    this.#pages.add(page);
    page.on('close', () => this.#pages.delete(page));
    this.#tell(page);
    void this.newest();
  }

  #tell(page: ServerResponse): void {
    const findings = this.#now.problems.map(({ file, line, field, got, allowed }) => ({
      ...{ file: pathToSay(file), line, field },
      ...{ got: pathToSay(got), allowed: pathToSay(allowed) },
    }));
    const drafts = Object.fromEntries(Object.entries(this.#now.drafts).map(([path, file]) => [path, pathToSay(file)]));
    page.write(`data: ${JSON.stringify({ findings, drafts })}\n\n`);
  }
}
