/** The text of a new shop's shop.yaml, every field explained where it stands. */
import { stringify } from 'yaml';
import { machineKinds } from '../../schemas/machine-kinds.ts';
import { first, languages, nameOf, others, wordsIn, type Other } from '../../words/lang.ts';

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
# ${first} is always there; ${others.map((lang) => `${lang} adds the ${nameOf(lang)} pages for customers`).join(', ')}: [${languages.join(', ')}]
languages: [${shop.languages.join(', ')}]

# What follows may stay as it is. Take a # away where you want the field.

# Where the site will live, for printed codes, search engines and the cards of messages.
# site: https://example.org/shop/
# Your sign: a file beside this one, .svg or .png. It stands in the header and is the site's icon.
# mark: mark.svg
# One color for what can be pressed. The check says when it is too pale, or too like the color of a caution.
# color: "#5b2a86"
# Something every reader should see now, on the start page and the page "The shop".
# notice: Closed from December 24 to January 2.
# What to bring with a machine, and what a look costs.
# visit:
#   bring:
#     - The machine, its engine cold and its tank empty.
#   look: A look costs half an hour of labor.
# Words of the start page in place of the almanac's own. Each may be left out.
# front:
#   summary: Care guides for saws and pressure washers, and the bench almanac behind them.
#   question: What does the machine need?
#   use: I use a machine
#   useSays: Checks, water, dust, trouble
#   repair: I repair them
#   repairSays: Faults, fits, belts, worth
# What you call a kind of machine.
# kinds:
#   other: Pressure washers
# Pages of the almanac that you do not publish. Links to them go with them.
# leaveOut: [tables/bolt-torques, calculators/split-pulley]
${others.map(inAnother).join('')}`;
}

function inAnother(lang: Other): string {
  const { line, hours } = wordsIn(lang).newShop;
  return `# The same in ${nameOf(lang)}: line, hours, visit, notice, front, kinds. What is missing shows in English.
# ${lang}:
#   line: ${value(line)}
#   hours:
#     - ${value(hours)}
`;
}

export const pagesNote = `# Your own pages

A legal notice, what is kept about readers, who works here: one .mdx file each, named at the foot of every page. One
in another language stands in the folder of its code (${others.join('/, ')}/) under the same name. For example legal.mdx:

---
title: Legal notice
summary: Who is behind this site, and how to reach them.
reviewed: 2026-01-31
---

Name, address, register number.

Files that start with a dot are passed over, so this one is not published.
`;

export const firstNote = `# Machines

One file for each machine you see, ending in .yaml: its name, its kind (${machineKinds.join(', ')}),
a summary, and under "facts" what its plate says. "npm run new" writes one, with every fact named that it may have.
Files that start with a dot are passed over, so this one is not published.
`;
