/**
 * The device's storage, which may be full or shut off. What it does not take stays in this page and is tried again with
 * the next record; nothing is thrown.
 */
export type Health = 'kept' | 'full' | 'denied';

let health: Health = 'kept';
/** Texts the device did not take, by key. */
const held = new Map<string, string>();

export const healthNow = (): Health => health;
export const heldKeys = (): readonly string[] => [...held.keys()];

function shelf(): Storage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

export function getText(key: string): string | undefined {
  if (held.has(key)) return held.get(key);
  try {
    return shelf()?.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

function put(key: string, text: string): boolean {
  try {
    const room = shelf();
    if (!room) throw new Error('shut off');
    room.setItem(key, text);
    held.delete(key);
    return true;
  } catch (reason) {
    // Private windows that keep nothing say the same as a full device; they have room for not one letter.
    health = (reason as Error).name === 'QuotaExceededError' && shelf()?.length ? 'full' : 'denied';
    held.set(key, text);
    return false;
  }
}

/** @returns true when the device took it */
export function putText(key: string, text: string): boolean {
  if (!put(key, text)) return false;
  health = 'kept';
  for (const [later, kept] of [...held]) if (!put(later, kept)) break;
  return true;
}

export function dropText(key: string): void {
  held.delete(key);
  try {
    shelf()?.removeItem(key);
  } catch {
    // Nothing was kept, so nothing is left.
  }
}

export function keysFrom(prefix: string): readonly string[] {
  try {
    const all = new Set([...Object.keys(shelf() ?? {}), ...held.keys()]);
    return [...all].filter((key) => key.startsWith(prefix)).sort();
  } catch {
    return [...held.keys()].filter((key) => key.startsWith(prefix)).sort();
  }
}
