/** A module that stands in no file: what it says is made when it is asked for. */
import type { Plugin } from 'vite';

/** @param asked what pages import, like "almanac:edition" */
export function virtualModule(asked: string, code: () => string | Promise<string>): Plugin {
  const resolved = `\0${asked}`;
  return {
    name: asked,
    resolveId: (id: string) => (id === asked ? resolved : undefined),
    load: (id: string) => (id === resolved ? code() : undefined),
  };
}
