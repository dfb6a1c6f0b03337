import type { Words } from '../../contract/words.ts';

/** Rounded up: what oil can do is never understated. */
const percentUp = (share: number | string | undefined) => Math.ceil(100 * Number(share) - 1e-9);

export const words: Words = {
  verdicts: {
    'compression-healthy': () =>
      'Healthy for this height. Far above it, think of carbon on the piston or fuel lying in the crankcase.',
    'compression-serviceable': () => 'Serviceable. Look through the exhaust port before you spend on anything else.',
    'compression-worn': () =>
      'Worn: slow to start, first when hot, then always; near the lower end it hardly starts. Look at piston, ring and ' +
      'cylinder through the port, and find how dust got in, before parts are ordered.',
    'compression-low': () =>
      'Too low: it will hardly start, if at all. Check plug seat, gauge hose and decompression valve first; then open ' +
      'the engine, or weigh the repair against its worth.',
    'climbs-slowly': () => 'Low on the first pull and climbing slowly: points to rings or bore. Look through the port.',
    'climbs-slowly-to-good': () =>
      'Low on the first pull, good in the end. Pull harder and measure again: a slow or short first pull does the same.',
    'jumps-up': () =>
      'Up quickly and then still: what leaks leaks all the time. Look at plug seat, head joint and decompression valve.',
    'jumps-up-to-good': () => 'Up quickly to a good reading: sound inside. Look for fuel, spark or an intake leak.',
    'oil-too-much': (d, say) =>
      `Too much oil to learn anything from: by itself it can raise the reading of a sound engine by ` +
      `${percentUp(d['alone'])} %. Turn the plug hole down, plug out, pull slowly until it has run out, and measure ` +
      `again with at most ${say.quantity(Number(d['most']), ['mL', 'mL'])}.`,
    'oil-fills-chamber': (d, say) =>
      `Do not pull. That oil can fill the whole combustion chamber (about ${say.quantity(Number(d['room']), ['cm3', 'cm3'])}): ` +
      'the piston stops against it, and the rod, the cord or a thumb gives way. Plug out, plug hole down, turn slowly ' +
      'by hand until the oil has run out.',
    'oil-fell': () =>
      'The reading fell with oil: the two do not belong together. Look for oil in the gauge valve, a throttle not wide ' +
      'open, fewer pulls. Measure both again before you decide anything.',
    'oil-points-to-rings': () =>
      'More than the oil can make by itself: points to rings or bore. Confirm it through the exhaust port before parts ' +
      'are ordered.',
    'oil-cannot-tell': (d) =>
      `The test cannot tell. Up to ${percentUp(d['alone'])} % of rise is the oil itself, and two readings differ by as ` +
      'much again. That neither shows nor clears the rings: look through the exhaust port, then do the pressure and ' +
      'vacuum test of crankcase and joints.',
  },
  problems: {
    'no-room-for-oil': (d, say) =>
      `The oil fills the whole combustion chamber (${say.quantity(Number(d['room']), ['cm3', 'in3'])}). Enter less.`,
    'first-over-last': () => 'The first pull can’t read more than the highest. Swap the two, or measure again.',
  },
};
