/**
 * Small wrong edits, one at a time, and the tests that must notice. `npm run mutants` makes each in a copy of the
 * project. An edit that no longer finds its text is reported: it has to follow the code.
 */
export interface Edit {
  readonly what: string;
  readonly file: string;
  /** Stands exactly once in the file. */
  readonly from: string;
  readonly to: string;
  /** Tests that concern the file. */
  readonly tests: readonly string[];
}

const core = 'src/core';
const always = ['tests/cases', 'tests/core/boundaries', 'tests/core/pins'];
const ofTopic = (topic: string) => [...always, `tests/core/topics/${topic}`];
const ofReading = ['tests/core/quantity', 'tests/core/contract/read-inputs.test.ts'];

export const edits: readonly Edit[] = [
  {
    what: 'a seat may be out of true by a third of its tolerance',
    file: `${core}/topics/bearing-fit/judge.ts`,
    from: 'const allowed = tolerance / 2;',
    to: 'const allowed = tolerance / 3;',
    tests: ofTopic('bearing-fit'),
  },
  {
    what: 'zones 6 µm apart hold alike',
    file: `${core}/topics/bearing-fit/values.ts`,
    from: 'const alike = 3e-6;',
    to: 'const alike = 6e-6;',
    tests: ofTopic('bearing-fit'),
  },
  {
    what: 'a belt is tight up to 1.6 times the window',
    file: `${core}/topics/belt-tension/reading.ts`,
    from: 'export const tightLimit = firstFit;',
    to: 'export const tightLimit = 1.6;',
    tests: ofTopic('belt-tension'),
  },
  {
    what: 'the default rib is an eighth heavier',
    file: `${core}/topics/belt-tension/tables.ts`,
    from: "PJ: remembered(0.008, 'ribbed-belt-data')",
    to: "PJ: remembered(0.009, 'ribbed-belt-data')",
    tests: ofTopic('belt-tension'),
  },
  {
    what: 'one cell of the service factors',
    file: `${core}/topics/belt-tension/setting.ts`,
    from: 'heavy: [1.4, 1.5, 1.6]',
    to: 'heavy: [1.5, 1.5, 1.6]',
    tests: ofTopic('belt-tension'),
  },
  {
    what: 'a belt far too tight raises no hazard',
    file: `${core}/topics/belt-tension/compute.ts`,
    from: "tooTight ? [{ hazard: 'belt-over-tension', level: 'notice' }, ...cautions] : cautions",
    to: 'cautions',
    tests: ofTopic('belt-tension'),
  },
  {
    what: 'a sealed ring bears 90 °C',
    file: `${core}/topics/warming/ceilings.ts`,
    from: 'sealedRing: { temperature: celsius(80)',
    to: 'sealedRing: { temperature: celsius(90)',
    tests: ofTopic('warming'),
  },
  {
    what: 'inputs nobody asked for reach the calculation',
    file: `${core}/contract/check-inputs.ts`,
    from: 'if (isAsked(field, asked)) asked[field.key]',
    to: 'asked[field.key]',
    tests: ['tests/core/contract/read-inputs.test.ts'],
  },
  {
    what: '"5 ft 3 ft" is one measure',
    file: `${core}/quantity/read.ts`,
    from: "(a.dimension === 'length' || a.dimension === 'time') && b.si < a.si",
    to: "(a.dimension === 'length' || a.dimension === 'time') && b.si <= a.si",
    tests: ofReading,
  },
  {
    what: 'figures from a million on are shown as powers',
    file: `${core}/quantity/format.ts`,
    from: 'size >= 1e7',
    to: 'size >= 1e6',
    tests: ['tests/core/pins', 'tests/core/quantity'],
  },
  {
    what: 'limits without slack',
    file: `${core}/thresholds/index.ts`,
    from: 'const slack = 1e-9;',
    to: 'const slack = 0;',
    tests: [...always, 'tests/core/thresholds', 'tests/core/contract/read-inputs.test.ts'],
  },
  {
    what: 'limits with a slack of a thousandth',
    file: `${core}/thresholds/index.ts`,
    from: 'const slack = 1e-9;',
    to: 'const slack = 1e-3;',
    tests: [...always, 'tests/core/thresholds'],
  },
  {
    what: 'a credited fee may pay the customer',
    file: `${core}/topics/repair-worth/quote.ts`,
    from: 'Math.max(0, total - fee)',
    to: 'total - fee',
    tests: ofTopic('repair-worth'),
  },
  {
    what: 'the bound on the search forgets false alarms',
    file: `${core}/topics/fault-order/bound.ts`,
    from: '(falseAlarms ? 1 - sums.sure : 0)',
    to: '0',
    tests: ofTopic('fault-order'),
  },
  {
    what: 'the glossary of a shop says nothing over that of the knowledge',
    file: 'src/steps/search/misspelled.ts',
    from: 'files.set(file, join(folder, file))',
    to: 'files.set(join(folder, file), join(folder, file))',
    tests: ['tests/steps/search/misspelled.test.ts'],
  },
  {
    what: 'a reading a fifth off the size is no slip',
    file: `${core}/topics/bearing-fit/seat.ts`,
    from: 'const farShare = 0.02;',
    to: 'const farShare = 0.2;',
    tests: ofTopic('bearing-fit'),
  },
  {
    what: 'a belt near slipping when wet is said to hold',
    file: `${core}/topics/belt-tension/consequences.ts`,
    from: "near ? 'wet-near' : 'wet-holds'",
    to: "'wet-holds'",
    tests: ofTopic('belt-tension'),
  },
  {
    what: 'IT8 of 50 to 80 mm is 45 µm',
    file: `${core}/topics/limits-fits/tables/it-grades.ts`,
    from: '[80, 0.8, 1.2, 2, 3, 5, 8, 13, 19, 30, 46,',
    to: '[80, 0.8, 1.2, 2, 3, 5, 8, 13, 19, 30, 45,',
    tests: ofTopic('limits-fits'),
  },
  {
    what: 'a blade at its mark is over it',
    file: `${core}/topics/blade-speed/compute.ts`,
    from: 'const over = isOver(free, limit);',
    to: 'const over = free >= limit;',
    tests: ofTopic('blade-speed'),
  },
  {
    what: 'a quart is a liter',
    file: `${core}/quantity/units.ts`,
    from: "qt: { dimension: 'volume', si: gallon / 4",
    to: "qt: { dimension: 'volume', si: 1e-3",
    tests: ['tests/core/quantity'],
  },
  {
    what: 'the month comes first for everybody',
    file: `${core}/calendar/read-day.ts`,
    from: 'isMonthFirst(lang) ? orders : orders.reverse()',
    to: 'orders',
    tests: ['tests/core/calendar'],
  },
  {
    what: 'a thousands mark is passed over without a word',
    file: `${core}/quantity/read.ts`,
    from: 'return first.grouped ? { ...read, chosen: true } : read;',
    to: 'return read;',
    tests: ofReading,
  },
  {
    what: 'table cells leave the terminal in SI',
    file: 'src/commands/calc/metric.ts',
    from: 'column?.units ? inUnit(cell, column.units[0]) : clean(cell)',
    to: 'clean(cell)',
    tests: ['tests/commands/calc.test.ts'],
  },
];
