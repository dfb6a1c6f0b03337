import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { ageAtShare, meanLife, meanRemainingLife, survival } from '../../chance/index.ts';
import { chance, count0, money, moneyOr0, positive, problem, rate } from './block-fields.ts';
import { comebackToFlip, mostWorthPaying, newYearly, repairYearly, type Comparison } from './comparison.ts';
import { bestBlind, engineCheckValue, valueOfInspecting, valueOfKnowing } from './inspection.ts';
import { expectedService, yearlyOverUncertainLife } from './uncertain-life.ts';

const life = [positive('shape', 'Weibull shape'), positive('scale', 'Weibull scale')] as const;
const act = <const K extends string>(key: K, label: string) => ({ ...money(key, label), optional: true }) as const;

export const worthBlocks = {
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
      return service > 0
        ? { service, yearly: yearlyOverUncertainLife(i.capital, i.running, service) }
        : problem('age', 'no-service-left');
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
      return { survives, fails: 1 - survives, remaining: meanRemainingLife(part, i.age), mean: meanLife(part) };
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
