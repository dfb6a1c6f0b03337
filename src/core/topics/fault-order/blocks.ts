import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { isOver } from '../../thresholds/index.ts';
import { halfSplit } from './half-split.ts';
import { planOrder } from './plan.ts';
import { repeatedSearch } from './repeat.ts';
import { afterFinding, blockRatio, expectedOfOrder, orderBySingles } from './single-checks.ts';

const share = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0, max: 100 }) as const;
const minutes = { key: 'minutes', label: 'Minutes', kind: 'number', min: 0, above: true, max: 1e6 } as const;
const name = { key: 'name', label: 'Name', kind: 'text', maxLength: 80 } as const;
const fallback = {
  key: 'fallback',
  label: 'Minutes lost if none is found',
  kind: 'number',
  default: 0,
  min: 0,
} as const;
const rows = <const C extends readonly unknown[]>(columns: C, maxRows: number) =>
  ({ key: 'suspects', label: 'Suspects', kind: 'rows', minRows: 1, maxRows, columns }) as const;
const listed = (order: readonly number[], of: readonly { readonly name: string }[]) =>
  order.map((k) => of[k]?.name ?? '').join(', ');

/** One of them is at fault, or none: chances of more than all can't be. Rounded shares may add to a tenth of a point more. */
function overAll(suspects: readonly { readonly chance: number }[]) {
  const total = suspects.reduce((sum, s) => sum + s.chance, 0);
  if (!isOver(total, 1.001)) return undefined;
  return { problem: { field: 'suspects', code: 'more-than-all', data: { got: Math.round(total * 1000) / 10 } } };
}

export const blocks = {
  'single-checks': block({
    what: 'order of checks that each settle one suspect for certain',
    source: 'kadane-simon',
    fields: defineFields([
      rows(
        [
          name,
          share('chance', 'Chance'),
          minutes,
          { key: 'fix', label: 'Minutes to put right', kind: 'number', default: 0, min: 0 },
        ] as const,
        60,
      ),
      fallback,
    ]),
    gives: {
      order: { label: 'Order' },
      expected: { label: 'Expected minutes' },
      withFix: { label: 'With putting it right' },
      listed: { label: 'In the order listed' },
    },
    run: ({ suspects, fallback: lost }) => {
      const over = overAll(suspects);
      if (over) return over;
      const [p, c] = [suspects.map((s) => s.chance), suspects.map((s) => s.minutes)];
      const { order, expected } = orderBySingles(p, c, lost);
      return {
        order: listed(order, suspects),
        expected,
        withFix: expected + suspects.reduce((sum, s) => sum + s.chance * s.fix, 0),
        listed: expectedOfOrder(
          p.map((_, k) => k),
          p,
          c,
          lost,
        ),
      };
    },
  }),
  'exact-order': block({
    what: 'best order of checks that each settle one suspect, with a strip-down some of them share and the last suspect confirmed or not',
    source: 'kadane-simon',
    fields: defineFields([
      rows(
        [
          name,
          share('chance', 'Chance'),
          minutes,
          { key: 'behind', label: 'Behind the strip-down', kind: 'yes-no', default: false },
        ] as const,
        12,
      ),
      { key: 'stripDown', label: 'Minutes of the strip-down', kind: 'number', default: 0, min: 0 },
      { key: 'confirmLast', label: 'Check the last suspect too', kind: 'yes-no', default: true },
      fallback,
    ]),
    gives: {
      order: { label: 'Order' },
      expected: { label: 'Expected minutes' },
      behindPerMinute: { label: 'Found per minute behind the strip-down, its minutes counted in' },
    },
    run: (i) => {
      const over = overAll(i.suspects);
      if (over) return over;
      const behind = i.suspects.filter((s) => s.behind).sort((a, b) => b.chance / b.minutes - a.chance / a.minutes);
      const plan = planOrder(
        {
          suspects: i.suspects.map((s) => ({ id: s.name, name: s.name, likelihood: s.chance })),
          checks: i.suspects.map((s) => ({
            id: s.name,
            name: s.name,
            minutes: s.minutes,
            stripDown: s.behind ? 'open' : undefined,
            tells: [{ suspect: s.name, ifFaulty: 1, ifSound: 0 }],
          })),
          stripDowns: [{ id: 'open', minutes: i.stripDown }],
        },
        [],
        { sure: 1, confirmLast: i.confirmLast, fallbackMinutes: i.fallback },
      );
      const perMinute =
        behind.length === 0
          ? {}
          : {
              behindPerMinute: blockRatio(
                behind.map((s) => s.chance),
                behind.map((s) => s.minutes),
                i.stripDown,
              ),
            };
      return { order: plan.path.map((s) => s.name).join(', '), expected: plan.expectedMinutes, ...perMinute };
    },
  }),
  'repeated-search': block({
    what: 'order of checks that may miss and are repeated, for a fault that is one of these',
    source: 'blackwell-search',
    fields: defineFields([
      rows(
        [
          name,
          share('chance', 'Chance'),
          { ...share('finds', 'Finds it when it is there'), min: 0.1 },
          minutes,
        ] as const,
        30,
      ),
      { key: 'steps', label: 'Checks to name', kind: 'count', default: 6, min: 1, max: 100 },
    ]),
    gives: { order: { label: 'Order' }, expected: { label: 'Expected minutes' } },
    run: (i) => {
      const over = overAll(i.suspects);
      if (over) return over;
      if (i.suspects.every((s) => s.chance === 0)) return { problem: { field: 'suspects', code: 'nobody-likely' } };
      const { order, expected } = repeatedSearch(
        i.suspects.map((s) => s.chance),
        i.suspects.map((s) => s.finds),
        i.suspects.map((s) => s.minutes),
        i.steps,
      );
      return { order: listed(order, i.suspects), expected };
    },
  }),
  'after-finding': block({
    what: 'chance of a fault after a check has shown it, or has not, and how many machines that is',
    source: 'bayes-rule',
    fields: defineFields([
      share('before', 'Chance before'),
      share('finds', 'Shows a fault when there is one'),
      share('falseAlarm', 'Shows one when there is none'),
      { key: 'machines', label: 'Machines checked', kind: 'count', default: 100, min: 1, max: 1000000 },
    ]),
    gives: {
      shows: { label: 'Chance that it shows a fault', units: ['%', '%'] },
      ifShown: { label: 'If it does', units: ['%', '%'] },
      ifClear: { label: 'If it does not', units: ['%', '%'] },
      soundIfClear: { label: 'Sound, if it does not', units: ['%', '%'] },
      times: { label: 'Likelier with the fault than without, times' },
      youden: { label: 'Youden’s index' },
      shown: { label: 'Machines it shows a fault in, on average' },
      right: { label: 'Of those with the fault' },
    },
    run: (i) => {
      const { rightly, ...after } = afterFinding(i.before, i.finds, i.falseAlarm);
      return { ...after, shown: i.machines * after.shows, right: i.machines * rightly };
    },
  }),
  'half-split': block({
    what: 'where to cut a chain of stages one of which is bad',
    source: 'half-split-method',
    fields: defineFields([
      {
        key: 'stages',
        label: 'Stages',
        kind: 'rows',
        minRows: 1,
        maxRows: 60,
        columns: [
          { key: 'chance', label: 'Likely, against the others', kind: 'number', default: 1, min: 0, above: true },
        ],
      },
    ]),
    gives: {
      best: { label: 'Expected tests' },
      firstCut: { label: 'Test after this stage first' },
      middle: { label: 'Expected tests, always in the middle' },
      sequential: { label: 'Expected tests, from one end' },
    },
    run: (i) => ({ ...halfSplit(i.stages.map((s) => s.chance)) }),
  }),
};
