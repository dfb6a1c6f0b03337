import type { Boundaries } from './row.ts';

/**
 * Equal pulleys of 100 mm, one belt, 2 kW, factor 1, 3000 rpm: v = pi 0.1 x 50 = 15.708 m/s. At 180 degrees the least
 * tension is 750 W s/m for each kilowatt over v (trade formula with G = 1; Bloch and Geitner p. 326 in US units) and
 * m v2 on top; the window of a belt run in ends at 1.5 times that. The span of 400 mm sounds at 1 / (2 S) sqrt(T / m).
 */
const mass = 0.01;
const speed = Math.PI * 0.1 * 50;
const least = (0.75 * 2000) / speed + mass * speed ** 2;
const sound = (tension: number) => Math.sqrt(tension / mass) / (2 * 0.4);
const drive = {
  section: 'PJ',
  belts: 1,
  enginePulley: 100,
  bladePulley: 100,
  known: 'centre',
  centre: 400,
  power: 2,
  rotation: 3000,
  speedOf: 'engine',
  beltState: 'run-in',
  factor: 1,
  reading: 'frequency',
  frequency: 100,
  mass: 1000 * mass,
};

/** Set to the middle of the window, 1.25 times the least; at half a turn the ratio when wet is 5^g. In percent. */
const gripFor = (margin: number) => {
  const q = (margin * 2000) / speed / (2 * (1.25 * least - mass * speed ** 2));
  return (100 * Math.log((1 + q) / (1 - q))) / Math.log(5);
};
/** Belt speed of 250 mm at 1000 rpm [m/s]. */
const large = (Math.PI * 0.25 * 1000) / 60;

/** Push at mid-span by 1/64 of the span [N]: both halves of the strand pull up by the sine of the angle. */
const pushed = (tension: number) => 2 * tension * Math.sin(Math.atan(1 / 32));

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'under the least tension of the trade formula the belt is slack',
      verdict: 'verdict',
      inputs: drive,
      moves: 'frequency',
      at: sound(least),
      gives: ['belt-slack', 'belt-right', 'belt-right'],
    },
    {
      why: 'the window of a belt run in ends at 1.5 times the least',
      verdict: 'verdict',
      inputs: drive,
      moves: 'frequency',
      at: sound(1.5 * least),
      gives: ['belt-right', 'belt-right', 'belt-tight'],
    },
    {
      why: 'over the window by more than the first-fit factor 1.33 (our choice) it is too tight',
      verdict: 'verdict',
      inputs: drive,
      moves: 'frequency',
      at: sound(1.5 * 1.33 * least),
      gives: ['belt-tight', 'belt-tight', 'belt-too-tight'],
    },
    {
      why: 'when wet, the ratio 5^g lets the pull of the work through: margin 1 (capstan law)',
      verdict: 'wetVerdict',
      inputs: drive,
      moves: 'wetGrip',
      at: gripFor(1),
      gives: ['wet-slips', 'wet-near', 'wet-near'],
    },
    {
      why: 'under a margin of 1.2 little is left (our choice)',
      verdict: 'wetVerdict',
      inputs: drive,
      moves: 'wetGrip',
      at: gripFor(1.2),
      gives: ['wet-near', 'wet-holds', 'wet-holds'],
    },
    {
      why: 'the least datum diameter of an A belt is 71 mm (source din-2211-grooves)',
      verdict: 'pulleyVerdict',
      inputs: { ...drive, section: 'A' },
      moves: 'enginePulley',
      at: 71,
      gives: ['pulley-small', undefined, undefined],
    },
    {
      why: 'a PJ belt is run to 60 m/s (memory): 60 / (0.1 pi) turns a second',
      verdict: 'speedVerdict',
      inputs: drive,
      moves: 'rotation',
      at: (60 / (0.1 * Math.PI)) * 60,
      gives: [undefined, undefined, 'belt-too-fast'],
    },
    {
      why: 'twice (our choice) the 2.2 MPa a textbook allows a C belt of 22 x 14 mm; 4/5 of what m v2 leaves pulls',
      verdict: 'loadVerdict',
      inputs: {
        section: 'C',
        belts: 1,
        enginePulley: 250,
        bladePulley: 250,
        known: 'centre',
        centre: 800,
        rotation: 1000,
        mass: 350,
        power: 9,
      },
      moves: 'power',
      at: (0.8 * (4.4 * 14 * (22 - 14 * Math.tan(Math.PI / 9)) - 0.35 * large ** 2) * large) / 1000,
      gives: [undefined, undefined, 'belt-overloaded'],
    },
    {
      why: 'a set differs by no more than the window is wide, half the least tension when run in; pushed by 1/64 of the span',
      verdict: 'setVerdict',
      inputs: {
        ...drive,
        section: 'A',
        belts: 1,
        reading: 'none',
        frequency: undefined,
        pushExtra: 0,
        set: true,
        setLeast: pushed(100),
        setMost: pushed(100),
      },
      moves: 'setMost',
      at: pushed(100 + 0.5 * least),
      gives: ['set-together', 'set-together', 'set-mixed'],
    },
  ],
};
