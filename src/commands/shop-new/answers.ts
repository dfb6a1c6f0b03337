/** What "npm run shop:new" asks, each question with its flag, its check and what to write when it is refused. */
import { first, isLang, languages, others } from '../../words/lang.ts';
import type { NewShop } from './shop-file.ts';

interface Question {
  readonly flag: string;
  readonly ask: string;
  readonly usual: string;
  /** Says what is wrong, or nothing. */
  readonly wrong: (text: string) => string | undefined;
}

const currencies = new Set(Intl.supportedValuesOf('currency'));
const needed = (text: string) => (text.trim() === '' ? 'this cannot be left empty' : undefined);
const number = (least: number, most: number) => (text: string) => {
  const n = Number(text.replace('%', '').trim());
  if (text.includes(',')) return `"${text}": write a point for the comma, like 42.50`;
  if (!Number.isFinite(n) || n < least || n > most) return `"${text}": a number from ${least} to ${most}`;
  return undefined;
};

export const questions = [
  { flag: 'name', ask: 'Name of the shop', usual: '', wrong: needed },
  { flag: 'line', ask: 'What you do, in one line', usual: 'Saws and small engines, repaired', wrong: needed },
  { flag: 'address', ask: 'Address, lines apart by ";"', usual: '', wrong: needed },
  { flag: 'phone', ask: 'Phone', usual: '', wrong: needed },
  { flag: 'hours', ask: 'Hours, lines apart by ";"', usual: '', wrong: needed },
  {
    flag: 'currency',
    ask: 'Currency, three capitals',
    usual: 'USD',
    wrong: (text) => (currencies.has(text.trim()) ? undefined : `"${text}": three capitals of a currency, like EUR`),
  },
  { flag: 'rate', ask: 'An hour at the bench, before tax', usual: '', wrong: number(0.01, 1_000_000) },
  { flag: 'tax', ask: 'Sales tax in percent', usual: '0', wrong: number(0, 50) },
  {
    flag: 'units',
    ask: 'Units shown first, metric or inch',
    usual: 'metric',
    wrong: (text) => (['metric', 'inch'].includes(text.trim()) ? undefined : `"${text}": metric or inch`),
  },
  {
    flag: 'languages',
    ask: `Languages for customers, ${first} alone or with ${others.join(', ')}: ${languages.join(',')}`,
    usual: 'en',
    wrong: (text) => {
      const list = text.split(',').map((code) => code.trim());
      const right = list[0] === first && new Set(list).size === list.length && list.every(isLang);
      return right
        ? undefined
        : `"${text}": ${first}, alone or before ${others.join(', ')}, like ${languages.join(',')}`;
    },
  },
] as const satisfies readonly Question[];

export type Flag = (typeof questions)[number]['flag'];
export type Answers = Readonly<Record<Flag, string>>;

const lines = (text: string) =>
  text
    .split(';')
    .map((line) => line.trim())
    .filter((line) => line !== '');

export function shopOf(answers: Answers): NewShop {
  return {
    name: answers.name.trim(),
    line: answers.line.trim(),
    address: lines(answers.address),
    phone: answers.phone.trim(),
    hours: lines(answers.hours),
    currency: answers.currency.trim(),
    labourRate: Number(answers.rate),
    tax: Number(answers.tax.replace('%', '')),
    units: answers.units.trim() === 'inch' ? 'inch' : 'metric',
    languages: answers.languages.split(',').map((l) => l.trim()),
  };
}
