import type { Words } from '../../contract/words.ts';

const amount = (x: number | string | undefined) => Number(x);

export const words: Words = {
  figures: { quote: 'money', most: 'money', between: 'money', unchecked: 'money' },
  verdicts: {
    'worth-repairing': (d, say) =>
      `The quote is ${say.money(amount(d['between']))} below the most worth paying: repair is the cheaper way.`,
    'buy-new': (d, say) =>
      `The quote is ${say.money(amount(d['between']))} above the most worth paying: buying new is the cheaper way.`,
    'too-close-to-call': () =>
      'The quote is within a tenth of the most worth paying. The figures can’t tell the two apart: let the state of the rest of the machine decide.',
    'engine-in-doubt': (d, say) =>
      `The quote pays only with a sound engine. As long as nobody knows, no more than ${say.money(amount(d['unchecked']))} is worth paying: do not order parts yet.`,
    'no-repair-worth-it': () =>
      'With these figures no repair pays, at any price: the machine is worth more as it stands than as a repaired one.',
    'engine-checked': () =>
      'The engine has been checked and is good. Do not skip this on the next machine: drive parts on a worn engine are money lost.',
    'look-first': (d, say) =>
      `Look in the cylinder before any part is ordered. The look costs ${say.money(amount(d['fee']))} and is worth ${say.money(amount(d['worth']))}.`,
    'look-changes-nothing': () =>
      'Whatever a look into the engine showed, you would do the same. It is worth nothing here.',
    'look-costs-more': (d, say) =>
      `A look into the engine is worth ${say.money(amount(d['worth']))} here and costs ${say.money(amount(d['fee']))}. Money alone does not ask for it; the next repair may.`,
    'repair-at-any-service': () => 'Repair is cheaper however short the service after it.',
    'new-at-any-service': () => 'New is cheaper however long the service after the repair.',
    'already-spent': (d, say) =>
      `${say.money(amount(d['spent']))} has been spent already. It does not count: it is gone whether you repair or buy new, and no figure here contains it.`,
    'rule-for': (d) => `The quote is ${d['share']} %, not above ${d['limit']} %: this rule would repair.`,
    'rule-against': (d) => `The quote is ${d['share']} %, above ${d['limit']} %: this rule would not repair.`,
  },
  problems: {
    'year-not-given': (d) => `Year ${d['got']} is asked for, but only ${d['max']} are given.`,
    'no-service-left': () =>
      'At this age hardly any such part is left running: there is no service to spread the money over.',
    'chances-not-one': (d) => `The chances of the states must add up to 100 %; they add up to ${d['got']} %.`,
    'empty-quote': () =>
      'The quote is empty. Enter a part, labor hours or consumables, or give the quote as one total.',
    'margin-too-large': (d) =>
      `A margin is a share of the price and must be below 100 %; ${d['got']} % is not. If ${d['got']} % is on top of the cost, choose markup.`,
  },
};
