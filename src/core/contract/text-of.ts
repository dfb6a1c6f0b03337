/**
 * Any value as short text for a message: whole where it is short, cut where it is not, and never deeper than one
 * level, so that a value of any size or depth can be named.
 * @param value anything that came from outside @param most signs kept @returns text of at most `most` signs and an ellipsis
 * Example: textOf([1, [2, 3]]) -> '[1, …]'. Example: textOf('x'.repeat(100)).length -> 91.
 */
export function textOf(value: unknown, most = 90): string {
  const text = typeof value === 'object' && value !== null ? inside(value) : plain(value);
  return text.length > most ? `${text.slice(0, most)}…` : text;
}

function inside(value: object): string {
  if (Array.isArray(value)) {
    const shown = value.slice(0, 10).map(oneOf);
    return `[${[...shown, ...(value.length > shown.length ? ['…'] : [])].join(', ')}]`;
  }
  const keys = Object.keys(value);
  const shown = keys.slice(0, 10).map((k) => `${k.slice(0, 30)}: ${oneOf((value as Record<string, unknown>)[k])}`);
  return `{${[...shown, ...(keys.length > shown.length ? ['…'] : [])].join(', ')}}`;
}

function oneOf(value: unknown): string {
  return typeof value === 'object' && value !== null ? '…' : plain(value).slice(0, 100);
}

function plain(value: unknown): string {
  switch (typeof value) {
    case 'string':
      return value;
    case 'number':
    case 'boolean':
    case 'bigint':
    case 'undefined':
      return String(value);
    default:
      return value === null ? 'null' : typeof value;
  }
}
