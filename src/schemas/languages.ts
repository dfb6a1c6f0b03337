/** What a record says in other languages than English: each under its own code, beside the English words. */
import { z } from 'astro/zod';
import { first, languages, nameOf, others, type Lang, type Other } from '../words/lang.ts';

/** The codes of all languages, for a field that names one. */
export const langCode = z.enum(languages as [Lang, ...Lang[]]);

/**
 * A field for each other language. None is needed here: the content check asks for those the shop speaks
 * (src/steps/content-check/said-in-each.ts), so that a shop in one language writes in one.
 */
export function inOthers<S extends z.ZodType>(
  said: S,
  describe: (language: string) => string = (language) => `The same in ${language}.`,
): Record<Other, z.ZodOptional<S>> {
  return Object.fromEntries(others.map((lang) => [lang, said.optional().describe(describe(nameOf(lang)))])) as Record<
    Other,
    z.ZodOptional<S>
  >;
}

/** A record's words in a language; in English where it has none in it. */
export function saidIn<R extends Readonly<Partial<Record<Other, unknown>>>>(
  record: R,
  lang: Lang,
): R | NonNullable<R[Other]> {
  return (lang === first ? undefined : (record[lang] as NonNullable<R[Other]> | undefined)) ?? record;
}
