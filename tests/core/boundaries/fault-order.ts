import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [],
  open: [
    'check-next',
    'check-next-only',
    'check-next-by-ratio',
    'found',
    'found-by-exclusion',
    'found-unchecked',
    'stop-here',
    'none-left',
    'nothing-to-check',
    'contradiction',
  ],
};
