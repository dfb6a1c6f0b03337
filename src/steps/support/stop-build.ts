/** How a step stops a build: Astro's own kind of error, with a hint, so that whoever called the build can catch it. */
import { AstroError } from 'astro/errors';

/** `list` is for people and names every place, so no stack trace follows it. */
export function stopBuild(message: string, hint: string, list?: string): never {
  if (list !== undefined) console.error(list);
  const error = new AstroError(message, hint);
  error.stack = '';
  throw error;
}
