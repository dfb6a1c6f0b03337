import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { chance, count0, money, moneyOr0, positive, problem } from './block-fields.ts';
import { marginOfMarkup, markupOfMargin, priceFromMargin, priceFromMarkup, salesTax } from './quote.ts';
import {
  decliningValue,
  hourlyCost,
  ownershipPerHour,
  repairPerHour,
  repairsSoFar,
  straightLineValue,
} from './running-cost.ts';
import { bookTime, costUntilItHolds, labourRate } from './shop-rates.ts';

const share = <const K extends string>(key: K, label: string, max = 1000) =>
  ({ key, label, kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0, max }) as const;

export const shopBlocks = {
  'price-from-cost': block({
    what: 'selling price from cost, with a markup or a margin',
    source: 'markup-and-margin',
    fields: defineFields([
      money('cost', 'Cost'),
      {
        key: 'as',
        label: 'The percentage is a',
        kind: 'choice',
        options: [
          { value: 'markup', label: 'Markup on the cost' },
          { value: 'margin', label: 'Margin in the price' },
        ],
      },
      share('share', 'Percentage'),
    ]),
    gives: {
      price: { label: 'Price' },
      markup: { label: 'As markup', units: ['%', '%'] },
      margin: { label: 'As margin', units: ['%', '%'] },
      profit: { label: 'Gross profit' },
    },
    run: (i) => {
      if (i.as === 'markup')
        return {
          price: priceFromMarkup(i.cost, i.share),
          markup: i.share,
          margin: marginOfMarkup(i.share),
          profit: i.cost * i.share,
        };
      if (i.share >= 1) return problem('share', 'margin-too-large', { got: i.share * 100 });
      const price = priceFromMargin(i.cost, i.share);
      return { price, markup: markupOfMargin(i.share), margin: i.share, profit: price - i.cost };
    },
  }),
  'tax-on-invoice': block({
    what: 'sales tax by kind of line, itemised or lump',
    source: 'state-sales-tax-guides',
    fields: defineFields([
      money('parts', 'Parts'),
      money('labour', 'Labor'),
      moneyOr0('consumables', 'Consumables'),
      { ...share('taxParts', 'Tax on parts', 100), default: 0 },
      { ...share('taxLabour', 'Tax on labor', 100), default: 0 },
      { ...share('taxConsumables', 'Tax on consumables', 100), default: 0 },
      { key: 'itemised', label: 'Parts and labor stand apart', kind: 'yes-no', default: true },
    ]),
    gives: { tax: { label: 'Tax' } },
    run: (i) => ({
      tax: salesTax(
        { parts: i.parts, labour: i.labour, consumables: i.consumables },
        { parts: i.taxParts, labour: i.taxLabour, consumables: i.taxConsumables, itemised: i.itemised },
      ),
    }),
  }),
  'labour-rate': block({
    what: 'labor rate from wage, overhead and margin',
    source: 'common-practice',
    fields: defineFields([
      positive('wage', 'Wage an hour'),
      { ...positive('burden', 'Wage with its on-costs, times the wage'), default: 1 },
      count0('overhead', 'Overhead a year'),
      positive('mechanics', 'Mechanics'),
      positive('paidHours', 'Paid hours a year each'),
      { ...share('billable', 'Share of hours that reach a bill', 100), above: true },
      { ...share('margin', 'Margin in the rate', 99) },
    ]),
    gives: { cost: { label: 'Cost of a billable hour' }, rate: { label: 'Rate' } },
    run: (i) => labourRate(i.wage, i.burden, i.overhead, i.mechanics, i.paidHours, i.billable, i.margin),
  }),
  'book-time': block({
    what: 'a job billed by book time against the time it took',
    source: 'common-practice',
    fields: defineFields([
      positive('bookHours', 'Book hours'),
      positive('actualHours', 'Hours taken'),
      positive('rate', 'Rate'),
    ]),
    gives: {
      billed: { label: 'Billed' },
      earned: { label: 'Earned an hour' },
      efficiency: { label: 'Efficiency', units: ['%', '%'] },
    },
    run: (i) => bookTime(i.bookHours, i.actualHours, i.rate),
  }),
  'cost-until-it-holds': block({
    what: 'expected cost of a job done over until it holds',
    source: 'comeback-expected-value',
    fields: defineFields([
      money('cost', 'Cost of one attempt'),
      { ...chance('success', 'Chance that an attempt holds'), above: true },
    ]),
    gives: { total: { label: 'Expected cost' }, comebacks: { label: 'Of that, comebacks' } },
    run: (i) => costUntilItHolds(i.cost, i.success),
  }),
  'repairs-so-far': block({
    what: 'repairs paid up to a number of hours, as a power of the hours: in all, as a share of the price, and for an hour on average',
    source: 'asabe-ep496',
    fields: defineFields([
      money('price', 'Price new'),
      { key: 'share', label: 'Share of the price spent by the unit of hours', kind: 'number', min: 0 },
      positive('exponent', 'Exponent'),
      count0('hours', 'Hours'),
      { ...positive('unit', 'Unit of hours'), default: 1000 },
      { ...count0('from', 'Counted from hours'), default: 0 },
    ]),
    gives: {
      total: { label: 'Repairs' },
      ofPrice: { label: 'Of the price new', units: ['%', '%'] },
      perHour: { label: 'An hour, on average' },
    },
    run: (i) => {
      const total =
        repairsSoFar(i.price, i.share, i.exponent, i.hours, i.unit) -
        repairsSoFar(i.price, i.share, i.exponent, i.from, i.unit);
      return {
        total,
        ...(i.price === 0 ? {} : { ofPrice: total / i.price }),
        ...(i.hours > i.from ? { perHour: total / (i.hours - i.from) } : {}),
      };
    },
  }),
  'ownership-per-hour': block({
    what: 'loss of value and money tied up, for an hour',
    source: 'usace-ep-1110-1-8',
    fields: defineFields([
      money('price', 'Price'),
      share('salvage', 'Left at the end', 100),
      positive('lifeHours', 'Hours in its life'),
      positive('hoursPerYear', 'Hours a year'),
      share('rate', 'Cost of money a year'),
    ]),
    gives: {
      years: { label: 'Years' },
      average: { label: 'Average value, share of the price' },
      depreciation: { label: 'Loss of value an hour' },
      money: { label: 'Money tied up, an hour' },
    },
    run: (i) => ownershipPerHour(i.price, i.salvage, i.lifeHours, i.hoursPerYear, i.rate),
  }),
  'repair-per-hour': block({
    what: 'repair cost of an hour from rate-book factors',
    source: 'usace-ep-1110-1-8',
    fields: defineFields([
      money('price', 'Price without tires'),
      positive('repair', 'Repair factor'),
      { ...positive('economic', 'Price-level factor'), default: 1 },
      { ...positive('area', 'Labor factor of the region'), default: 1 },
      positive('lifeHours', 'Hours in its life'),
    ]),
    gives: { cost: { label: 'Repair cost an hour' }, factor: { label: 'All factors together' } },
    run: (i) => ({
      cost: repairPerHour(i.price, i.repair, i.economic, i.area, i.lifeHours),
      factor: i.repair * i.economic * i.area,
    }),
  }),
  'hourly-cost': block({
    what: 'hourly cost of owning, at work and standing by',
    source: 'usace-ep-1110-1-8',
    fields: defineFields([
      money('depreciation', 'Loss of value an hour'),
      money('money', 'Money tied up, an hour of a 40-hour week'),
      money('operating', 'Running cost an hour'),
      { ...positive('weekHours', 'Hours a week'), default: 40 },
    ]),
    gives: { ownership: { label: 'Owning it' }, work: { label: 'At work' }, standby: { label: 'Standing by' } },
    run: (i) => hourlyCost(i.depreciation, i.money, i.operating, i.weekHours),
  }),
  'book-value': block({
    what: 'book value after some years; it decides nothing about a repair',
    source: 'engineering-economy-factors',
    fields: defineFields([
      money('price', 'Price'),
      {
        key: 'how',
        label: 'Falls by',
        kind: 'choice',
        options: [
          { value: 'share', label: 'The same share each year' },
          { value: 'amount', label: 'The same amount each year' },
        ],
      },
      { ...share('share', 'Share a year', 100), when: { field: 'how', is: ['share'] } },
      { ...positive('life', 'Years to nothing'), when: { field: 'how', is: ['amount'] } },
      count0('after', 'Years'),
    ]),
    gives: { value: { label: 'Book value' } },
    run: (i) => ({
      value:
        i.how === 'share'
          ? decliningValue(i.price, i.share ?? 0, i.after)
          : straightLineValue(i.price, i.life ?? 1, i.after),
    }),
  }),
};
