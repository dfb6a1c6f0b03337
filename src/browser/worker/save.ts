/** Saves every file of this edition. A file is kept only when its bytes are the ones the list names. */

import { encodePath } from '../address/index.ts';

/** Path in the site -> start of its SHA-256, in hex. */
export type FileList = Readonly<Record<string, string>>;

const hashHeader = 'x-almanac-hash';
const atOnce = 12;

export async function saveAll(
  files: FileList,
  scope: string,
  into: Cache,
  older: readonly Cache[],
  tell: (done: number) => void,
): Promise<void> {
  const waiting = Object.entries(files);
  let done = 0;
  const failures: unknown[] = [];
  const work = async () => {
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      try {
        await saveOne(scope + encodePath(next[0]), next[1], into, older);
        done += 1;
        tell(done);
      } catch (reason) {
        // The rest is still worth having: the next try starts from what was saved.
        failures.push(reason);
      }
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  if (failures.length > 0) throw failures[0];
}

/** Unchanged files come from an older edition or from a first save that was cut short; the rest from the server. */
async function saveOne(address: string, hash: string, into: Cache, older: readonly Cache[]): Promise<void> {
  for (const cache of [into, ...older]) {
    const kept = await cache.match(address);
    if (kept?.headers.get(hashHeader) !== hash) continue;
    if (cache !== into) await into.put(address, kept);
    return;
  }
  const response = await fetch(address, { cache: 'no-cache' });
  const bytes = await response.arrayBuffer();
  // A site that is half-way through being published must not become the saved edition.
  if (!response.ok || (await sha256(bytes)) !== hash) throw new Error(`${address} is not the file this edition names.`);
  const headers = {
    'content-type': response.headers.get('content-type') ?? 'application/octet-stream',
    [hashHeader]: hash,
  };
  await into.put(address, new Response(bytes, { headers }));
}

async function sha256(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest.subarray(0, 8), (b) => b.toString(16).padStart(2, '0')).join('');
}
