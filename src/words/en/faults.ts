/** A complaint's page and its planner. */
export const fault = {
  origin: 'How likely, how long and how sure:',
  estimates: 'These are bench estimates, good enough to order the checks; put in your own shop’s in the file.',
  otherComplaint: 'Another complaint, or your own suspects and minutes?',
  ownOrder: 'What to check first',
  doesTheSame: 'does the same sum for them.',
} as const;

/** Chances and minutes as people say them. */
export function percent(chance: number): string {
  if (chance > 0 && chance < 0.01) return 'under 1 %';
  if (chance < 1 && chance > 0.99) return 'over 99 %';
  return `${Math.round(chance * 100)} %`;
}

export function minutes(value: number): string {
  return value < 10 && !Number.isInteger(value) ? `${value.toFixed(1)} min` : `${Math.round(value)} min`;
}
