/** Amounts and days as the customer writes them. */
import type { Lang } from '../../../words/lang.ts';

/**
 * Amounts are written as where the money comes from: the first two letters of most currency codes name a country,
 * so dollars read $1,300.00 and 1.300,00 € stays 1.300,00 € in Spanish. Codes that name none, as EUR or XAF, fall back to the language.
 */
function localeOf(language: Lang, currency: string): string {
  return `${language}-${currency.slice(0, 2)}`;
}

/** One format for each language and currency: making one costs more than a hundred amounts written with it. */
const formats = new Map<string, Intl.NumberFormat>();

function formatFor(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale} ${options.currency ?? ''}`;
  const known = formats.get(key) ?? new Intl.NumberFormat(locale, options);
  formats.set(key, known);
  return known;
}

export function moneyWriter(language: Lang, currency: string): (amount: number) => string {
  const format = formatFor(localeOf(language, currency), { style: 'currency', currency });
  return (amount) => format.format(amount);
}

export function numberWriter(language: Lang, currency: string): (value: number) => string {
  const format = formatFor(localeOf(language, currency), { maximumFractionDigits: 1 });
  return (value) => format.format(value);
}

/** @param day YYYY-MM-DD; a day out of all bounds is written as it stands */
export function dayWriter(language: Lang, currency: string): (day: string) => string {
  const format = new Intl.DateTimeFormat(localeOf(language, currency), { dateStyle: 'long', timeZone: 'UTC' });
  return (day) => {
    const moment = new Date(`${day}T00:00:00Z`);
    return Number.isNaN(moment.getTime()) ? day : format.format(moment);
  };
}
