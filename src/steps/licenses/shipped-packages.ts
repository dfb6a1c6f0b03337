/** Notes whose code Vite puts into the scripts a reader gets: only they need be named in the licenses. */
import type { Plugin } from 'vite';

/** Folders of packages, "/.../node_modules/preact". */
export type PackageFolders = Set<string>;

export function notePackages(found: PackageFolders): Plugin {
  return {
    name: 'almanac-shipped-packages',
    generateBundle(_, bundle) {
      if (this.environment.name !== 'client') return;
      for (const file of Object.values(bundle))
        if (file.type === 'chunk')
          for (const id of file.moduleIds) {
            const folder = packageFolder(id);
            if (folder !== undefined) found.add(folder);
          }
    },
  };
}

/** The package a module belongs to, the innermost where packages lie in one another. */
export function packageFolder(id: string): string | undefined {
  return /^\0?(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(id)?.[1];
}
