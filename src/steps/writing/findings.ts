/** The content check, run again whenever something is saved, and told to every page that is open. */
import type { ServerResponse } from 'node:http';
import { pathToSay } from '../../schemas/places.ts';
import { report, type Problem } from '../content-check/problem.ts';

/** Several files saved at once are one change. */
const settle = 80;

export class Findings {
  readonly #check: () => Promise<readonly Problem[]>;
  readonly #pages = new Set<ServerResponse>();
  #now: readonly Problem[] = [];
  #running: Promise<void> | undefined;
  #again = false;
  #timer: NodeJS.Timeout | undefined;

  constructor(check: () => Promise<readonly Problem[]>) {
    this.#check = check;
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
    return this.#now;
  }

  async #run(): Promise<void> {
    while (this.#again) {
      this.#again = false;
      const found = await this.#check();
      const [before, after] = [JSON.stringify(this.#now), JSON.stringify(found)];
      this.#now = found;
      if (before === after) continue;
      console.error(found.length > 0 ? report(found) : 'content/ is in order again.');
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
    const said = this.#now.map(({ file, line, field, got, allowed }) => ({
      ...{ file: pathToSay(file), line, field },
      ...{ got: pathToSay(got), allowed: pathToSay(allowed) },
    }));
    page.write(`data: ${JSON.stringify(said)}\n\n`);
  }
}
