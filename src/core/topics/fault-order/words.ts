import type { Words } from '../../contract/words.ts';

export const words: Words = {
  verdicts: {
    'check-next': (d) =>
      `${d['name']}: ${d['minutes']} min, ${d['chance']} % chance of showing a fault. ` +
      `Starting with it the search takes ${d['expected']} min on average; ` +
      `starting with "${d['second']}", ${d['secondExpected'] === d['expected'] ? 'as long' : `${d['secondExpected']} min`}.`,
    'check-next-only': (d) =>
      `${d['name']}: ${d['minutes']} min, ${d['chance']} % chance of showing a fault. No other check is left that tells anything.`,
    'check-next-by-ratio': (d) =>
      `${d['name']}: ${d['minutes']} min, ${d['chance']} % chance of showing a fault. ` +
      `It finds most for its time: ${d['ratio']} % a minute, with the checks that share its strip-down.`,
    found: (d) => `${d['name']}: a check has shown it, and it is likely enough to act on.`,
    'found-by-exclusion': (d) => `${d['name']}: everything else is as good as cleared. No check has shown it.`,
    'found-unchecked': (d) =>
      `${d['name']}: ${d['chance']} % by the percentages of the list alone. ` +
      'No answer points at it, and no check that is left could. Look at it before you order a part.',
    'stop-here': (d) =>
      `Stop checking and take the way out: ${d['minutes']} min. Going on with "${d['name']}" takes ` +
      `${d['minutes'] === d['expected'] ? 'as long' : `${d['expected']} min`} on average.`,
    'none-left': () =>
      'No check is left that tells anything, and nobody is likely enough. Look for something that is not on this list.',
    'nothing-to-check': () =>
      'No check on this list tells anything about these suspects. Nothing has been looked at yet: add a check that does.',
    contradiction: () => 'These answers can’t all be right. Do the last check again, or correct an answer.',
  },
  problems: {
    'named-twice': (d) => `"${d['name']}" stands in the list twice. Give each its own name.`,
    'no-such-suspect': (d) => `There is no suspect called "${d['name']}". The suspects are: ${d['allowed']}.`,
    'no-such-strip-down': (d) => `There is no strip-down called "${d['name']}". There is: ${d['allowed']}.`,
    'told-twice': (d) => `The check "${d['check']}" tells about "${d['name']}" in two rows. Keep one of them.`,
    'check-differs': (d) =>
      `The rows of the check "${d['check']}" differ in minutes, money, strip-down or answer. Write the same in each of them.`,
    'nobody-likely': () => 'Every suspect has a likelihood of 0 %. Give at least one of them more.',
    'more-than-all': (d) =>
      `The likelihoods add up to ${d['got']} %, more than 100 %. Lower them, or say that it can only be one of these.`,
  },
};
