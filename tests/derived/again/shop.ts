/** Money, chances, orders of checks and intervals, from the rules their cases name. */
import { area, n, root, rows, text, type Inputs, type Sums } from './inputs.ts';

const weibull = (t: number, shape: number, scale: number) => Math.exp(-((t / scale) ** shape));
/** Chance to last `more` once `age` is reached. */
const goesOn = (i: Inputs, age: number, more: number) => {
  const h = (t: number) => (t / n(i, 'scale')) ** n(i, 'shape');
  return Math.exp(h(age) - h(age + more));
};
const level = (rate: number, years: number) => (rate === 0 ? 1 / years : rate / (1 - (1 + rate) ** -years));

/** Every order of a list. */
function orders<T>(list: readonly T[]): T[][] {
  return list.length < 2
    ? [[...list]]
    : list.flatMap((x, k) => orders(list.filter((_, j) => j !== k)).map((o) => [x, ...o]));
}

/** Perfect checks, one for each suspect: minutes of all orders; the last one may count as found without a check. */
function cheapest(i: Inputs) {
  const list = rows(i, 'suspects');
  const whole = list.reduce((sum, s) => sum + n(s, 'chance'), 0);
  const last = i['confirmLast'] === false ? list.length - 1 : list.length;
  return orders(list)
    .map((order) => {
      let [spent, expected] = [0, 0];
      // What several checks share is opened by the first of them.
      const opens = order.findIndex((s) => s['behind'] === true);
      order.forEach((s, k) => {
        if (k < last) spent += n(s, 'minutes') + (k === opens ? n(i, 'stripDown', 0) : 0);
        expected += (n(s, 'chance') / whole) * spent;
      });
      return {
        expected,
        order: order
          .slice(0, last)
          .map((s) => text(s, 'name'))
          .join(', '),
      };
    })
    .reduce((best, o) => (o.expected < best.expected - 1e-12 ? o : best));
}

/** Day number of a date, by counting leap days. */
function day(text: unknown): number {
  const [y = 0, m = 1, d = 1] = String(text).split('-').map(Number);
  const leap = (y % 4 === 0 && y % 100 !== 0) || y % 400 === 0;
  const months = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const before = y - 1;
  const days = before * 365 + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  return days + months.slice(0, m - 1).reduce((a, b) => a + b, 0) + d;
}

/** A worn engine or a sound one, and a look that may err. */
function look(i: Inputs) {
  const [w, finds, alarm] = [n(i, 'worn') / 100, n(i, 'finds') / 100, n(i, 'falseAlarm') / 100];
  const [gain, lost] = [n(i, 'gain'), n(i, 'wasted')];
  const found = w * finds + (1 - w) * alarm;
  const blind = (1 - w) * gain - w * lost;
  const passed = (1 - w) * (1 - alarm) * gain - w * (1 - finds) * lost;
  const condemned = (1 - w) * alarm * gain - w * finds * lost;
  const worth = Math.max(0, passed) + Math.max(0, condemned) - Math.max(0, blind);
  return {
    blind,
    worth,
    perfect: (1 - w) * Math.max(0, gain) - Math.max(0, blind),
    net: worth - n(i, 'fee'),
    found: 100 * found,
    wornIfFound: (100 * w * finds) / found,
    wornIfPassed: (100 * w * (1 - finds)) / (1 - found),
    gainIfPassed: passed / (1 - found),
    gainIfFound: condemned / found,
    indifferent: (100 * gain) / (gain + lost),
  };
}

/** Stages in a row, one of them at fault: a test after stage k tells the side. Least tests to expect, and the first cut. */
function halving(chances: readonly number[]): { readonly tests: number; readonly cut: number } {
  const whole = chances.reduce((a, b) => a + b, 0);
  if (chances.length < 2) return { tests: 0, cut: 0 };
  return chances
    .slice(1)
    .map((_, k) => {
      const [left, right] = [chances.slice(0, k + 1), chances.slice(k + 1)];
      const share = (part: readonly number[]) => part.reduce((a, b) => a + b, 0) / whole;
      return { tests: 1 + share(left) * halving(left).tests + share(right) * halving(right).tests, cut: k + 1 };
    })
    .reduce((best, one) => (one.tests < best.tests - 1e-12 ? one : best));
}

/** Which date a day number is. A day beyond the end of its month is a small day of the next, so small ones are tried first. */
function dateOf(number: number): string {
  if (!Number.isFinite(number)) throw new Error(`There is no day number ${number}.`);
  const two = (x: number) => String(x).padStart(2, '0');
  for (let y = Math.floor(number / 366); ; y++)
    for (let d = 1; d <= 31; d++)
      for (let m = 1; m <= 12; m++) {
        const text = `${y}-${two(m)}-${two(d)}`;
        if (day(text) === number) return text;
      }
}

/** Boxes left empty: shares of the new price for each 100 hours (bench estimates of the almanac, common practice). */
function machines(i: Inputs): Inputs {
  const [P, H] = [n(i, 'newPrice'), n(i, 'hoursPerYear')];
  const stop = n(i, 'downtimeDay', P * Math.min((0.02 * H) / 100, 0.05));
  return {
    rate: n(i, 'rate', 8),
    repair: n(i, 'quote'),
    asIs: n(i, 'asIs') + n(i, 'repairDays', 3) * stop,
    service: n(i, 'serviceYears'),
    endValue: n(i, 'endValue', n(i, 'asIs') / 2),
    repairRunning: n(i, 'repairRunning', (0.07 * P * H) / 100),
    comebackChance: n(i, 'comebackChance', 10),
    comebackCost: n(i, 'comebackCost', 0.12 * P),
    newFirst: P - n(i, 'tradeIn', n(i, 'asIs')) + n(i, 'asIs') + n(i, 'newDays', 1) * stop,
    newLife: n(i, 'newLife'),
    newResale: n(i, 'newResale', 0.12 * P),
    newRunning: n(i, 'newRunning', (0.045 * P * H) / 100),
  };
}

/** What new costs a year, and the repair that costs as much. */
function comparison(i: Inputs) {
  const r = n(i, 'rate') / 100;
  const [N, s] = [n(i, 'newLife'), n(i, 'service')];
  const fund = (years: number) => level(r, years) - r;
  const newYearly = n(i, 'newFirst') * level(r, N) - n(i, 'newResale') * fund(N) + n(i, 'newRunning');
  const again = ((n(i, 'comebackChance', 0) / 100) * n(i, 'comebackCost', 0)) / (1 + r) ** Math.min(1, s);
  const costs = (quote: number, comeback: number) =>
    (n(i, 'asIs') + quote + comeback) * level(r, s) - n(i, 'endValue') * fund(s) + n(i, 'repairRunning');
  const most = root((q) => costs(q, again) - newYearly, -1e6, 1e6);
  const chance = root((p) => costs(n(i, 'repair'), (p * n(i, 'comebackCost', 0)) / (1 + r)) - newYearly, -50, 50);
  return { newYearly, repairYearly: costs(n(i, 'repair'), again), most, comebackToFlip: chance };
}

/** Cost of an hour at each age, its least found by trying, the mean life by adding up survival. */
function bestAge(b: number, eta: number, Cp: number, Cf: number) {
  const R = (t: number) => weibull(t, b, eta);
  const rate = (T: number) => (Cp * R(T) + Cf * (1 - R(T))) / area(R, 0, T);
  let [low, high] = [eta * 0.01, eta * 4];
  for (let k = 0; k < 90; k++) {
    const third = (high - low) / 3;
    if (rate(low + third) < rate(high - third)) high -= third;
    else low += third;
  }
  const age = (low + high) / 2;
  return { age, rate: rate(age), saves: 100 * (1 - (rate(age) * area(R, 0, eta * 40 ** (1 / b), 40_000)) / Cf) };
}

export const sums: Sums = {
  'fault-order/single-checks': cheapest,
  'fault-order/exact-order': cheapest,
  'fault-order/half-split': (i) => {
    const chances = rows(i, 'stages').map((s) => n(s, 'chance', 1));
    const whole = chances.reduce((a, b) => a + b, 0);
    const { tests, cut } = halving(chances);
    const oneByOne = chances.reduce((sum, p, k) => sum + (p / whole) * Math.min(k + 1, chances.length - 1), 0);
    return { best: tests, firstCut: cut, sequential: oneByOne };
  },
  // Blackwell: always where most is found for a minute; minutes spent times the chance that it is still not found.
  'fault-order/repeated-search': (i) => {
    const list = rows(i, 'suspects').map((s) => ({
      name: text(s, 'name'),
      left: n(s, 'chance') / 100,
      q: n(s, 'finds') / 100,
      t: n(s, 'minutes'),
    }));
    const order: string[] = [];
    let [expected, notYet] = [0, 1];
    for (let k = 0; k < 400; k++) {
      const next = list.reduce((best, s) => ((s.left * s.q) / s.t > (best.left * best.q) / best.t + 1e-15 ? s : best));
      expected += next.t * notYet;
      notYet -= next.left * next.q;
      next.left *= 1 - next.q;
      order.push(next.name);
    }
    return { expected, order: order.slice(0, n(i, 'steps')).join(', ') };
  },
  // Where every suspect has one perfect check of its own, the topic is the same question.
  'fault-order': (i) => {
    const checks = rows(i, 'checks');
    if (checks.some((c) => c['ifFaulty'] !== undefined)) return {};
    const minutes = (name: unknown) => n(checks.find((c) => c['suspect'] === name) ?? {}, 'minutes');
    const suspects = rows(i, 'suspects').map((s) => ({
      ...s,
      chance: n(s, 'likelihood'),
      minutes: minutes(s['name']),
    }));
    return { expectedMinutes: cheapest({ suspects }).expected };
  },
  // Bayes.
  'fault-order/after-finding': (i) => {
    const [p, q, f] = [n(i, 'before') / 100, n(i, 'finds') / 100, n(i, 'falseAlarm') / 100];
    const shows = p * q + (1 - p) * f;
    return { shows: 100 * shows, ifShown: (100 * p * q) / shows, ifClear: (100 * p * (1 - q)) / (1 - shows) };
  },
  // Repairs so far: W = share P (h / unit)^exponent, between two readings where an earlier one is given.
  'repair-worth/repairs-so-far': (i) => {
    const at = (h: number) => n(i, 'share') * n(i, 'price') * (h / n(i, 'unit')) ** n(i, 'exponent');
    const total = at(n(i, 'hours')) - at(n(i, 'from', 0));
    return { total, ofPrice: (100 * total) / n(i, 'price'), perHour: total / n(i, 'hours') };
  },
  'repair-worth/repair-per-hour': (i) => {
    const factor = n(i, 'repair') * n(i, 'economic') * n(i, 'area');
    return { factor, cost: (factor * n(i, 'price')) / n(i, 'lifeHours') };
  },
  'repair-worth/book-value': (i) => ({ value: n(i, 'price') * (1 - n(i, 'after') / n(i, 'life')) }),
  'repair-worth/first-cost-with-trade-in': (i) => ({ cost: n(i, 'price') - n(i, 'tradeIn') + n(i, 'worth') }),
  // Each repair is a new try: cost over the chance that it holds.
  'repair-worth/cost-until-it-holds': (i) => {
    const total = n(i, 'cost') / (n(i, 'success') / 100);
    return { total, comebacks: total - n(i, 'cost') };
  },
  'repair-worth/tax-on-invoice': (i) => {
    const [p, l] = [n(i, 'taxParts', 0) / 100, n(i, 'taxLabour', 0) / 100];
    const apart = n(i, 'parts') * p + n(i, 'labour') * l;
    return { tax: i['itemised'] === false ? (n(i, 'parts') + n(i, 'labour')) * Math.max(p, l) : apart };
  },
  'repair-worth/value-of-inspection': look,
  // Year by year: all money brought to today, made level again.
  'repair-worth/economic-life': (i) => {
    const r = n(i, 'rate') / 100;
    let paid = n(i, 'first');
    const yearly = rows(i, 'each').map((y, k) => {
      paid += n(y, 'cost') / (1 + r) ** (k + 1);
      return (paid - n(y, 'resale', 0) / (1 + r) ** (k + 1)) * level(r, k + 1);
    });
    const at = n(i, 'at', 1);
    const [before, now] = [rows(i, 'each')[at - 2], rows(i, 'each')[at - 1] ?? {}];
    const held = before ? n(before, 'resale', 0) : n(i, 'first');
    return {
      life: yearly.indexOf(Math.min(...yearly)) + 1,
      yearly: yearly[at - 1] ?? NaN,
      oneMore: held * (1 + r) - n(now, 'resale', 0) + n(now, 'cost'),
    };
  },
  'repair-worth/most-worth-paying': comparison,
  'repair-worth': (i) => {
    if (i['quoteAs'] === 'lines' || i['serviceAs'] === 'hours' || i['newYears'] !== undefined) return {};
    const { most, newYearly, repairYearly, comebackToFlip } = comparison(machines(i));
    const cents = (x: number) => Math.round(x * 100) / 100;
    return {
      mostWorth: cents(Math.max(0, most)),
      newYearly: cents(newYearly),
      repairYearly: cents(repairYearly),
      newHour: cents(newYearly / n(i, 'hoursPerYear')),
      repairHour: cents(repairYearly / n(i, 'hoursPerYear')),
      comebackToFlip: 100 * comebackToFlip,
    };
  },
  'repair-worth/decision': (i) => {
    const states = rows(i, 'states').map((s) => ({
      p: n(s, 'chance') / 100,
      u: [n(s, 'first'), n(s, 'second')],
      y: n(s, 'positive') / 100,
    }));
    const mean = (weigh: (s: (typeof states)[number]) => number, act: number) =>
      states.reduce((sum, s) => sum + s.p * weigh(s) * (s.u[act] ?? NaN), 0);
    const best = (weigh: (s: (typeof states)[number]) => number) => Math.max(mean(weigh, 0), mean(weigh, 1));
    const blind = best(() => 1);
    const told = states.reduce((sum, s) => sum + s.p * Math.max(...s.u), 0);
    return {
      ...{ first: mean(() => 1, 0), second: mean(() => 1, 1), best: blind, told, knowing: told - blind },
      testing: best((s) => s.y) + best((s) => 1 - s.y) - blind,
      yes: states.reduce((sum, s) => sum + s.p * s.y, 0),
    };
  },
  'repair-worth/uncertain-life': (i) => {
    const r = n(i, 'rate') / 100;
    let service = 0;
    for (let k = 1; k <= n(i, 'horizon'); k++) service += goesOn(i, n(i, 'age'), k) / (1 + r) ** k;
    return { service, yearly: n(i, 'capital') / service + n(i, 'running') };
  },
  // The mean life still in it: survival added up over all that may come.
  'repair-worth/weibull-survival': (i) => {
    const age = n(i, 'age', 0);
    const far = n(i, 'scale') * ((age / n(i, 'scale')) ** n(i, 'shape') + 40) ** (1 / n(i, 'shape')) - age;
    return { survives: goesOn(i, age, n(i, 'time')), remaining: area((t) => goesOn(i, age, t), 0, far, 20_000) };
  },
  // One more failure at most: part, and part with reopening times the chance of it.
  'part-change/healthy-part': (i) => {
    const again = n(i, 'part') + n(i, 'reopen');
    return {
      now: n(i, 'part') + again * (1 - goesOn(i, 0, n(i, 'horizon'))),
      leave: again * (1 - goesOn(i, n(i, 'age'), n(i, 'horizon'))),
    };
  },
  'part-change/mend-or-replace': (i) => {
    const again = n(i, 'part') + n(i, 'reopen');
    const mended = (wear: number) => n(i, 'mend') + again * (1 - goesOn(i, 0, wear * n(i, 'horizon')));
    const replace = n(i, 'part') + again * (1 - goesOn(i, 0, n(i, 'horizon')));
    return { replace, mend: mended(n(i, 'wear')), wearToReplace: root((w) => mended(w) - replace, 0.01, 20) };
  },
  'part-change': (i) => {
    if (i['lifeAs'] !== 'scale') return {};
    const cents = (x: number) => Math.round(x * 100) / 100;
    const again = n(i, 'partCost') + (n(i, 'reopenMinutes') / 60) * n(i, 'labourRate') + n(i, 'stopCost');
    return {
      costNow: cents(n(i, 'partCost') + again * (1 - goesOn(i, 0, n(i, 'horizon')))),
      costLeave: cents(again * (1 - goesOn(i, n(i, 'age'), n(i, 'horizon')))),
    };
  },
  'service-interval/replacement-age': (i) => bestAge(n(i, 'shape'), n(i, 'scale'), n(i, 'planned'), n(i, 'failure')),
  // Largest likelihood, all of them failed: sum(t^b ln t) / sum(t^b) - 1 / b = mean ln t.
  'service-interval/fit-records': (i) => {
    const times = rows(i, 'records').map((r) => n(r, 'time'));
    const logs = times.reduce((sum, t) => sum + Math.log(t), 0) / times.length;
    const power = (b: number, f: (t: number) => number) => times.reduce((sum, t) => sum + t ** b * f(t), 0);
    const shape = root((b) => power(b, Math.log) / power(b, () => 1) - 1 / b - logs, 0.1, 20);
    return { shape, scale: (power(shape, () => 1) / times.length) ** (1 / shape) };
  },
  'service-interval/date-after': (i) => ({ date: dateOf(day(i['date']) + n(i, 'days')) }),
  // Hours left over hours a day of the calendar, or the days of the limit: the sooner, in whole days; dust halves the hours.
  'service-interval': (i) => {
    const task = rows(i, 'tasks')[0] ?? {};
    const start = day(i['start']);
    const gone = task['last'] === undefined ? 0 : start - day(task['last']);
    const aDay = (n(task, 'perDay') * n(task, 'daysPerWeek')) / 7;
    const interval = n(task, 'base') * (task['dust'] === 'dusty' ? 0.5 : 1);
    const byHours = interval / aDay - gone;
    const byLimit = n(task, 'limit', Infinity) - gone;
    const days = Math.floor(Math.min(byHours, byLimit));
    const scale = n(i, 'scale') * (i['partDust'] === 'dusty' ? 0.5 : 1);
    const replaced =
      i['replace'] === true ? bestAge(n(i, 'shape'), scale, n(i, 'planned'), n(i, 'failure')) : undefined;
    return {
      ...{ interval, dueDays: days, dueDate: dateOf(start + days), dueBy: byLimit < byHours ? 'calendar' : 'hours' },
      ...(replaced ? { bestAge: replaced.age, saves: replaced.saves } : {}),
    };
  },
  'service-interval/interval-for-reliability': (i) => ({
    age: n(i, 'scale') * (-Math.log(n(i, 'reach') / 100)) ** (1 / n(i, 'shape')),
  }),
  'service-interval/scale-from-l10': (i) => ({
    middle: (Math.log(0.5) / Math.log(0.9)) ** (1 / n(i, 'shape')) * n(i, 'l10', 1),
  }),
  // Ten times 14,000,000 / (n sqrt(d)) - 4 d hours for a ball bearing, times the factors.
  'service-interval/grease-interval': (i) => ({
    interval:
      10 *
      (14e6 / (n(i, 'rotation') * Math.sqrt(n(i, 'bore'))) - 4 * n(i, 'bore')) *
      (n(i, 'temperature', 1) * n(i, 'surroundings', 1)),
  }),
  'service-interval/due': (i) => {
    const interval = n(i, 'base') * Math.max(n(i, 'least', 0) / 100, n(i, 'dust', 1) * n(i, 'load', 1));
    const days = Math.min((interval / n(i, 'perWeek')) * 7, n(i, 'limit', Infinity));
    return { interval, days, weeks: days / 7, by: days < (interval / n(i, 'perWeek')) * 7 ? 'calendar' : 'hours' };
  },
  // Each state by its hours: those known from the last reading, the others by every turn from 0 that lies near.
  'service-interval/due-at-reading': (i) => {
    const [meter, near, ahead] = [n(i, 'meter'), n(i, 'near', 10) / 100, n(i, 'ahead', 50)];
    const stateOf = (row: Inputs) => {
      const every = n(row, 'interval');
      if (row['last'] !== undefined) {
        const left = n(row, 'last') + every - meter;
        return left < 0 ? 'overdue' : left <= near * every ? 'due' : left <= ahead ? 'coming' : 'later';
      }
      for (let at = every; at <= meter + near * every; at += every)
        if (Math.abs(at - meter) <= near * every) return 'due';
      const gone = meter % every;
      return every - gone <= ahead ? 'coming' : 'later';
    };
    const named = (state: string) =>
      rows(i, 'services')
        .filter((row) => stateOf(row) === state)
        .map((row) => text(row, 'name'))
        .join(', ');
    return { overdue: named('overdue'), due: named('due'), coming: named('coming'), later: named('later') };
  },
  'service-interval/days-between': (i) => ({ days: day(i['to']) - day(i['from']) }),
};
