/** What "npm run shop:new" asks, each question with its flag, its check and what to write when it is refused. */
import { first, isLang, languages, others } from '../../words/lang.ts';
import { shop } from '../../schemas/shop.ts';
import type { NewShop } from './shop-file.ts';

export type Flag =
  'name' | 'line' | 'address' | 'phone' | 'hours' | 'currency' | 'rate' | 'tax' | 'units' | 'languages';
export type Answers = Readonly<Record<Flag, string>>;

interface Question {
  readonly flag: Flag;
  readonly ask: string;
  readonly usual: string;
  /** Says what is wrong, or nothing; `before` is what was answered so far. */
  readonly wrong: (text: string, before?: Partial<Answers>) => string | undefined;
}

const currencies = new Set(Intl.supportedValuesOf('currency'));
const lines = (text: string) =>
  text
    .split(';')
    .map((line) => line.trim())
    .filter((line) => line !== '');
/** As the check of shop.yaml will read it, said before it is written. */
const likeIn = (field: 'name' | 'line' | 'phone') => (text: string) => {
  if (text.trim() === '') return 'this cannot be left empty';
  const issue = shop.shape[field].safeParse(text.trim()).error?.issues[0];
  if (issue?.code === 'too_small') return `"${text}": at least ${issue.minimum} letters`;
  if (issue?.code === 'too_big') return `"${text}": at most ${issue.maximum} letters; this has ${text.trim().length}`;
  return issue && `"${text}": ${issue.message}`;
};
const someLines = (text: string) => (lines(text).length === 0 ? 'this cannot be left empty' : undefined);
const number = (least: number, most: number) => (text: string) => {
  const n = Number(text.replace('%', '').trim());
  if (text.includes(',')) return `"${text}": write a point for the comma, like 42.50`;
  if (text.trim() === '' || !Number.isFinite(n) || n < least || n > most)
    return `"${text}": a number alone, from ${least} to ${most}`;
  return undefined;
};

/** "25.000" is five and twenty thousand to many: more digits behind the point than the currency has are asked about. */
const rate = (text: string, { currency = 'USD' }: Partial<Answers> = {}) => {
  const wrong = number(0.01, 1_000_000)(text);
  if (wrong !== undefined) return wrong;
  const code = currency.trim().toUpperCase();
  const { maximumFractionDigits: most = 2 } = new Intl.NumberFormat('en', {
    style: 'currency',
    currency: code,
  }).resolvedOptions();
  const [, digits = ''] = text.trim().split('.');
  if (digits.length <= most || /^0{0,2}$/.test(digits)) return undefined;
  return `"${text}": ${code} has ${most === 0 ? 'no' : most} digits behind the point, and thousands stand without one: 25000`;
};

export const questions: readonly Question[] = [
  { flag: 'name', ask: 'Name of the shop', usual: '', wrong: likeIn('name') },
  { flag: 'line', ask: 'What you do, in one line', usual: 'Saws and small engines, repaired', wrong: likeIn('line') },
  { flag: 'address', ask: 'Address; a ";" begins the next line', usual: '', wrong: someLines },
  { flag: 'phone', ask: 'Phone', usual: '', wrong: likeIn('phone') },
  { flag: 'hours', ask: 'Hours; a ";" begins the next line', usual: '', wrong: someLines },
  {
    flag: 'currency',
    ask: 'Currency, in three letters',
    usual: 'USD',
    wrong: (text) =>
      currencies.has(text.trim().toUpperCase()) ? undefined : `"${text}": three letters of a currency, like EUR`,
  },
  { flag: 'rate', ask: 'An hour at the bench, before tax', usual: '', wrong: rate },
  { flag: 'tax', ask: 'Sales tax in percent', usual: '0', wrong: number(0, 50) },
  {
    flag: 'units',
    ask: 'Units shown first, metric or inch',
    usual: 'metric',
    wrong: (text) => (['metric', 'inch'].includes(text.trim()) ? undefined : `"${text}": metric or inch`),
  },
  {
    flag: 'languages',
    ask: `Languages of the pages for customers: ${first}, or ${languages.join(',')}`,
    usual: first,
    wrong: (text) => {
      const list = text.split(',').map((code) => code.trim());
      const right = list[0] === first && new Set(list).size === list.length && list.every(isLang);
      return right
        ? undefined
        : `"${text}": ${first}, alone or before ${others.join(', ')}, like ${languages.join(',')}`;
    },
  },
];

export function shopOf(answers: Answers): NewShop {
  return {
    name: answers.name.trim(),
    line: answers.line.trim(),
    address: lines(answers.address),
    phone: answers.phone.trim(),
    hours: lines(answers.hours),
    currency: answers.currency.trim().toUpperCase(),
    labourRate: Number(answers.rate),
    tax: Number(answers.tax.replace('%', '')),
    units: answers.units.trim() === 'inch' ? 'inch' : 'metric',
    languages: answers.languages.split(',').map((l) => l.trim()),
  };
}
