/** What the jobs need of a browser, whatever drives it; typing and clicking are the browser's own events. */

export interface Tab {
  /** Opens an address and waits until the page has loaded. */
  open(address: string): Promise<void>;
  /** What a JavaScript expression gives or promises, as JSON carries it. */
  run(expression: string): Promise<unknown>;
  /** Pointer and keys, in the form both protocols share (W3C WebDriver, "Actions"). */
  act(sources: readonly object[]): Promise<void>;
  /** Uncaught errors and error messages since the last call; undefined where the driver does not tell. */
  troubles(): readonly string[] | undefined;
  close(): Promise<void>;
}

/** Generous, for slow machines, and less than a test has [ms]. */
const patience = 60_000;

/** Waits until the expression gives something true, and gives that. */
export async function until(tab: Tab, expression: string): Promise<unknown> {
  const end = Date.now() + patience;
  for (;;) {
    // A page that is just giving way to the next one answers nothing.
    const value = await tab.run(expression).catch(() => undefined);
    if (value) return value;
    if (Date.now() > end) throw new Error(`Never came true: ${expression}`);
    await new Promise((done) => setTimeout(done, 50));
  }
}

const one = (selector: string) => `document.querySelector(${JSON.stringify(selector)})`;

export const textOf = (tab: Tab, selector: string): Promise<unknown> => tab.run(`${one(selector)}?.innerText`);
export const valueOf = (tab: Tab, selector: string): Promise<unknown> => tab.run(`${one(selector)}?.value`);

/** In place of what stands in the box. */
export async function type(tab: Tab, selector: string, text: string): Promise<void> {
  await until(tab, `${one(selector)} && !${one(selector)}.disabled`);
  await tab.run(
    `(${one(selector)}.scrollIntoView({ block: 'center' }), ${one(selector)}.focus(), ${one(selector)}.select())`,
  );
  await keys(tab, text);
}

/** `\uE004` is the tabulator (W3C WebDriver, "Keyboard actions"). */
export async function keys(tab: Tab, text: string): Promise<void> {
  const actions = [...text].flatMap((value) => [
    { type: 'keyDown', value },
    { type: 'keyUp', value },
  ]);
  await tab.act([{ type: 'key', id: 'keys', actions }]);
}

/**
 * The first that the selector finds and whose text is the given one, once it stands still and nothing lies over it: a
 * press aims where it was seen.
 */
export async function click(tab: Tab, selector: string, text?: string): Promise<void> {
  const all = `[...document.querySelectorAll(${JSON.stringify(selector)})]`;
  const said = text === undefined ? 'true' : `e.innerText.trim().includes(${JSON.stringify(text)})`;
  const found = `${all}.find((e) => e.getClientRects().length > 0 && ${said})`;
  const middle = await until(
    tab,
    `(async (e) => {
      if (!e || e.disabled) return null;
      e.scrollIntoView({ block: 'center' });
      const seen = () => new Promise((done) => requestAnimationFrame(() => {
        const r = e.getClientRects()[0];
        done(r && [Math.round(r.x + r.width / 2), Math.round(r.y + r.height / 2)]);
      }));
      const first = await seen();
      const second = await seen();
      const still = first && second && first.join() === second.join();
      return still && e.contains(document.elementFromPoint(...second)) ? second : null;
    })(${found})`,
  );
  const [x, y] = middle as [number, number];
  const actions = [
    { type: 'pointerMove', x, y, origin: 'viewport' },
    { type: 'pointerDown', button: 0 },
    { type: 'pointerUp', button: 0 },
  ];
  await tab.act([{ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions }]);
}
