/**
 * Stands in for `fetch` inside the packed search engine: each file of the index is a small
 * classic script that hands over its bytes, added to the page when it is asked for.
 */
const here = (document.currentScript as HTMLScriptElement).src;
const arrived = new Map<string, string>();

/** What a file's script hands over: its bytes in base64, or its text. */
export function put(name: string, said: string): void {
  arrived.set(name, said);
}

/** The text of a file that was packed as text. */
export async function readText(name: string): Promise<string> {
  if (!arrived.has(name)) await addScript(name);
  const said = arrived.get(name) ?? '';
  arrived.delete(name);
  return said;
}

/** A script that hands over several files, which are asked for by their own names after it. */
export async function readBundle(name: string): Promise<void> {
  await addScript(name);
}

/** Every part of the index asks for Pagefind's program; there is one, which stays. */
const program = /^(?:\d+\/)?(wasm\.\w+\.pagefind)$/;

export async function hostFetch(
  address: string,
): Promise<{ ok: boolean; status: number; json: () => Promise<unknown>; arrayBuffer: () => Promise<ArrayBuffer> }> {
  const name = address.replace(/^.*\/pagefind\//, '').replace(/\?.*$/, '');
  const shared = program.exec(name)?.[1];
  const bytes = fromBase64(shared === undefined ? await readText(name) : (arrived.get(shared) ?? ''));
  return {
    ok: true,
    status: 200,
    json: () => Promise.resolve(JSON.parse(new TextDecoder().decode(bytes)) as unknown),
    arrayBuffer: () => unpacked(bytes),
  };
}

/** Pagefind waits for its own start by asking again and again, 50 ms apart; here it asks as soon as it may. */
export function hostSoon(what: () => void, after?: number): void {
  globalThis.setTimeout(what, after === 50 ? 1 : after);
}

/** A loop: `Uint8Array.from` takes ten times as long. */
function fromBase64(said: string): Uint8Array<ArrayBuffer> {
  const letters = atob(said);
  const bytes = new Uint8Array(letters.length);
  for (let at = 0; at < letters.length; at += 1) bytes[at] = letters.charCodeAt(at);
  return bytes;
}

/** The browser unpacks in a fraction of the time Pagefind's own code takes, which still serves one that cannot. */
async function unpacked(bytes: Uint8Array<ArrayBuffer>): Promise<ArrayBuffer> {
  const isGzip = bytes[0] === 0x1f && bytes[1] === 0x8b;
  if (!isGzip || typeof DecompressionStream === 'undefined') return bytes.buffer;
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
}

function addScript(name: string): Promise<void> {
  const src = new URL(`${name}.js`, here).href;
  return new Promise((done, failed) => {
    const tag = document.createElement('script');
    tag.src = src;
    tag.onload = () => {
      tag.remove();
      done();
    };
    tag.onerror = () => {
      tag.remove();
      failed(new Error(`A part of the search index is missing: ${src}`));
    };
    document.head.append(tag);
  });
}
