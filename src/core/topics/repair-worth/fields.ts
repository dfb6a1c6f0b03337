import { defineFields } from '../../contract/field.ts';

const basis = [
  { value: 'price', label: 'Selling price' },
  { value: 'markup', label: 'Cost, and markup on the cost' },
  { value: 'margin', label: 'Cost, and margin in the price' },
] as const;

const lines = [
  { key: 'part', label: 'Part', kind: 'text', maxLength: 80 },
  { key: 'quantity', label: 'Quantity', kind: 'number', default: 1, min: 0, above: true, max: 1000 },
  { key: 'amount', label: 'Price or cost of one', kind: 'money', min: 0, max: 1e6 },
  { key: 'basis', label: 'That is the', kind: 'choice', default: 'price', options: basis },
  { key: 'share', label: 'Markup or margin', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], default: 0, min: 0, max: 500, help: 'Markup is a share of the cost, margin a share of the price: 40 % margin is 66.7 % markup.' },
] as const;

const years = [
  { key: 'cost', label: 'Running cost in the year', kind: 'money', min: 0, max: 1e6 },
  { key: 'resale', label: 'Fetches at the end of the year', kind: 'money', default: 0, min: 0, max: 1e6 },
] as const;

const money = { kind: 'money', min: 0, max: 1e6 } as const;
const share = { kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0 } as const;
const byLines = { field: 'quoteAs', is: ['lines'] } as const;
const unchecked = { field: 'engineChecked', is: [false] } as const;

/** Six boxes first; everything after them has a default. Amounts are for a mid-price cut-off saw, in any currency. */
export const fields = defineFields([
  { key: 'quote', label: 'Quote for the repair, tax in', ...money, default: 260, when: { field: 'quoteAs', is: ['total'] } },
  { key: 'asIs', label: 'What the machine fetches as it stands', ...money, default: 120, help: 'Sold today, not working. Scrap value if nobody would buy it.' },
  { key: 'serviceYears', label: 'Years of service expected after the repair', kind: 'number', default: 3, min: 0.1, max: 30, when: { field: 'serviceAs', is: ['years'] } },
  { key: 'hoursPerYear', label: 'Cutting hours a year', kind: 'number', default: 150, min: 1, max: 8000 },
  { key: 'newPrice', label: 'Price of a new one like it', kind: 'money', default: 1300, min: 1, max: 1e6, help: 'Like for like: the same class of saw, not a bigger one.' },
  { key: 'newLife', label: 'Years the new one lasts', kind: 'number', default: 6, min: 0.5, max: 40 },

  { key: 'quoteAs', label: 'Quote is given as', kind: 'choice', default: 'total', group: 'The quote', more: true, options: [{ value: 'total', label: 'One total' }, { value: 'lines', label: 'Parts, labor and tax' }] },
  { key: 'lines', label: 'Parts', kind: 'rows', columns: lines, minRows: 0, maxRows: 40, default: [], group: 'The quote', more: true, when: byLines },
  { key: 'labourHours', label: 'Labor hours', kind: 'number', default: 1.5, min: 0, max: 500, group: 'The quote', more: true, when: byLines },
  { key: 'labourRate', label: 'Labor rate for an hour', ...money, default: 75, group: 'The quote', more: true },
  { key: 'consumables', label: 'Shop consumables', ...money, default: 0, group: 'The quote', more: true, when: byLines },
  { key: 'taxParts', label: 'Tax on parts', ...share, default: 0, max: 100, group: 'The quote', more: true, when: byLines, help: 'Which kinds are taxed differs from place to place: ask the tax office.' },
  { key: 'taxLabour', label: 'Tax on labor', ...share, default: 0, max: 100, group: 'The quote', more: true, when: byLines },
  { key: 'taxConsumables', label: 'Tax on consumables', ...share, default: 0, max: 100, group: 'The quote', more: true, when: byLines },
  { key: 'itemised', label: 'Parts and labor stand apart on the bill', kind: 'yes-no', default: true, group: 'The quote', more: true, when: byLines, help: 'A lump price is often taxed whole.' },
  { key: 'diagnosticFee', label: 'Fee for finding the fault', ...money, default: 0, group: 'The quote', more: true },
  { key: 'diagnosticCredited', label: 'The fee comes off the bill if the repair goes ahead', kind: 'yes-no', default: false, group: 'The quote', more: true },
  { key: 'alreadySpent', label: 'Money already spent on this machine', ...money, default: 0, group: 'The quote', more: true, help: 'It does not count: it is gone whichever way you choose.' },

  { key: 'engineChecked', label: 'Compression and cylinder have been checked and are good', kind: 'yes-no', default: false, group: 'Engine first', more: true },
  { key: 'chanceWorn', label: 'Chance that the engine is worn out', ...share, default: 15, max: 100, group: 'Engine first', more: true, when: unchecked },
  { key: 'inspectionMinutes', label: 'Minutes to look in the cylinder', kind: 'number', default: 15, min: 0, max: 600, group: 'Engine first', more: true, when: unchecked },
  { key: 'inspectionFinds', label: 'The look finds a worn engine', ...share, default: 90, max: 100, group: 'Engine first', more: true, when: unchecked },
  { key: 'inspectionFalse', label: 'The look condemns a sound one', ...share, default: 5, max: 100, group: 'Engine first', more: true, when: unchecked },

  { key: 'serviceAs', label: 'Service after the repair is given in', kind: 'choice', default: 'years', group: 'After the repair', more: true, options: [{ value: 'years', label: 'Years' }, { value: 'hours', label: 'Cutting hours' }] },
  { key: 'serviceHours', label: 'Cutting hours expected after the repair', kind: 'number', default: 450, min: 1, max: 100000, group: 'After the repair', more: true, when: { field: 'serviceAs', is: ['hours'] } },
  { key: 'endValue', label: 'Fetches at the end of that service', ...money, default: 40, group: 'After the repair', more: true },
  { key: 'repairRunning', label: 'Upkeep a year, repaired machine', ...money, default: 140, group: 'After the repair', more: true, help: 'Belts, filters, small repairs. Leave out what both machines use alike, such as blades and fuel.' },
  { key: 'comebackChance', label: 'Chance that the repair comes back', ...share, default: 10, max: 100, group: 'After the repair', more: true },
  { key: 'comebackCost', label: 'What a comeback costs', ...money, default: 150, group: 'After the repair', more: true },
  { key: 'repairDays', label: 'Days without the machine for the repair', kind: 'number', default: 3, min: 0, max: 365, group: 'After the repair', more: true },

  { key: 'newResale', label: 'The new one fetches at the end', ...money, default: 150, group: 'The new machine', more: true },
  { key: 'newRunning', label: 'Upkeep a year, new machine', ...money, default: 90, group: 'The new machine', more: true },
  { key: 'tradeIn', label: 'Trade-in offered for the old one', ...money, optional: true, group: 'The new machine', more: true },
  { key: 'newDays', label: 'Days without a machine until the new one is here', kind: 'number', default: 1, min: 0, max: 365, group: 'The new machine', more: true },
  { key: 'newYears', label: 'The new machine year by year', kind: 'rows', columns: years, minRows: 1, maxRows: 40, optional: true, group: 'The new machine', more: true, help: 'If known: the best age to replace it is then searched for, and its life, upkeep and resale above are not used.' },

  { key: 'rate', label: 'Interest a year', ...share, default: 8, max: 100, group: 'Money', more: true, help: 'What the money costs or could earn. With prices held level, use interest above inflation.' },
  { key: 'downtimeDay', label: 'A day without the machine costs', ...money, default: 40, group: 'Money', more: true, help: 'Hire of another, or lost work.' },
  { key: 'workingValue', label: 'It would sell for, in working order', kind: 'money', min: 1, max: 1e6, optional: true, group: 'Money', more: true, help: 'Only for the three-quarter rule of thumb.' },

  { key: 'spreadQuote', label: 'The quote, give or take', ...share, default: 10, max: 95, group: 'How sure the figures are', more: true },
  { key: 'spreadService', label: 'The service after repair, give or take', ...share, default: 40, max: 95, group: 'How sure the figures are', more: true },
  { key: 'spreadPrice', label: 'The new price, give or take', ...share, default: 10, max: 95, group: 'How sure the figures are', more: true },
  { key: 'spreadLife', label: 'The new life, give or take', ...share, default: 30, max: 95, group: 'How sure the figures are', more: true },
  { key: 'draws', label: 'Number of draws', kind: 'count', default: 2000, min: 100, max: 100000, group: 'How sure the figures are', more: true },
  { key: 'seed', label: 'Start number of the draws', kind: 'count', default: 1, min: 1, max: 2147483646, group: 'How sure the figures are', more: true, help: 'The same number gives the same answer again.' },
]);
