/** Rings of imports: a file that, followed far enough, imports itself. */
import type { Import } from './imports.ts';

/** Each ring once, as the imports that make it. */
export function cycles(imports: readonly Import[]): Import[][] {
  const from = new Map<string, Import[]>();
  for (const i of imports) if (i.to !== undefined) from.set(i.from, [...(from.get(i.from) ?? []), i]);
  const done = new Set<string>();
  const found: Import[][] = [];
  const follow = (file: string, trail: readonly Import[]): void => {
    const start = trail.findIndex((i) => i.from === file);
    if (start >= 0) return void found.push(trail.slice(start));
    if (done.has(file)) return;
    for (const next of from.get(file) ?? []) follow(next.to ?? '', [...trail, next]);
    done.add(file);
  };
  for (const file of from.keys()) follow(file, []);
  return found;
}
