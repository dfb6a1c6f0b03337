/** The text of a new shop's shop.yaml, every field explained where it stands. */
import { stringify } from 'yaml';

export interface NewShop {
  readonly name: string;
  readonly line: string;
  readonly address: readonly string[];
  readonly phone: string;
  readonly hours: readonly string[];
  readonly currency: string;
  readonly labourRate: number;
  readonly tax: number;
  readonly units: 'metric' | 'inch';
  readonly languages: readonly string[];
}

/** A value as YAML writes it, quoted where it must be. */
const value = (v: unknown) => stringify(v, { lineWidth: 0 }).trim();
const list = (lines: readonly string[]) => lines.map((line) => `  - ${value(line)}`).join('\n');

export function shopFileText(shop: NewShop): string {
  return `# Who the site belongs to. Every field may be changed; "npm run content" checks what you wrote.

# Shown at the top of every page and on every printed sheet.
name: ${value(shop.name)}
# One line that says what you do.
line: ${value(shop.line)}
# True puts a note on every page that the shop is made up. Yours is not.
invented: false
# Street and town, one line each.
address:
${list(shop.address)}
# As people should dial it. In quotes, so that it stays as you write it.
phone: ${JSON.stringify(shop.phone)}
# When the shop is open, one line each.
hours:
${list(shop.hours)}
# Three capitals: USD, EUR, MXN ...
currency: ${shop.currency}
# What an hour at the bench costs the customer, before tax. A point, not a comma: 42.50
labourRate: ${shop.labourRate}
# Sales tax in percent, on parts and on labor. 0 for none.
tax:
  parts: ${shop.tax}
  labour: ${shop.tax}
# Units shown first: metric or inch. Every box reads both.
units: ${shop.units}
# en is always there; add es for the Spanish pages customers read.
languages: [${shop.languages.join(', ')}]
# Where the site will live, for printed codes, search engines and the cards of messages. Take the # away and put your address in.
# site: https://example.org/shop/
`;
}

export const firstNote = `# Machines

One file for each machine you see, ending in .yaml: its name, its kind (cut-off-saw, twin-blade-saw, floor-saw,
ring-saw, other), a summary, and under "facts" what its plate says. src/core/machine/facts.ts lists the facts.
Files that start with a dot are passed over, so this one is not published.
`;
