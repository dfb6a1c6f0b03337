import type { Words } from '../../contract/words.ts';

const amount = (x: number | string | undefined) => Number(x);

/** Upkeep and stops may be the almanac's estimates, and nobody gives a machine up on those. */
const ownFigures =
  'Where that box was left empty the figure is an estimate: put your own in before you give the machine up.';

/** The largest part of what keeping the machine costs, where no repair pays at all. */
const reasons: Readonly<Record<string, (money: string) => string>> = {
  'as-it-stands': (money) =>
    `Most of it is the ${money} the machine fetches as it stands: whoever keeps it goes without.`,
  stop: (money) => `Most of it is the days without the machine, ${money}. ${ownFigures}`,
  comeback: (money) => `Most of it is the chance that the repair comes back, ${money}.`,
  upkeep: (money) =>
    `Most of it is upkeep: over the service it takes ${money} more than that of a new one. ${ownFigures}`,
};

export const words: Words = {
  figures: { quote: 'money', most: 'money', between: 'money', unchecked: 'money' },
  verdicts: {
    'worth-repairing': (d, say) =>
      `The quote is ${say.money(amount(d['between']))} below the most worth paying, ` +
      `${say.money(amount(d['limit']))}: repair is the cheaper way.`,
    'buy-new': (d, say) =>
      `The quote is ${say.money(amount(d['between']))} above the most worth paying, ` +
      `${say.money(amount(d['limit']))}: buying new is the cheaper way.`,
    'too-close-to-call': (d, say) =>
      `The quote is within a tenth of the most worth paying, ${say.money(amount(d['limit']))}. ` +
      'The figures can’t tell repair from new: choose by how long you want to keep this machine.',
    'engine-in-doubt': (d, say) =>
      `Look in the cylinder before any part is ordered: the look costs ${say.money(amount(d['fee']))}. ` +
      `If the engine is sound, the quote is ${say.money(amount(d['between']))} below the most worth ` +
      `paying. ${d['blind'] === 'new' ? 'Without a look, buying new is the cheaper way.' : 'Without a look, a worn engine takes the repair money with it.'}`,
    'no-repair-worth-it': (d, say) =>
      `With these figures no repair pays, at any price. ${reasons[String(d['reason'])]?.(say.money(amount(d['amount']))) ?? ''}`,
    'engine-checked': () =>
      'The engine has been checked and is good. Do not skip this on the next machine: drive parts on a worn engine are money lost.',
    'engine-renewed': () =>
      'This repair renews the engine, so its wear is no question any more. Before you order, look at what it does not renew: crankshaft bearings and seals, drive and blade shaft.',
    'look-first': (d, say) =>
      `A look into the engine costs ${say.money(amount(d['fee']))} and is worth ${say.money(amount(d['worth']))}.`,
    'look-changes-nothing': () =>
      'Whatever a look into the engine showed, you would do the same. It is worth nothing here.',
    'look-about-even': (d, say) =>
      `A look into the engine is worth about what it costs, ${say.money(amount(d['worth']))} against ` +
      `${say.money(amount(d['fee']))}. Look if anything makes you doubt this engine.`,
    'look-costs-more': (d, say) =>
      `A look into the engine is worth ${say.money(amount(d['worth']))} here and costs ${say.money(amount(d['fee']))}.`,
    'repair-at-any-service': () => 'Repair is cheaper however short the service after it.',
    'new-at-any-service': () => 'New is cheaper however long the service after the repair.',
    'already-spent': (d, say) =>
      `${say.money(amount(d['spent']))} has been spent already. ` +
      'It does not count: it is gone whether you repair or buy new, and no figure here contains it.',
    'rule-for': (d) => `The quote is ${d['share']} %, not above ${d['limit']} %: this rule would repair.`,
    'rule-against': (d) => `The quote is ${d['share']} %, above ${d['limit']} %: this rule would not repair.`,
  },
  problems: {
    'year-not-given': (d) => `Year ${d['got']} is asked for, but only ${d['max']} are given.`,
    'no-service-left': () =>
      'Hardly any such part is left running a year from now: there is no service to spread the money over. Counted in whole years.',
    'service-too-long': (d) =>
      `At these hours a year the service would last ${d['got']} years. ` +
      `More than ${d['max']} is no service anybody can count on: check both figures.`,
    'chances-not-one': (d) => `The chances of the states must add up to 100 %; they add up to ${d['got']} %.`,
    'empty-quote': () =>
      'The quote is empty. Enter a part, labor hours or consumables, or give the quote as one total.',
    'margin-too-large': (d) =>
      `A margin is a share of the price and must be below 100 %; ${d['got']} % is not. ` +
      `If ${d['got']} % is on top of the cost, choose markup.`,
  },
};
