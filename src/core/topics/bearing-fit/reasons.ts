import type { Words } from '../../contract/words.ts';

/** One sentence for each row of the recommendation. */
export const reasons: Words['verdicts'] = {
  'why-shaft-still-slides': () =>
    'The load always bears on the same spot of the inner ring, so it does not creep, and it must be free to slide along the shaft.',
  'why-shaft-still': () =>
    'The load always bears on the same spot of the inner ring, so it does not creep and needs no interference.',
  'why-shaft-turns-light': () =>
    'The load travels round the inner ring and would roll a loose one round the shaft; a light load needs only a little hold.',
  'why-shaft-turns': () =>
    'The load travels round the inner ring and would roll a loose one round the shaft, so it must be tight.',
  'why-shaft-turns-heavy': () =>
    'The load travels round the inner ring and a heavy one loosens it, so it must be tight.',
  'why-shaft-turns-heavy-small': () =>
    'The load travels round the inner ring. The table has no heavy row up to 18 mm; this is the tightest it gives for so small a shaft.',
  'why-housing-turns-light': () =>
    'The load travels round the outer ring and would roll a loose one round the housing; a light load needs a moderate hold.',
  'why-housing-turns': () =>
    'The load travels round the outer ring and would roll a loose one round the housing, so it must be tight.',
  'why-housing-turns-thin': () =>
    'The load travels round the outer ring, it is heavy, and a thin wall gives way: it needs the tightest of the usual fits.',
  'why-housing-unclear-slides': () =>
    'The load changes direction but is not heavy: close, yet the ring can still be moved.',
  'why-housing-unclear': () => 'The load changes direction, so the outer ring must be held, though not hard.',
  'why-housing-unclear-heavy': () =>
    'The load changes direction and is heavy or comes in shocks, so the outer ring must be held tightly.',
  'why-housing-still-hot-shaft': () =>
    'Heat comes in through the shaft, so the outer ring needs room to grow and slide.',
  'why-housing-still-shock': () =>
    'The load stays on one spot but comes in shocks that let go in between, so the ring needs a closer hold.',
  'why-housing-still': () =>
    'The load always bears on the same spot of the outer ring, so it does not creep, and a sliding fit lets the shaft grow.',
};
