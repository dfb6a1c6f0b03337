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

async function load(name: string): Promise<string> {
  if (!arrived.has(name)) await addScript(new URL(`${name}.js`, here).href);
  const said = arrived.get(name) ?? '';
  arrived.delete(name);
  return said;
}

/** The text of a file that was packed as text. */
export const readText = load;

export async function hostFetch(
  address: string,
): Promise<{ ok: boolean; status: number; json: () => Promise<unknown>; arrayBuffer: () => Promise<ArrayBuffer> }> {
  const said = await load(address.replace(/^.*\/pagefind\//, '').replace(/\?.*$/, ''));
  const bytes = Uint8Array.from(atob(said), (letter) => letter.charCodeAt(0));
  return {
    ok: true,
    status: 200,
    json: () => Promise.resolve(JSON.parse(new TextDecoder().decode(bytes)) as unknown),
    arrayBuffer: () => Promise.resolve(bytes.buffer),
  };
}

function addScript(src: string): Promise<void> {
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
