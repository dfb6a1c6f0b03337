/**
 * Texts begun and not yet handed over: a note half written, a saw half described. A window keeps its own, so that two
 * windows can be at two notes; they outlive a reload, the way back and a new edition.
 */
const keyOf = (name: string): string => `almanac-begun-${name}`;

export type Texts = Readonly<Record<string, string>>;

/** Nothing where nothing was kept, or what was kept does not read. */
export function begun(name: string): Texts {
  try {
    const kept = JSON.parse(sessionStorage.getItem(keyOf(name)) ?? '{}') as unknown;
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter((t): t is [string, string] => typeof t[1] === 'string'));
  } catch {
    return {};
  }
}

/** Keeps them; with nothing but empty texts there is nothing to keep. */
export function keepBegun(name: string, texts: Texts): void {
  try {
    if (Object.values(texts).every((text) => text === '')) sessionStorage.removeItem(keyOf(name));
    else sessionStorage.setItem(keyOf(name), JSON.stringify(texts));
  } catch {
    // Shut off or full: they then hold until the page is left.
  }
}
