/** Hearing the speed of a running engine: what is said once it was asked for. */
const typeIt = 'Read a tachometer and type the figure.';
const closer = 'Go to the side of the muffler, not nearer than two paces, out of the wind, and keep still.';

export const hearEngine = {
  care: {
    first: 'Ears protected, outdoors, blade off.',
    rest:
      'Lay the device down or have a helper hold it, two or three paces to the side: never in the plane of the blade, ' +
      'never over a running saw.',
  },
  how: {
    idle: 'Engine warm, trigger let go.',
    'take-hold':
      'Open the throttle slowly until the chalk line on the flange just moves, hold it there, and let the page listen.',
    full: 'Engine warm, wide open without load for five seconds, no longer.',
  },
  engine: 'Engine that is heard',
  engines: {
    '2-1': 'Two-stroke, one cylinder',
    '2-2': 'Two-stroke, two cylinders firing in turn',
    '4-1': 'Four-stroke, one cylinder',
    '4-2': 'Four-stroke, two cylinders',
  },
  start: 'Start listening',
  use: (rpm: string) => `Use ${rpm} rpm`,
  sure: { clear: 'clear', fair: 'not clear', poor: 'no engine heard' },
  listening: 'Listening. Hold the speed for three seconds.',
  speed: {
    sure: (rpm: string, within: string) =>
      `${rpm} rpm, give or take ${within}. Touch the throttle: the figure must move with it, or it is another machine.`,
    fair: (rpm: string, within: string) =>
      `About ${rpm} rpm, give or take ${within}: the speed wanders. Touch the throttle: the figure must move with it.`,
  },
  either: (one: string, other: string) =>
    `It can’t tell ${one} from ${other} rpm: the sound fits both. Go by a tachometer, or by which of them can be true.`,
  cannotTell: {
    silent: () => `It can’t tell: too quiet. ${closer}`,
    'nothing-repeats': () => `It can’t tell: no firing stands out of the noise. ${closer} ${typeIt}`,
    hum: () =>
      `It can’t tell: that is a hum without bursts, as a compressor or a fan makes. Stop it, then listen again.`,
    'out-of-range': (least: string, most: string) =>
      `It can’t tell: what it hears is no speed from ${least} to ${most} rpm. Is the engine above the right one? ${typeIt}`,
    jumps: () => `It can’t tell: two sounds take turns. Stop the other machine, or go further from the wall. ${typeIt}`,
    unsteady: () =>
      'It can’t tell: the speed does not stand still. Hold it for three seconds. A warm engine that hunts is a fault.',
  },
  refused: {
    'no-microphone-here':
      'This browser gives no microphone to this page. It needs an address that begins with https, and some browsers ' +
      `refuse pages opened from a folder. ${typeIt}`,
    'not-allowed': `The microphone was not allowed. Nothing is lost. ${typeIt}`,
    'none-found': `This device has no microphone. ${typeIt}`,
    'in-use': `The microphone did not open; another program may hold it. ${typeIt}`,
  },
} as const;
