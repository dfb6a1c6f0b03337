import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { annualCost, annualCosts, costOfOneMoreYear, economicLife, firstCostWithTradeIn } from './annual-cost.ts';
import { money, moneyOr0, problem, rate, years } from './block-fields.ts';
import {
  capitalRecovery,
  gradientToLevel,
  netPresentWorth,
  presentWorth,
  presentWorthOfPayments,
  sinkingFund,
  withInflation,
} from '../../money/index.ts';

const source = 'engineering-economy-factors';
const inflation = {
  key: 'inflation',
  label: 'Inflation in a period',
  kind: 'quantity',
  dimension: 'ratio',
  units: ['%', '%'],
  min: -50,
  max: 1000,
} as const;
const yearRows = {
  key: 'each',
  label: 'Years',
  kind: 'rows',
  minRows: 1,
  maxRows: 60,
  columns: [money('cost', 'Paid in the year'), moneyOr0('resale', 'Fetches at its end')],
} as const;

export const timeBlocks = {
  'present-worth': block({
    what: 'what money due later is worth today',
    source,
    fields: defineFields([
      rate,
      { key: 'years', label: 'Periods', kind: 'number', min: 0, max: 1000 },
      { key: 'amount', label: 'Amount due', kind: 'money', default: 1, min: -1e12, max: 1e12 },
    ]),
    gives: { worth: { label: 'Worth today' } },
    run: (i) => ({ worth: i.amount * presentWorth(i.rate, i.years) }),
  }),
  'present-worth-of-payments': block({
    what: 'what equal payments at the end of every period are worth today',
    source,
    fields: defineFields([
      rate,
      years,
      { key: 'payment', label: 'Payment', kind: 'money', default: 1, min: -1e12, max: 1e12 },
      moneyOr0('first', 'Paid at once'),
    ]),
    gives: { worth: { label: 'Worth today' } },
    run: (i) => ({ worth: i.first + i.payment * presentWorthOfPayments(i.rate, i.years) }),
  }),
  'capital-recovery': block({
    what: 'equal payment that pays an amount back with interest',
    source,
    fields: defineFields([
      rate,
      years,
      { key: 'amount', label: 'Amount laid out', kind: 'money', default: 1, min: -1e12, max: 1e12 },
    ]),
    gives: { payment: { label: 'Payment' } },
    run: (i) => ({ payment: i.amount * capitalRecovery(i.rate, i.years) }),
  }),
  'sinking-fund': block({
    what: 'equal payment that saves an amount up',
    source,
    fields: defineFields([
      rate,
      years,
      { key: 'amount', label: 'Amount wanted', kind: 'money', default: 1, min: -1e12, max: 1e12 },
    ]),
    gives: { payment: { label: 'Payment' } },
    run: (i) => ({ payment: i.amount * sinkingFund(i.rate, i.years) }),
  }),
  gradient: block({
    what: 'payments that grow by the same amount, as an equal payment and as worth today',
    source,
    fields: defineFields([
      rate,
      years,
      { key: 'growth', label: 'Growth in a period', kind: 'money', default: 1, min: -1e12, max: 1e12 },
    ]),
    gives: { level: { label: 'Equal payment' }, worth: { label: 'Worth today' } },
    run: (i) => {
      const level = i.growth * gradientToLevel(i.rate, i.years);
      return { level, worth: level * presentWorthOfPayments(i.rate, i.years) };
    },
  }),
  'net-present-worth': block({
    what: 'worth today of a list of payments, the first of them now',
    source,
    fields: defineFields([
      rate,
      { key: 'flows', label: 'Payments', kind: 'rows', minRows: 1, maxRows: 200, columns: [money('amount', 'Amount')] },
    ]),
    gives: { worth: { label: 'Worth today' } },
    run: (i) => ({
      worth: netPresentWorth(
        i.rate,
        i.flows.map((f) => f.amount),
      ),
    }),
  }),
  'with-inflation': block({
    what: 'interest with inflation in it, from interest above inflation',
    source,
    fields: defineFields([rate, inflation]),
    gives: { rate: { label: 'Interest with inflation', units: ['%', '%'] } },
    run: (i) => ({ rate: withInflation(i.rate, i.inflation) }),
  }),
  'annual-cost': block({
    what: 'yearly cost of owning: laid out, running, fetched at the end',
    source,
    fields: defineFields([
      rate,
      years,
      money('first', 'Laid out'),
      moneyOr0('resale', 'Fetched at the end'),
      moneyOr0('running', 'Running cost a year'),
    ]),
    gives: { yearly: { label: 'Yearly cost' } },
    run: (i) => ({ yearly: annualCost(i.first, i.resale, i.running, i.rate, i.years) }),
  }),
  'economic-life': block({
    what: 'age at which the yearly cost is lowest',
    source: 'blank-tarquin',
    fields: defineFields([
      rate,
      money('first', 'Laid out, or worth today'),
      yearRows,
      { key: 'at', label: 'Show the cost if kept for', kind: 'count', default: 1, min: 1, max: 60 },
    ]),
    gives: {
      life: { label: 'Years of keeping at the lowest cost' },
      lowest: { label: 'Lowest yearly cost' },
      yearly: { label: 'Yearly cost at the age asked for' },
      oneMore: { label: 'Cost of keeping it through that year' },
    },
    run: (i) => {
      if (i.at > i.each.length) return problem('at', 'year-not-given', { got: i.at, max: i.each.length });
      const best = economicLife(i.first, i.each, i.rate);
      const before = i.at === 1 ? i.first : (i.each[i.at - 2]?.resale ?? 0);
      const year = i.each[i.at - 1] ?? { cost: 0, resale: 0 };
      return {
        life: best.years,
        lowest: best.yearly,
        yearly: annualCosts(i.first, i.each, i.rate)[i.at - 1] ?? 0,
        oneMore: costOfOneMoreYear(before, year, i.rate),
      };
    },
  }),
  'first-cost-with-trade-in': block({
    what: 'what a new machine really costs with a trade-in',
    source: 'blank-tarquin',
    fields: defineFields([
      money('price', 'Price'),
      money('tradeIn', 'Trade-in offered'),
      money('worth', 'Worth of the old machine as it stands'),
    ]),
    gives: { cost: { label: 'Cost' } },
    run: (i) => ({ cost: firstCostWithTradeIn(i.price, i.tradeIn, i.worth) }),
  }),
};
