/** Whether a shop's color can be read on every ground it stands on, and is not taken for a caution. */
import { apart, contrast, tonesOf } from './color.ts';
import { token } from './tokens.ts';

/** WCAG 2.2, success criterion 1.4.3: text of the usual size. */
export const leastContrast = 4.5;

/** Closer than this two colors look alike beside each other (Oklab); the almanac's own keeps 0.15 from all three. */
export const leastApart = 0.06;

/** Levels that warn of injury. */
const levels = ['danger', 'warning', 'caution'] as const;

/** What is wrong with it, or nothing: found and wanted. */
export function colorProblem(color: string, sheet: string): { got: string; allowed: string } | undefined {
  const grounds = ['paper', 'sheet', 'sunk'] as const;
  const tones = tonesOf(color, token(sheet, 'paper'));
  const seen = (['light', 'dark'] as const).flatMap((by) => {
    const { action, on, wash } = tones[by];
    const when = by === 'light' ? 'by light' : 'in the dark';
    return [
      ...grounds.map((name) => ({ when, on: `the page (${name})`, ratio: contrast(action, token(sheet, name)[by]) })),
      { when, on: 'the ground of what is pointed out', ratio: contrast(action, wash) },
      { when, on: 'a button, under its word', ratio: contrast(action, on) },
    ];
  });
  const worst = seen.reduce((least, one) => (one.ratio < least.ratio ? one : least));
  if (worst.ratio < leastContrast)
    return {
      got: `"${color}", contrast ${(Math.floor(worst.ratio * 100) / 100).toFixed(2)} to 1 ${worst.when} on ${worst.on}`,
      allowed: `at least ${leastContrast} to 1 on every ground, by light and in the dark: take it darker`,
    };
  for (const by of ['light', 'dark'] as const)
    for (const level of levels)
      if (apart(tones[by].action, token(sheet, level)[by]) < leastApart)
        return {
          got: `"${color}", which ${by === 'light' ? 'by light' : 'in the dark'} looks like the color of ${level}`,
          allowed: 'a color that nobody takes for a caution: red, orange and yellow are kept for those',
        };
  return undefined;
}
