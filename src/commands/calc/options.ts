/** What stands behind `calc` on the command line, read strictly: a slip is named, never passed over. */
import { textOf } from '../../core/contract/text-of.ts';

export const usage = `Use:
  calc --list                           every topic and block
  calc <topic>[/<block>] --fields       what it asks for, as JSON
  calc <topic>[/<block>] < lines        one JSON object a line in, one result a line out
  calc --help                           this text
Options:
  --currency <code>                     currency of all money, three letters (USD if not given)

What a line leaves out stands in the answer under "taken", with the figure used in its place.
A bare number in a line is in the metric unit of its field; text may carry a unit: {"diameter": "14 in"}.
Every figure that comes back is in the unit named beside it. Money comes back in the currency, to its last coin.
Exit: 0 every line gave values, 1 some line had problems, 2 the command or a line could not be read,
3 the answers could not be written.`;

export interface Options {
  readonly currency: string;
}

export type Asked =
  | { readonly what: 'help' | 'list' }
  | ({ readonly what: 'fields' | 'answers'; readonly name: string } & Options)
  | { readonly what: 'mistake'; readonly says: string };

const flags = ['--list', '--fields', '--help', '-h', '--currency'];

/**
 * The wish behind the words of a command line.
 * @param args what stands behind the command @returns what is asked for, or the mistake in words
 */
export function readArguments(args: readonly string[]): Asked {
  const names: string[] = [];
  const given = new Set<string>();
  let currency = 'USD';
  for (let at = 0; at < args.length; at += 1) {
    const arg = args[at] ?? '';
    if (!arg.startsWith('-')) names.push(arg);
    else if (!flags.includes(arg))
      return mistake(`There is no option "${textOf(arg)}". There are ${flags.join(', ')}.`);
    else given.add(arg);
    if (arg !== '--currency') continue;
    at += 1;
    currency = (args[at] ?? '').toUpperCase();
    if (!Intl.supportedValuesOf('currency').includes(currency))
      return mistake(
        `--currency wants a currency code of three letters, like USD; "${textOf(args[at] ?? '')}" is none.`,
      );
  }
  if (given.has('--help') || given.has('-h')) return { what: 'help' };
  if (names.length > 1) return mistake(`One topic at a time; here are ${names.length}: ${textOf(names.join(', '))}.`);
  const [name] = names;
  if (given.has('--list'))
    return name === undefined ? { what: 'list' } : mistake('--list takes no topic; --fields shows what one asks for.');
  if (name === undefined) return mistake('Name a topic.');
  return { what: given.has('--fields') ? 'fields' : 'answers', name, currency };
}

function mistake(says: string): Asked {
  return { what: 'mistake', says };
}
