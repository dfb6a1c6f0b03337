/** Money in words. One number format for each currency and language: making one costs more than using it. */

const formats = new Map<string, Intl.NumberFormat>();

function formatFor(currency: string, lang: string): Intl.NumberFormat {
  const key = `${lang} ${currency}`;
  const known = formats.get(key) ?? new Intl.NumberFormat(lang, { style: 'currency', currency });
  formats.set(key, known);
  return known;
}

/**
 * An amount of money as the reader's language writes it.
 * @param amount in units of the currency @param currency ISO 4217 code @param lang BCP 47, "en" if not given
 * @returns the amount with its sign and the currency's own number of decimals
 * Example: sayMoney(1450.5, 'USD') -> '$1,450.50'.
 */
export function sayMoney(amount: number, currency: string, lang = 'en'): string {
  return formatFor(currency, lang).format(amount);
}

/**
 * What people may write beside an amount of a currency: its code and its signs, the longest first.
 * @param currency ISO 4217 code @returns such as ["US$", "USD", "$"]
 */
export function currencySigns(currency: string): readonly string[] {
  const known = signs.get(currency) ?? signsOf(currency);
  signs.set(currency, known);
  return known;
}

const signs = new Map<string, readonly string[]>();

function signsOf(currency: string): readonly string[] {
  const sign = (currencyDisplay: 'symbol' | 'narrowSymbol', lang: string) =>
    new Intl.NumberFormat(lang, { style: 'currency', currency, currencyDisplay })
      .formatToParts(1)
      .find((p) => p.type === 'currency')?.value ?? currency;
  const all = new Set([currency, sign('narrowSymbol', 'en'), sign('symbol', 'en'), sign('symbol', 'en-CA')]);
  return [...all].sort((a, b) => b.length - a.length);
}
