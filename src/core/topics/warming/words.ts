import type { Words } from '../../contract/words.ts';

const degrees = ['°C', '°F'] as const;

/** Shared with `bearing-fit`, which gives the same verdict. */
export const ceilingWords: Words['verdicts'] = {
  'warm-not-needed': () => 'No warming needed: the parts go together at room temperature with the gap you asked for.',
  'warm-slides': () =>
    'No warming needed: by these figures the ring slides in by hand. If it does not, look for a burr or dirt before you use force.',
  'warm-housing-ok': (data, say) =>
    'Warm the empty housing evenly, in an oven or on a hot plate, to ' +
    `${say.quantity(Number(data['needed']), degrees)}. ` +
    `Highest for it: ${say.quantity(Number(data['ceiling']), degrees)}. The bearing stays cold.`,
  'warm-ring-ok': (data, say) =>
    `Warm the bearing to ${say.quantity(Number(data['needed']), degrees)}, with an induction heater or, ` +
    `if it is open, in clean oil. Highest for it: ${say.quantity(Number(data['ceiling']), degrees)}.`,
  'warm-housing-over': (data, say) =>
    `Do not warm the housing past ${say.quantity(Number(data['ceiling']), degrees)}. ` +
    'Warm it to that and chill the bearing as well, ask for a smaller gap, or press the ring in with ' +
    'force on the outer ring only.',
  'warm-sealed-over': (data, say) =>
    `Do not warm a sealed or greased bearing past ${say.quantity(Number(data['ceiling']), degrees)}: ` +
    'grease and seals suffer. Chill the shaft as well, ask for a smaller gap, or press it on with force ' +
    'on the inner ring only.',
  'warm-ring-over': (data, say) =>
    `Do not warm the bearing past ${say.quantity(Number(data['ceiling']), degrees)}: its steel and its ` +
    'cage suffer. Chill the shaft as well, ask for a smaller gap, or press it on with force on the inner ' +
    'ring only.',
};

export const words: Words = {
  verdicts: {
    ...ceilingWords,
    'cool-not-needed': () => 'No chilling needed.',
    'cool-freezer': () =>
      'A household freezer overnight is cold enough. Wipe the frost off and oil the part at once: the water rusts it.',
    'cool-dry-ice': () =>
      'A freezer is not cold enough; dry ice is. Chill open bearings and bare parts only: a seal goes hard and its lip leaks.',
    'cool-not-enough': () =>
      'Chilling alone does not open this fit at any cold a shop should use. Warm the outer part, or do both.',
    'cool-sealed': () =>
      'Do not chill a sealed or greased bearing below freezer temperature: seals go hard and water gets in. Warm the outer part, or do both.',
    'open-time-short': () =>
      'It closes in less than a minute even in still air. Rehearse the drop-in cold and have every tool at hand.',
    'open-time-fair': () =>
      'Time enough to carry it over. It still closes in seconds once it touches the cold part: go straight in, to the shoulder, and hold it there.',
    'how-to-measure': () =>
      'Measure on the metal beside the seat: a contact probe, or a temperature crayon that melts at a stated heat. An infrared gun reads bare, shiny metal far too low; aim it at a patch of dull tape or paint. Leave a casting in the oven until the thick parts are as warm as the thin ones.',
    'heat-to-over': (data, say) =>
      `Do not warm it to ${say.quantity(Number(data['hot']), degrees)}: ` +
      `${say.quantity(Number(data['ceiling']), degrees)} is the most for this part.`,
    'heat-to-short': () =>
      'At the temperature you mean to use the fit is not open by the gap asked for. Go hotter, up to the ceiling, or chill the other part.',
    'heat-to-short-at-ceiling': () =>
      'That is as hot as this part may be, and the fit is not open by the gap asked for. Chill the other part as well, or choose a smaller gap.',
  },
  problems: {
    'room-too-hot': (data, say) =>
      `The chilled part (${say.quantity(Number(data['cold']), degrees)}) must be colder than the room ` +
      `(${say.quantity(Number(data['room']), degrees)}).`,
    'heat-below-room': (data, say) =>
      `The temperature warmed to (${say.quantity(Number(data['hot']), degrees)}) must be above the room ` +
      `(${say.quantity(Number(data['room']), degrees)}).`,
  },
};
