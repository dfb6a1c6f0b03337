/** content/shop/shop.yaml: everything that makes this *this* shop's site. */
import { z } from 'astro/zod';
import { text } from './words.ts';

const currencies = new Set(Intl.supportedValuesOf('currency'));

const visit = {
  bring: z.array(text(3)).min(1),
  look: text(10),
};

export const shop = z.strictObject({
  /** Shown at the top of every page and on every printed sheet. */
  name: z.string().max(60).pipe(text(2)),
  /** One line under the name. */
  line: z.string().max(120).pipe(text(5)),
  /** True while the shop, its machines and customers are made up; the site then says so on every page. */
  invented: z.boolean(),
  address: z.array(text()).min(1),
  phone: text(3),
  hours: z.array(text()).min(1),
  /** For the page "The shop": what to bring with a machine, and what a look at it costs. */
  visit: z.strictObject(visit).optional(),
  /** The line, the hours and the visit in Spanish; without it the Spanish pages show the English ones, marked as such. */
  es: z
    .strictObject({
      line: z.string().max(120).pipe(text(5)).optional(),
      hours: z.array(text()).min(1).optional(),
      visit: z.strictObject(visit).optional(),
    })
    .optional(),
  /** ISO 4217, three letters. */
  currency: z
    .string()
    .refine((code) => currencies.has(code), 'a currency that exists, by its ISO 4217 code, like USD, EUR or MXN'),
  /** What an hour of bench work costs the customer. */
  labourRate: z.number().positive().max(1_000_000),
  /** Sales tax on parts and on labour, in percent. */
  tax: z.strictObject({ parts: z.number().min(0).max(50), labour: z.number().min(0).max(50) }),
  /** Units shown first. */
  units: z.enum(['metric', 'inch']),
  /** Every language the site speaks; English carries the mechanic's pages and is always one of them. */
  languages: z
    .array(z.enum(['en', 'es']))
    .refine((list) => list.includes('en'), 'en among them: the pages for mechanics are in English')
    .refine((list) => new Set(list).size === list.length, 'each language once'),
  /** Address the site will live at, like https://example.org/shop/ : for printed codes, search engines and cards. Without it there are none. */
  site: z
    .url()
    .refine((address) => /^https?:/.test(address), 'an address that begins with https:// or http://')
    .optional(),
});

export type Shop = z.infer<typeof shop>;
