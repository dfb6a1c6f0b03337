import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Result, Value, VerdictValue } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { fields } from './fields.ts';
import { effort, foundPerMinute, ifClear, ifShows, saved } from './formulas.ts';
import { toSums } from './model.ts';
import { planOrder, type PathEnd, type Plan } from './plan.ts';
import { modelProblems, readModel, type ModelRead } from './read-model.ts';
import { chanceFinds } from './ratio-rule.ts';
import { massOf, stateAfter } from './state.ts';

const tenth = (x: number) => Math.round(x * 10) / 10;

export const compute = guarded(fields, (inputs): Result => {
  const problems = modelProblems(inputs);
  if (problems.length > 0) return { ok: false, problems };
  const read = readModel(inputs);
  const plan = planOrder(read.model, read.seen, read.options);
  const working = workingOf(read, plan, inputs.labourRate);
  return {
    ok: true,
    values: [verdict(plan), ...expectation(plan), beliefs(plan), ranking(plan), path(plan)],
    working,
    cautions: [{ hazard: 'unexpected-start', level: 'danger' }],
  };
});

function verdict(plan: Plan): VerdictValue {
  const named = (code: string, level: VerdictValue['level'], data: VerdictValue['data'] = {}): VerdictValue => ({
    kind: 'verdict',
    key: 'verdict',
    label: 'Next',
    code,
    level,
    data,
    main: true,
  });
  if (plan.belief.contradiction) return named('contradiction', 'stop');
  if (plan.found) {
    const { name, how, chance } = plan.found;
    if (how === 'unchecked') return named('found-unchecked', 'caution', { name, chance: Math.round(chance * 100) });
    return named(how === 'shown' ? 'found' : 'found-by-exclusion', 'good', { name });
  }
  if (plan.stop?.advised)
    return named('stop-here', 'note', {
      name: plan.ranking[0]?.name ?? '',
      minutes: tenth(plan.stop.minutes),
      expected: tenth(plan.stop.goingOn),
    });
  if (!plan.next) return named(plan.answered > 0 ? 'none-left' : 'nothing-to-check', 'caution');
  const { name, minutes, chanceShows, perMinute, expectedIfNext } = plan.next;
  const second = plan.ranking[1];
  const data = {
    name,
    minutes: tenth(minutes),
    chance: Math.round(chanceShows * 100),
    ratio: Number((perMinute * 100).toPrecision(2)),
  };
  if (!second) return named('check-next-only', 'note', data);
  if (expectedIfNext === undefined || second.expectedIfNext === undefined)
    return named('check-next-by-ratio', 'note', data);
  return named('check-next', 'note', {
    ...data,
    expected: tenth(expectedIfNext),
    second: second.name,
    secondExpected: tenth(second.expectedIfNext),
  });
}

/** How the order ends when none of its checks shows a fault. */
const ends: Readonly<Record<PathEnd, string>> = {
  shown: 'what was seen before is enough to act on',
  excluded: 'the last suspect is found by exclusion',
  unchecked: 'the suspect no check can show is left',
  stop: 'stop checking and take the way out',
  'none-left': 'look for something that is not on this list',
};

function expectation(plan: Plan): Value[] {
  if (plan.ranking.length === 0) return [];
  const minutes = (key: string, label: string, value: number, note?: string): Value => ({
    kind: 'number',
    key,
    label,
    value,
    decimals: 1,
    ...(note ? { note } : {}),
  });
  return [
    {
      ...minutes(
        'expectedMinutes',
        'Minutes of checking to expect',
        plan.expectedMinutes,
        plan.stop?.advised
          ? 'The way out, taken now.'
          : plan.method === 'exact'
            ? undefined
            : 'By the rule of most found per minute. The list is too long to compare every order.',
      ),
      ...(plan.expectedError > 0
        ? { low: plan.expectedMinutes - 2 * plan.expectedError, high: plan.expectedMinutes + 2 * plan.expectedError }
        : {}),
      main: true,
    },
    ...(plan.method === 'exact'
      ? []
      : [
          minutes('bound', 'No order can do better than', plan.bound),
          minutes('gap', 'So at most this many minutes are given away', Math.max(0, plan.expectedMinutes - plan.bound)),
        ]),
    minutes('listedMinutes', 'In the order listed, minutes to expect', plan.listedMinutes),
    minutes('savedMinutes', 'Minutes saved by the order', plan.listedMinutes - plan.expectedMinutes),
    minutes('fixMinutes', 'Minutes to put it right, on average', plan.fixMinutes, 'The same whatever the order.'),
    {
      kind: 'text',
      key: 'method',
      label: 'How the order was found',
      value: plan.method === 'exact' ? 'every order compared' : 'most found per minute',
    },
    { kind: 'text', key: 'pathEnd', label: 'If no check shows a fault', value: ends[plan.pathEnd] },
  ];
}

function beliefs(plan: Plan): Value {
  const rows = [...plan.belief.suspects].sort((a, b) => b.chance - a.chance).map((s) => [s.name, s.chance] as const);
  return {
    kind: 'table',
    key: 'beliefs',
    label: 'How likely each suspect is now',
    columns: [
      { key: 'suspect', label: 'Suspect' },
      { key: 'chance', label: 'Chance', units: ['%', '%'], decimals: 0 },
    ],
    rows: plan.belief.somethingElse > 1e-9 ? [...rows, ['Something else', plan.belief.somethingElse]] : rows,
  };
}

function ranking(plan: Plan): Value {
  return {
    kind: 'table',
    key: 'ranking',
    label: 'The checks compared, best next first',
    columns: [
      { key: 'check', label: 'Check' },
      { key: 'minutes', label: 'Minutes from here', decimals: 1 },
      { key: 'shows', label: 'Chance it shows a fault', units: ['%', '%'], decimals: 0 },
      { key: 'perMinute', label: 'Found per minute', units: ['%', '%'], decimals: 2 },
      { key: 'expected', label: 'Minutes to expect if it comes next', decimals: 1 },
    ],
    rows: plan.ranking.map((c) => [
      c.name,
      tenth(c.minutes),
      c.chanceShows,
      c.perMinute,
      c.expectedIfNext === undefined ? null : tenth(c.expectedIfNext),
    ]),
  };
}

function path(plan: Plan): Value {
  return {
    kind: 'table',
    key: 'order',
    label: 'The order, as long as nothing shows a fault',
    columns: [
      { key: 'place', label: 'Place' },
      { key: 'check', label: 'Check' },
      { key: 'minutes', label: 'Minutes', decimals: 1 },
      { key: 'shows', label: 'Chance it shows a fault', units: ['%', '%'], decimals: 0 },
      { key: 'reached', label: 'Chance of getting this far', units: ['%', '%'], decimals: 0 },
    ],
    rows: plan.path.map((c, k) => [k + 1, c.name, tenth(c.minutes), c.chanceShows, c.chanceReached]),
  };
}

/** Numbers behind the next check; nothing to work out once the fault is found, but what the answers made of the chances. */
function workingOf({ model, seen, options }: ModelRead, plan: Plan, rate: number): WorkingStep[] {
  const next = plan.next;
  if (!next) return [];
  const sums = toSums(model, options);
  const at = stateAfter(model, sums, seen);
  const c = model.checks.findIndex((check) => check.id === next.id);
  const check = model.checks[c];
  const [m, x] = [check?.minutes ?? 0, check?.cost ?? 0];
  const f = chanceFinds(sums, at.weights, c);
  const j = sums.tells[c]?.[0] ?? 0;
  const p = (at.weights[j] ?? 0) / massOf(at.weights);
  const q = sums.shows[c]?.[j] ?? 0;
  const y = next.chanceShows;
  return [
    step(effort, { m, s: next.minutes - (sums.effort[c] ?? 0), x, w: rate }, next.minutes),
    step(foundPerMinute, { f, c: next.minutes }, next.perMinute),
    ...(y > 0 ? [step(ifShows, { q, p, y }, (q * p) / y)] : []),
    ...(y < 1 ? [step(ifClear, { q, p, y }, ((1 - q) * p) / (1 - y))] : []),
    step(saved, { E_l: plan.listedMinutes, E: plan.expectedMinutes }, plan.listedMinutes - plan.expectedMinutes),
  ];
}
