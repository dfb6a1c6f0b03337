/** content/shop/shop.yaml: everything that makes this *this* shop's site. */
import { z } from 'astro/zod';
import { pagePath } from './article.ts';
import { inOthers, langCode } from './languages.ts';
import { machineKinds } from './machine-kinds.ts';
import { text } from './words.ts';

const currencies = new Set(Intl.supportedValuesOf('currency'));

const visit = z
  .strictObject({
    bring: z.array(text(3)).min(1).describe('What to bring with a machine, one line each.'),
    look: text(10).describe('What a look at a machine costs, and what happens then.'),
  })
  .describe('For the page "The shop": what to bring, and what a look costs.');

/** The start page is laid out for words about as long as the almanac's own. */
const short = (most: number) => z.string().max(most).pipe(text(2)).optional();

const front = z
  .strictObject({
    summary: z
      .string()
      .max(220)
      .pipe(text(20))
      .optional()
      .describe('One sentence that search engines and cards of messages show for the start page.'),
    question: short(50).describe('The heading: a question a reader comes with.'),
    use: short(30).describe('The door for whoever uses a machine.'),
    useSays: short(60).describe('The line below it.'),
    repair: short(30).describe('The door for whoever repairs them.'),
    repairSays: short(60).describe('The line below it.'),
  })
  .describe('Words of the start page in place of the almanac’s own; each may be left out.');

const kindNames = z
  .partialRecord(z.enum(machineKinds), z.string().max(40).pipe(text(2)))
  .describe('What the shop calls a kind of machine, like other: Pressure washers.');

/** What is said in each language; English stands at the top of the file, the others under their own name. */
const said = {
  line: z.string().max(120).pipe(text(5)).describe('What you do, in one line.'),
  hours: z.array(text()).min(1).describe('When the shop is open, one line each.'),
  visit: visit.optional(),
  notice: z
    .string()
    .max(160)
    .pipe(text(5))
    .optional()
    .describe('Something every reader should see now, on the start page and the page "The shop".'),
  front: front.optional(),
  kinds: kindNames.optional(),
};

const inAnother = z.strictObject({ ...said, line: said.line.optional(), hours: said.hours.optional() });

export const shop = z.strictObject({
  name: z.string().max(60).pipe(text(2)).describe('Shown at the top of every page and on every printed sheet.'),
  ...said,
  invented: z
    .boolean()
    .describe('True while the shop, its machines and customers are made up; the site then says so on every page.'),
  address: z.array(text()).min(1).describe('Street and town, one line each.'),
  phone: text(3).describe('As people should dial it, in quotes.'),
  ...inOthers(
    inAnother,
    (language) =>
      `Line, hours, visit, notice, front and kinds in ${language}; what is missing shows in English, marked as such.`,
  ),
  currency: z
    .string()
    .refine((code) => currencies.has(code), 'a currency that exists, by its ISO 4217 code, like USD, EUR or MXN')
    .describe('ISO 4217, three letters.'),
  labourRate: z
    .number()
    .positive()
    .max(1_000_000)
    .describe('What an hour at the bench costs the customer, before tax.'),
  tax: z
    .strictObject({
      parts: z.number().min(0).max(50).describe('On parts.'),
      labour: z.number().min(0).max(50).describe('On labor.'),
    })
    .describe('Sales tax on parts and on labor, in percent.'),
  units: z.enum(['metric', 'inch']).describe('Units shown first; every box reads both.'),
  languages: z
    .array(langCode)
    .refine((list) => list.includes('en'), 'en among them: the pages for mechanics are in English')
    .refine((list) => new Set(list).size === list.length, 'each language once')
    .describe('Every language the site speaks; English carries the mechanic’s pages and is always one of them.'),
  site: z
    .url()
    .refine((address) => /^https?:/.test(address), 'an address that begins with https:// or http://')
    .refine((address) => !/[?#\s]/.test(address), 'an address of a folder: without ?, # and blanks')
    .optional()
    .describe(
      'Address the site will live at, like https://example.org/shop/ : for printed codes, search engines and cards. Without it there are none.',
    ),
  mark: z
    .string()
    .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*\.(?:svg|png)$/, 'a file beside shop.yaml ending in .svg or .png, like mark.svg')
    .optional()
    .describe(
      'The shop’s sign: a file beside shop.yaml, .svg or .png. It stands in the header and is the site’s icon.',
    ),
  color: z
    .string()
    .regex(/^#[0-9a-f]{6}$/i, 'six hexadecimal digits after a #, in quotes, like "#5b2a86"')
    .optional()
    .describe(
      'One color for what can be pressed, in quotes. The check says when it is too pale or too like a caution.',
    ),
  leaveOut: z
    .array(pagePath)
    .default([])
    .describe(
      'Pages of the knowledge that this shop does not publish, like tables/bolt-torques or calculators/split-pulley. Links to them go with them; a short form inside an article stays with its article.',
    ),
});

export type Shop = z.infer<typeof shop>;
