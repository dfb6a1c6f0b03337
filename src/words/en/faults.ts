/** A complaint's page and its planner. */
export const fault = {
  origin: 'How likely, how long and how sure:',
  estimates:
    'Every percentage and every minute here is a shop’s guess, good enough to order the checks and no better. Count your own job cards, and put your figures in the file of this complaint.',
  otherComplaint: 'Another complaint, or your own suspects and minutes?',
  ownOrder: 'What to check first',
  doesTheSame: 'does the same sum for them.',
  customerOwn: 'Customer’s own saw?',
  customerMay: 'What you may check yourself',
  nextCheck: (n: number, of: number, minutes: string) => `Next check, ${n} of ${of}. ${minutes}`,
  makeSure: (minutes: string) => `Make sure before a part is ordered. ${minutes}`,
  search: 'Search for the fault',
  answer: { fault: 'Shows the fault', sound: 'Looks sound', unsure: 'Not sure', later: 'Can’t check now' },
  gave: { fault: 'shows the fault', sound: 'looks sound', unsure: 'not sure', later: 'not checked' },
  answersFor: (check: string) => `Answer: ${check}`,
  why: (minutes: string, of: string) =>
    `Next because it costs about ${minutes} and shows something in ${of} of such machines.`,
  found: 'It points to',
  foundOut: 'Nothing else on the list is left but',
  likely: (chance: string) => `About ${chance} likely, by what was seen and the shop’s guesses.`,
  unchecked: 'Nothing was seen that points here. By the list alone the likeliest is',
  noDiagnosis: 'That is no diagnosis: answer a check, or take one back that was left out.',
  thatWasIt: 'That was it',
  notIt: 'Not it: go on',
  goOnLooking: 'Go on looking',
  was: 'That was it:',
  wasSays: 'Noted on the job sheet.',
  takeBack: 'Take back',
  stop: 'Stop looking',
  stopSays: (out: string, on: string) =>
    `Going on with the checks takes about ${on} on average. Taking the machine down fully takes about ${out} and shows what there is.`,
  stopSaysAsLong: (out: string) =>
    `Going on with the checks takes about as long on average as taking the machine down fully, about ${out}, and that shows what there is.`,
  contradiction: 'These answers can’t all be right for a single fault. Take one back, or look for two faults at once.',
  nothingLeft:
    'No check on this list can tell more. It may be something that is not listed: start from what was seen and look wider.',
  nothingSeen: 'Nothing was checked, so nothing is known yet. Answer a check below.',
  ruledOut: 'looked at, not it',
  undo: 'Undo',
  afresh: 'Start this complaint again',
  afreshDone: 'Started again.',
  print: 'Print',
  moreCautions: (n: number) =>
    n === 1 ? 'One more caution, at its own check' : `${n} more cautions, each at its own check`,
  at: 'At:',
  suspects: 'What it may be',
  notListed: 'Something not listed',
  allChecks: 'All checks, in this order',
  earlier: 'For the earlier answers',
  seenAlready: 'Seen already',
  onPaper: { fault: 'fault', sound: 'sound' },
  stopOnPaper: 'When a check shows a fault, stop: answer it on the page and take the new order.',
  ticket: 'Ticket',
  machine: 'Machine',
  by: 'By',
  why2: 'Why, and the way out',
  guesses: 'Percentages and minutes are the shop’s guesses.',
  orderExact: (minutes: string) =>
    `No other order takes less than about ${minutes} of checking on average: every order was weighed.`,
  orderRule: (minutes: string) => `This order, by most found for each minute, takes about ${minutes} on average.`,
} as const;

/** Chances and minutes as people say them. */
export function percent(chance: number): string {
  if (chance > 0 && chance < 0.01) return 'under 1 %';
  if (chance < 1 && chance > 0.99) return 'over 99 %';
  return `${Math.round(chance * 100)} %`;
}

/** Minutes that rest on guesses: no finer than a guess is. */
export function aboutMinutes(value: number): string {
  return value < 10 ? `${Math.max(1, Math.round(value))} min` : `${Math.round(value / 5) * 5} min`;
}

/** Two guesses that are held against each other, in minutes so fine that they differ; nothing where they hardly do. */
export function aboutMinutesApart(one: number, other: number): readonly [string, string] | undefined {
  const coarse = [aboutMinutes(one), aboutMinutes(other)] as const;
  const fine = [minutes(Math.round(one)), minutes(Math.round(other))] as const;
  return [coarse, fine].find(([a, b]) => a !== b);
}

export function minutes(value: number): string {
  return value < 10 && !Number.isInteger(value) ? `${value.toFixed(1)} min` : `${Math.round(value)} min`;
}
