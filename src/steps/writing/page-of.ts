/** The page that an article's file is. */
import { kindOf } from '../../schemas/kinds.ts';
import { addressIn, splitName } from '../../words/lang.ts';

/** @param file from its place: "guides/es/belt.mdx" -> "/es/guides/belt/"; nothing for what is no page of its own */
export function pageOf(file: string): string | undefined {
  const [, folder = '', id = ''] = /^(\w+)\/((?:[a-z]{2}\/)?[\w-]+)\.mdx$/.exec(file) ?? [];
  if (kindOf(folder)?.ending !== 'mdx') return undefined;
  const { lang, name } = splitName(id);
  return addressIn(lang, `/${folder}/${name}/`);
}
