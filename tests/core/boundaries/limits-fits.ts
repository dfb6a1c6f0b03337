import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [],
  noThreshold: {
    'fit-clearance': 'hangs on the two zones, whose limits are whole micrometres of a table',
    'fit-transition': 'as above',
    'fit-interference': 'as above',
  },
};
