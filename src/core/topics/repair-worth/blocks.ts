/** Documented functions of the topic, each callable alone: money at different times, worth and doubt, the shop's own side. */
import { block, type BlockOutcome } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { ageAtShare, failure, meanLife, meanRemainingLife, survival } from '../../chance/index.ts';
import {
  capitalRecovery,
  gradientToLevel,
  netPresentWorth,
  presentWorth,
  presentWorthOfPayments,
  sinkingFund,
  withInflation,
} from '../../money/index.ts';
import { isUnder } from '../../thresholds/index.ts';
import {
  annualCost,
  annualCosts,
  costOfOneMoreYear,
  economicLife,
  expectedService,
  firstCostWithTradeIn,
  yearlyOverUncertainLife,
} from './annual-cost.ts';
import { comebackToFlip, mostWorthPaying, newYearly, repairYearly, type Comparison } from './comparison.ts';
import { bestBlind, engineCheckValue, valueOfInspecting, valueOfKnowing } from './inspection.ts';
import { marginOfMarkup, markupOfMargin, priceFromMargin, priceFromMarkup, salesTax } from './quote.ts';
import {
  bookTime,
  costUntilItHolds,
  decliningValue,
  hourlyCost,
  labourRate,
  ownershipPerHour,
  repairPerHour,
  repairsSoFar,
  straightLineValue,
} from './shop-rates.ts';

const rate = {
  key: 'rate',
  label: 'Interest in a period',
  kind: 'quantity',
  dimension: 'ratio',
  units: ['%', '%'],
  min: -50,
  max: 1000,
} as const;
const years = { key: 'years', label: 'Periods', kind: 'number', min: 0, above: true, max: 1000 } as const;

const money = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'money', min: -1e12, max: 1e12 }) as const;
const moneyOr0 = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'money', default: 0, min: -1e12, max: 1e12 }) as const;
const chance = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0, max: 100 }) as const;
const positive = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: 0, above: true, max: 1e12 }) as const;
const count0 = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: 0, max: 1e12 }) as const;

const problem = (
  field: string,
  code: string,
  data: Readonly<Record<string, number | string>> = {},
): BlockOutcome<never> => ({ problem: { field, code, data } });

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

const timeBlocks = {
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

const life = [positive('shape', 'Weibull shape'), positive('scale', 'Weibull scale')] as const;
const act = <const K extends string>(key: K, label: string) => ({ ...money(key, label), optional: true }) as const;

const worthBlocks = {
  'most-worth-paying': block({
    what: 'most worth paying for a repair, and both yearly costs',
    source: 'blank-tarquin',
    fields: defineFields([
      rate,
      money('repair', 'Repair'),
      money('asIs', 'Worth as it stands'),
      positive('service', 'Years of service after repair'),
      moneyOr0('endValue', 'Fetches at their end'),
      moneyOr0('repairRunning', 'Upkeep a year, repaired'),
      moneyOr0('repairDown', 'Cost of days without it'),
      { ...chance('comebackChance', 'Chance of a comeback'), default: 0 },
      moneyOr0('comebackCost', 'Cost of a comeback'),
      money('newFirst', 'New machine, laid out'),
      positive('newLife', 'Years it lasts'),
      moneyOr0('newResale', 'Fetches at the end'),
      moneyOr0('newRunning', 'Upkeep a year, new'),
    ]),
    gives: {
      most: { label: 'Most worth paying' },
      repairYearly: { label: 'Repair, a year' },
      newYearly: { label: 'New, a year' },
      comebackToFlip: { label: 'Chance of a comeback that turns it' },
    },
    run: (i) => {
      const c: Comparison = i;
      const flip = comebackToFlip(c);
      return {
        most: mostWorthPaying(c),
        repairYearly: repairYearly(c),
        newYearly: newYearly(c),
        ...(flip === undefined ? {} : { comebackToFlip: flip }),
      };
    },
  }),
  'uncertain-life': block({
    what: 'yearly cost of money laid out for a service of unknown length',
    source: 'comeback-expected-value',
    fields: defineFields([
      rate,
      money('capital', 'Laid out'),
      moneyOr0('running', 'Upkeep a year'),
      ...life,
      count0('age', 'Age reached, years'),
      { key: 'horizon', label: 'Last year counted', kind: 'count', default: 30, min: 1, max: 200 },
    ]),
    gives: { service: { label: 'Expected service, as worth today' }, yearly: { label: 'Yearly cost' } },
    run: (i) => {
      const service = expectedService({ shape: i.shape, scale: i.scale }, i.age, i.rate, i.horizon);
      // Counted in whole years: where hardly one in twenty sees the first, there is no service to spread money over.
      return isUnder(service, 0.05)
        ? problem('scale', 'no-service-left')
        : { service, yearly: yearlyOverUncertainLife(i.capital, i.running, service) };
    },
  }),
  'weibull-survival': block({
    what: 'chance that a part of some age runs on, and its mean life from there',
    source: 'weibull-conditional',
    fields: defineFields([...life, { ...count0('age', 'Age reached'), default: 0 }, count0('time', 'Further time')]),
    gives: {
      survives: { label: 'Chance it runs on' },
      fails: { label: 'Chance it fails' },
      remaining: { label: 'Mean life from here' },
      mean: { label: 'Mean life when new' },
    },
    run: (i) => {
      const part = { shape: i.shape, scale: i.scale };
      const survives = survival(part, i.time, i.age);
      return {
        survives,
        fails: failure(part, i.time, i.age),
        remaining: meanRemainingLife(part, i.age),
        mean: meanLife(part),
      };
    },
  }),
  'age-at-share': block({
    what: 'age by which a share of such parts has failed',
    source: 'bloch-machinery-reliability',
    fields: defineFields([...life, { ...chance('failed', 'Share failed'), max: 99.9999 }]),
    gives: { age: { label: 'Age' } },
    run: (i) => ({ age: ageAtShare({ shape: i.shape, scale: i.scale }, i.failed) }),
  }),
  'value-of-inspection': block({
    what: 'what a look at the engine is worth before a repair is ordered',
    source: 'value-of-information',
    fields: defineFields([
      chance('worn', 'Chance of the hidden fault'),
      money('gain', 'Gain by repairing if sound'),
      money('wasted', 'Lost if not'),
      chance('finds', 'Look finds it'),
      chance('falseAlarm', 'Look condemns a sound one'),
      moneyOr0('fee', 'Cost of the look'),
    ]),
    gives: {
      blind: { label: 'Expected gain without looking' },
      perfect: { label: 'Worth of knowing for certain' },
      worth: { label: 'Worth of the look' },
      net: { label: 'Less its cost' },
      found: { label: 'Chance that the look says worn', units: ['%', '%'] },
      wornIfFound: { label: 'Chance of the fault, look says worn', units: ['%', '%'] },
      wornIfPassed: { label: 'Chance of the fault, look says sound', units: ['%', '%'] },
      gainIfFound: { label: 'Expected gain by repairing, look says worn' },
      gainIfPassed: { label: 'Expected gain by repairing, look says sound' },
      indifferent: { label: 'Chance of the fault at which repair and new are equal', units: ['%', '%'] },
    },
    run: (i) => {
      const v = engineCheckValue(i);
      const found = i.worn * i.finds + (1 - i.worn) * i.falseAlarm;
      const known =
        found > 0 && found < 1
          ? {
              wornIfFound: (i.worn * i.finds) / found,
              wornIfPassed: (i.worn * (1 - i.finds)) / (1 - found),
              gainIfFound: v.ifWorn / found,
              gainIfPassed: v.ifSound / (1 - found),
            }
          : {};
      return {
        blind: v.blind,
        perfect: v.perfect,
        worth: v.worth,
        net: v.worth - i.fee,
        found,
        ...known,
        ...(i.gain + i.wasted === 0 ? {} : { indifferent: i.gain / (i.gain + i.wasted) }),
      };
    },
  }),
  decision: block({
    what: 'best of up to four acts over uncertain states, and what knowing or testing is worth',
    source: 'value-of-information',
    fields: defineFields([
      {
        key: 'states',
        label: 'States',
        kind: 'rows',
        minRows: 1,
        maxRows: 20,
        columns: [
          chance('chance', 'Chance'),
          money('first', 'First act'),
          act('second', 'Second act'),
          act('third', 'Third act'),
          act('fourth', 'Fourth act'),
          { ...chance('positive', 'Chance that the test says yes'), default: 0 },
        ],
      },
    ]),
    gives: {
      best: { label: 'Best without looking' },
      first: { label: 'First act' },
      second: { label: 'Second act' },
      third: { label: 'Third act' },
      fourth: { label: 'Fourth act' },
      told: { label: 'Best when told the state' },
      knowing: { label: 'Worth of knowing' },
      testing: { label: 'Worth of the test' },
      yes: { label: 'Chance that the test says yes' },
    },
    run: ({ states }) => {
      const p = states.map((s) => s.chance);
      if (Math.abs(p.reduce((a, b) => a + b, 0) - 1) > 1e-6)
        return problem('states', 'chances-not-one', { got: p.reduce((a, b) => a + b, 0) * 100 });
      const named = {
        first: states.map((s) => s.first),
        second: states.map((s) => s.second),
        third: states.map((s) => s.third),
        fourth: states.map((s) => s.fourth),
      };
      const given = Object.entries(named).filter((e): e is [keyof typeof named, number[]] =>
        e[1].every((x) => x !== undefined),
      );
      const acts = given.map(([, outcome]) => outcome);
      const yes = states.map((s) => s.positive);
      const best = bestBlind(p, acts);
      const knowing = valueOfKnowing(p, acts);
      return {
        ...Object.fromEntries(given.map(([key, outcome]) => [key, bestBlind(p, [outcome])])),
        best,
        told: best + knowing,
        knowing,
        testing: valueOfInspecting(p, acts, [yes, yes.map((x) => 1 - x)]),
        yes: p.reduce((sum, x, j) => sum + x * (yes[j] ?? 0), 0),
      };
    },
  }),
};

const share = <const K extends string>(key: K, label: string, max = 1000) =>
  ({ key, label, kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0, max }) as const;

const shopBlocks = {
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

export const blocks = { ...timeBlocks, ...worthBlocks, ...shopBlocks };
