/**
 * What is made once for the whole site, when a page first asks for it. Whoever asks has read what it was made of: a build
 * that keeps pages (src/steps/pages/) is told so here, or it would keep one whose words have changed.
 */
import { reads } from 'almanac:reads';

/** @param name no other has it */
export function once<T>(name: string, make: () => Promise<T>): () => Promise<T> {
  const one = onceFor(name, make);
  return () => one('');
}

/** One for each key. */
export function onceFor<K extends string, T>(name: string, make: (key: K) => Promise<T>): (key: K) => Promise<T> {
  const all = new Map<K, Promise<T>>();
  return (key) => {
    const whole = `${name} ${key}`;
    reads?.uses(whole);
    const made = all.get(key) ?? (reads ? reads.making(whole, () => make(key)) : make(key));
    all.set(key, made);
    return made;
  };
}
