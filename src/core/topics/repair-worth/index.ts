/** Is this repair worth its money: the most worth paying, both ways as a yearly cost, and what would flip the answer. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  annualCost,
  annualCosts,
  economicLife,
  costOfOneMoreYear,
  firstCostWithTradeIn,
  expectedService,
  yearlyOverUncertainLife,
  type YearCost,
} from './annual-cost.ts';
export {
  repairYearly,
  newYearly,
  mostWorthPaying,
  comebackToFlip,
  serviceToFlip,
  newPriceToFlip,
  type Comparison,
} from './comparison.ts';
export {
  priceFromMarkup,
  priceFromMargin,
  marginOfMarkup,
  markupOfMargin,
  salesTax,
  addUpQuote,
  costOfSayingYes,
} from './quote.ts';
export { bestBlind, valueOfKnowing, valueOfInspecting, engineCheckValue } from './inspection.ts';
export { simulate, type Doubt, type Simulated } from './simulate.ts';

export const title = 'Is the repair worth it?';
export const formulas = Object.values(all);
export const sources = [
  'arithmetic',
  'common-practice',
  'engineering-economy-factors',
  'blank-tarquin',
  'newnan-economic-analysis',
  'comeback-expected-value',
  'value-of-information',
  'markup-and-margin',
  'state-sales-tax-guides',
  'fifty-percent-rule',
  'three-quarter-rule',
  'park-miller-generator',
  'weibull-conditional',
  'bloch-machinery-reliability',
  'asabe-ep496',
  'usace-ep-1110-1-8',
  'numerical-gamma',
];
export const hazards = ['compression-test-spark'];

/** What the figures of the repair itself decide; the draws and the rule of thumb stand apart. */
const quote = ['quoteAs', 'quote', 'lines', 'labourHours', 'labourRate', 'consumables', 'smallest'] as const;
const tax = ['taxParts', 'taxLabour', 'taxConsumables', 'itemised', 'diagnosticFee', 'diagnosticCredited'] as const;
const machines = [
  'asIs',
  'serviceAs',
  'serviceYears',
  'serviceHours',
  'hoursPerYear',
  'endValue',
  'repairRunning',
] as const;
const fresh = ['newPrice', 'newLife', 'newResale', 'newRunning', 'newYears', 'tradeIn', 'newDays', 'rate'] as const;
const risks = ['comebackChance', 'comebackCost', 'repairDays', 'downtimeDay'] as const;
const engine = ['engine', 'chanceWorn', 'inspectionMinutes', 'inspectionFinds', 'inspectionFalse'] as const;
const whole = [...quote, ...tax, ...machines, ...fresh, ...risks];
export const decides = {
  verdict: [...whole, ...engine],
  engineFirst: [...whole, ...engine],
  crossing: whole,
  halfRule: [...quote, ...tax.slice(0, 4), 'newPrice'],
  threeQuarterRule: [...quote, ...tax.slice(0, 4), 'workingValue'],
  spent: ['alreadySpent'],
};
export const parts: readonly Part[] = [
  {
    gives: ['quoteLines', 'partsTotal', 'labourTotal', 'consumablesTotal', 'taxTotal', 'quoteTotal', 'toPay'],
    from: [...quote, ...tax],
  },
  { gives: ['mostWorth', 'mostWorthUnchecked'], from: [...machines, ...fresh, ...risks, ...engine] },
  { gives: ['newYearly', 'newHour', 'taken'], from: [...machines, ...fresh] },
  {
    gives: ['repairYearly', 'repairHour', 'serviceTable', 'newPriceToFlip', 'flipTable', 'crossing', 'comebackToFlip'],
    from: [...whole, ...engine],
  },
  { gives: ['lookCost'], from: ['engine', 'inspectionMinutes', 'labourRate'] },
  { gives: ['lookWorth', 'knowingWorth'], from: [...whole, ...engine] },
];
export const example = {
  quote: 260,
  asIs: 120,
  serviceYears: 3,
  hoursPerYear: 150,
  newPrice: 1300,
  newLife: 6,
};
