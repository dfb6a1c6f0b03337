/** content/shop/shop.yaml: everything that makes this *this* shop's site. */
import { z } from 'astro/zod';

export const shop = z.strictObject({
  /** Shown at the top of every page and on every printed sheet. */
  name: z.string().min(2),
  /** One line under the name. */
  line: z.string().min(5),
  /** True while the shop, its machines and customers are made up; the site then says so on every page. */
  invented: z.boolean(),
  address: z.array(z.string()).min(1),
  phone: z.string().min(3),
  hours: z.array(z.string()).min(1),
  /** ISO 4217, three letters. */
  currency: z.string().regex(/^[A-Z]{3}$/, 'must be a currency code of three capitals, like USD'),
  /** What an hour of bench work costs the customer. */
  labourRate: z.number().positive(),
  /** Sales tax on parts and on labour, in percent. */
  tax: z.strictObject({ parts: z.number().min(0).max(50), labour: z.number().min(0).max(50) }),
  /** Units shown first. */
  units: z.enum(['metric', 'inch']),
  languages: z.array(z.enum(['en', 'es'])).min(1),
  /** Address the site will live at, for the code printed on guides: https://example.org/shop/ . Leave out to print none. */
  site: z.url().optional(),
});

export type Shop = z.infer<typeof shop>;
