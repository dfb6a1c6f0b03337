import type { Words } from '../../contract/words.ts';

export const words: Words = {
  verdicts: {
    'compression-healthy': () =>
      'Healthy for this height. Far above it, think of carbon on the piston or fuel lying in the crankcase.',
    'compression-serviceable': () => 'Serviceable. Look through the exhaust port before you spend on anything else.',
    'compression-worn': () =>
      'Worn: starts cold, hard to start hot. Look at piston, ring and cylinder through the port, and find how dust got in, before parts are ordered.',
    'compression-low': () =>
      'Too low to run well. Check plug seat, gauge hose and decompression valve first; then open the engine, or weigh the repair against its worth.',
    'climbs-slowly': () => 'Low on the first pull and climbing slowly: points to rings or bore.',
    'jumps-up': () =>
      'Up quickly and then still: what leaks, if anything, leaks all the time. Look at plug seat, head joint and decompression valve.',
    'rings-leak': () => 'Oil raised the reading: rings or bore leak.',
    'not-the-rings': () =>
      'Oil hardly changed the reading: look at plug seat, head or cylinder-base joint, decompression valve or valves.',
  },
  problems: {
    'first-over-last': () => 'The first pull can’t read more than the highest. Swap the two, or measure again.',
  },
};
