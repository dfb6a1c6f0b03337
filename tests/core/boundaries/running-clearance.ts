import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [],
  open: ['runs-clear', 'may-preload', 'preloaded', 'always-preloaded', 'outer-loose-warm'],
};
