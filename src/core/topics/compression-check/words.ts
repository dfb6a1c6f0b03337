import type { Say, Words } from '../../contract/words.ts';

const mm = (say: Say, si: number | string | undefined) => say.quantity(Number(si), ['mm', 'in']);

/** Rounded up: what oil can do is never understated. */
const percentUp = (share: number | string | undefined) => Math.ceil(100 * Number(share) - 1e-9);

export const words: Words = {
  verdicts: {
    'compression-high': () =>
      'Higher than wear or good luck explains: think of carbon on the piston, oil or fuel lying in the engine, the wrong ' +
      'cylinder or gauge, or a healthy figure that is not this engine’s.',
    'compression-healthy': () => 'Healthy for this height.',
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
    'pumped-too-high': () =>
      'Let it down. Above 50 kPa (7 psi) good seals lift and leak: the test says nothing. Pump to 35 to 50 kPa and watch again.',
    'leak-none': () =>
      'Tight under pressure. Turn the crank a quarter and test again, then the same with vacuum: a lip can hold one way and not the other.',
    'leak-watch-on': () =>
      'Nothing seen yet, but too short a watch to clear it. Watch for ten seconds at least, ten minutes where the engine runs lean.',
    'leak-slow': () =>
      'It loses air slowly. Suds on hose, pump and blocked ports first; then wiggle the crank while you watch. As the manual ' +
      'says no loss or a little, so judge it.',
    'leak-found': () =>
      'It leaks. Suds on seals, base joint, intake boot, plug and decompression valve until bubbles show, and mend that ' +
      'before the engine runs again: a lean engine burns its piston.',
    'gap-butts': (d, say) =>
      `Do not fit it: the ends meet when hot, and the ring breaks or tears the bore. File the ends square, a stroke at a time, ` +
      `to ${mm(say, d['least'])} at least, and take the burr off.`,
    'gap-tight': (d, say) =>
      `Below the usual ${mm(say, d['least'])}: measure again lower in the bore, then file the ends square to it.`,
    'gap-usual': (d, say) =>
      `Usual: from ${mm(say, d['least'])} to ${mm(say, d['most'])}. The manual’s figure goes first.`,
    'gap-wide': (d, say) =>
      `Wider than the usual ${mm(say, d['most'])}. Measure a new ring in the same bore: if that is in, the ring was worn; if not, the bore is.`,
    'gap-too-wide': (d, say) =>
      `Too wide: over ${mm(say, d['widest'])} neither a new ring’s gap nor the wear a cylinder may have explains it. New ring; ` +
      'if that gaps as wide, the cylinder is done.',
  },
  problems: {
    'lost-over-pumped': () => 'The gauge can’t lose more than it was pumped to. Check the two figures.',
    'no-room-for-oil': (d, say) =>
      `The oil fills the whole combustion chamber (${say.quantity(Number(d['room']), ['cm3', 'in3'])}). Enter less.`,
    'first-over-last': () => 'The first pull can’t read more than the highest. Swap the two, or measure again.',
  },
};
