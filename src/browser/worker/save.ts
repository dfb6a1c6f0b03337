/** Saves files of this edition. A file is kept only when its bytes are the ones the list names. */
import { encodePath } from '../address/index.ts';
import { typeOf } from '../address/types.ts';

/** Path in the site -> start of its SHA-256, in hex. */
export type FileList = Readonly<Record<string, string>>;

export interface Outcome {
  /** Files that came, but not as the list names them: half published, or altered by the host. */
  readonly altered: readonly string[];
  /** Files that did not come. */
  readonly missing: readonly string[];
  /** Files the device had no room for. */
  readonly noRoom: readonly string[];
}

const atOnce = 12;

export async function saveAll(
  files: FileList,
  scope: string,
  into: Cache,
  older: readonly Cache[],
  tell: (done: number) => void,
): Promise<Outcome> {
  const waiting = Object.entries(files);
  const altered: string[] = [];
  const missing: string[] = [];
  const noRoom: string[] = [];
  let done = 0;
  const work = async () => {
    // The rest is still worth having when one fails: the next try starts from what was saved.
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      const [file, hash] = next;
      const came = await saveOne(file, hash, scope, into, older).catch(whyNot);
      if (came === 'altered') altered.push(file);
      else if (came === 'missing') missing.push(file);
      else if (came === 'no-room') noRoom.push(file);
      else tell(++done);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return { altered: altered.sort(), missing: missing.sort(), noRoom: noRoom.sort() };
}

/** A store that is full says so by name; all else is taken for a lost signal. */
function whyNot(reason: unknown): 'no-room' | 'missing' {
  return reason instanceof Error && reason.name === 'QuotaExceededError' ? 'no-room' : 'missing';
}

/** Unchanged files come from an older edition or from a first save that was cut short; the rest from the server. */
async function saveOne(
  file: string,
  hash: string,
  scope: string,
  into: Cache,
  older: readonly Cache[],
): Promise<'saved' | 'altered' | 'missing'> {
  const address = scope + encodePath(file);
  for (const cache of [into, ...older]) {
    const kept = await (await cache.match(address))?.arrayBuffer();
    if (!kept || (await sha256(kept)) !== hash) continue;
    if (cache !== into) await into.put(address, ofType(file, kept));
    return 'saved';
  }
  const response = await fetch(address, { cache: 'no-cache' });
  if (!response.ok) return 'missing';
  const bytes = await response.arrayBuffer();
  if ((await sha256(bytes)) !== hash) return 'altered';
  await into.put(address, ofType(file, bytes, response));
  return 'saved';
}

/** Asked before all files are fetched again from a host that altered them the last time. */
export async function isAltered(file: string, hash: string, scope: string): Promise<boolean> {
  const response = await fetch(scope + encodePath(file), { cache: 'no-cache' });
  return response.ok && (await sha256(await response.arrayBuffer())) !== hash;
}

function ofType(file: string, bytes: ArrayBuffer, from?: Response): Response {
  const type = typeOf(file) ?? from?.headers.get('content-type') ?? 'application/octet-stream';
  return new Response(bytes, { headers: { 'content-type': type } });
}

async function sha256(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest.subarray(0, 8), (b) => b.toString(16).padStart(2, '0')).join('');
}
