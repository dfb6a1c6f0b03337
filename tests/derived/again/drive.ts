/** Belts, pulleys, clutches, blades and bolts, from the rules their cases name. */
import { n, root, text, type Sums } from './inputs.ts';

const radians = Math.PI / 180;

/** Open belt: 2 C cos(b) + (pi + 2 b) R + (pi - 2 b) r with sin(b) = (R - r) / C. */
function openBelt(r: number, R: number, C: number): number {
  const b = Math.asin((R - r) / C);
  return 2 * C * Math.cos(b) + (Math.PI + 2 * b) * R + (Math.PI - 2 * b) * r;
}

export const sums: Sums = {
  'belt-tension/belt-length': (i) => {
    const [r, R, C] = [n(i, 'small') / 2, n(i, 'large') / 2, n(i, 'centre')];
    return { length: openBelt(r, R, C), textbook: Math.PI * (R + r) + (R - r) ** 2 / C + 2 * C };
  },
  // The whole drive: centers from the length, wrap pi - 2 b, m v2, a pressed span, 750 W s/m over v and half way to 1.5 times.
  'belt-tension': (i) => {
    const [r, R] = [n(i, 'enginePulley') / 2, n(i, 'bladePulley') / 2];
    const C = n(
      i,
      'centre',
      root((c) => openBelt(r, R, c) - n(i, 'length'), R - r + 1e-9, 1e5),
    );
    const v = (2 * Math.PI * r * n(i, 'rotation')) / 60_000;
    const power = n(i, 'power') * n(i, 'factor');
    return {
      centre: C,
      engineWrap: (Math.PI - 2 * Math.asin((R - r) / C)) / radians,
      designPower: power,
      speed: v,
      centrifugal: n(i, 'mass') * v * v,
      ...(i['reading'] === 'force'
        ? {
            measured: n(i, 'force') / (2 * Math.sin(Math.atan(n(i, 'deflection') / (C / 2)))),
            staticTension: ((750 * power) / v / n(i, 'belts')) * 1.25,
          }
        : {}),
      // Pushed down by 1/64 of its span, a strand's halves pull up by 1/32 over the root of 1 + 1/32^2 each.
      ...(i['set'] === 'yes'
        ? {
            setLeastTension: (n(i, 'setLeast') / 2) * Math.sqrt(32 ** 2 + 1),
            setMostTension: (n(i, 'setMost') / 2) * Math.sqrt(32 ** 2 + 1),
            setApart: ((n(i, 'setMost') - n(i, 'setLeast')) / 2) * Math.sqrt(32 ** 2 + 1),
            setAllowed: 0.5 * ((750 * power) / v / n(i, 'belts') + n(i, 'mass') * v * v),
          }
        : {}),
    };
  },
  // Bloch and Geitner: (Ts + Y) / 16, (1.5 Ts + Y) / 16, and 1.33 times that for a new belt.
  'belt-tension/deflection-window': (i) => {
    const greatest = (1.5 * n(i, 'tension') + n(i, 'extra')) / 16;
    return { least: (n(i, 'tension') + n(i, 'extra')) / 16, greatest, firstFit: 1.33 * greatest };
  },
  // ISO 9982, PJ: (n - 1) e + 2 f, e 2.34 and f 1.8 mm.
  'belt-tension/ribbed-face': (i) => ({ face: (n(i, 'ribs') - 1) * 2.34 + 2 * 1.8 }),
  // Euler and Eytelwein: T2 = T1 / exp(mu theta).
  'belt-tension/capstan-ratio': (i) => ({
    difference: n(i, 'load') * (1 - Math.exp(-n(i, 'friction') * n(i, 'wrap') * radians)),
  }),
  // (T1 - m v2) (1 - exp(-mu theta / sin(groove / 2))) v; flat without a groove.
  'belt-tension/power-at-strength': (i) => {
    const wedge = Math.sin((n(i, 'groove', 180) * radians) / 2);
    const grip = 1 - Math.exp((-n(i, 'friction') * n(i, 'wrap') * radians) / wedge);
    const pull = (n(i, 'most') - n(i, 'mass') * n(i, 'speed') ** 2) * grip;
    return { pull, power: (pull * n(i, 'speed') * n(i, 'belts', 1)) / 1000 };
  },
  // GB/T 13575.1: F0 = 500 P / (z v) (2.5 / K - 1) + m v2.
  'belt-tension/static-tension': (i) => {
    const v = n(i, 'speed');
    return { static: ((500 * n(i, 'power')) / n(i, 'belts') / v) * (2.5 / n(i, 'factor') - 1) + n(i, 'mass') * v * v };
  },
  // A string pressed at its middle: 2 T sin(angle), its own tension unchanged.
  'belt-tension/deflection-force': (i) => ({
    force: 2 * n(i, 'tension') * Math.sin(Math.atan(n(i, 'deflection') / (n(i, 'span') / 2))),
  }),
  // T = 4 m L2 f2, and back; stiffness adds its own restoring force, pi4 EI / L3 against pi2 T / L.
  'belt-tension/tension-from-frequency': (i) => ({
    tension: 4 * n(i, 'mass') * (n(i, 'span') / 1000) ** 2 * n(i, 'frequency') ** 2,
  }),
  'belt-tension/span-frequency': (i) => {
    const [T, m, L, EI] = [n(i, 'tension'), n(i, 'mass'), n(i, 'span') / 1000, n(i, 'bending', 0)];
    return { frequency: Math.sqrt(T / m + (EI / m) * (Math.PI / L) ** 2) / (2 * L) };
  },
  // A section A belt runs with its pitch line 2.8 mm inside the rim (ISO 4183).
  'belt-tension/pitch-diameter': (i) => ({ pitch: n(i, 'outside') - 5.6 }),
  // Moments about the other bearing of an overhung shaft.
  'belt-tension/bearing-loads': (i) => {
    const far = (n(i, 'pull') * n(i, 'overhang')) / n(i, 'apart');
    return { far, near: n(i, 'pull') + far };
  },
  // A cone: half the gap over the tangent of half the angle.
  'split-pulley/climb': (i) => ({ radius: n(i, 'gap') / 2 / Math.tan((n(i, 'angle') * Math.PI) / 360) }),
  'split-pulley/state': (i) => ({
    radius:
      n(i, 'closed') + (n(i, 'belt') - n(i, 'nominal') - n(i, 'gap')) / 2 / Math.tan((n(i, 'angle') * radians) / 2),
  }),
  'split-pulley/loop': (i) => ({ turns: n(i, 'length') / (2 * Math.PI * n(i, 'radius')) }),
  'split-pulley': (i) => {
    const climb = n(i, 'gapStart') / 2 / Math.tan((n(i, 'angle') * radians) / 2);
    const closed = n(i, 'closedDiameter') / 2;
    return {
      climb,
      radiusClosed: closed,
      path: openBelt(n(i, 'drivePulley') / 2, closed, n(i, 'centre')),
      passes: i['step'] === 'quarter' ? Math.ceil((n(i, 'gapStart') - n(i, 'gapEnd')) / (n(i, 'thread') / 4)) : NaN,
    };
  },
  'split-pulley/run-out': (i) => ({ runOut: (n(i, 'gap') * n(i, 'blade')) / n(i, 'diameter') }),
  // m r w2 less the spring, times friction, shoes and the radius of the drum.
  'clutch-speed/torque': (i) => {
    const w = (n(i, 'rotation') * 2 * Math.PI) / 60;
    const press = n(i, 'mass') * (n(i, 'radius') / 1000) * w * w - n(i, 'spring');
    return { power: (press * n(i, 'friction') * n(i, 'shoes') * (n(i, 'drum') / 1000) * w) / 1000 };
  },
  // m r w2 = F: the shoe lifts where the pull of the spring is used up.
  'clutch-speed/engagement': (i) => ({
    rotation: (Math.sqrt(n(i, 'spring') / (n(i, 'mass') * (n(i, 'radius') / 1000))) * 60) / (2 * Math.PI),
  }),
  // The square of the speed goes with the spring: half the pull is 1 / sqrt(2) of the speed.
  'clutch-speed': (i) => {
    const engages =
      i['known'] === 'parts'
        ? (Math.sqrt(n(i, 'spring') / ((n(i, 'mass') / 1000) * (n(i, 'radius') / 1000))) * 60) / (2 * Math.PI)
        : n(i, 'engages');
    return {
      engagement: engages,
      weakEngagement: engages * Math.sqrt(n(i, 'weak', 100) / 100),
      margin: engages / n(i, 'idle'),
    };
  },
  // v = pi D n, read the other way for the speed of rotation.
  'blade-speed/surface-speed': (i) => ({ speed: (Math.PI * n(i, 'diameter') * n(i, 'rotation')) / 60_000 }),
  'blade-speed/rotation-for-speed': (i) => ({
    speed: n(i, 'speed'),
    rotation: (n(i, 'speed') * 60_000) / (Math.PI * n(i, 'diameter')),
  }),
  'blade-speed/driven-rotation': (i) => ({
    rotation: ((n(i, 'rotation') * n(i, 'driving')) / n(i, 'driven')) * (1 - n(i, 'slip', 0) / 100),
  }),
  'blade-speed/cut-depth': (i) => ({ depth: (n(i, 'diameter') - n(i, 'flange')) / 2 - n(i, 'clearance', 0) }),
  'blade-speed/blade-for-depth': (i) => ({ diameter: 2 * (n(i, 'depth') + n(i, 'clearance', 0)) + n(i, 'flange') }),
  // A chord: 2 sqrt(h (D - h)).
  'blade-speed/cut-length': (i) => ({ length: 2 * Math.sqrt(n(i, 'depth') * (n(i, 'diameter') - n(i, 'depth'))) }),
  'blade-speed/marks': (i) => {
    const turns = (metersASecond: number) => (metersASecond * 60_000) / (Math.PI * n(i, 'diameter'));
    const all = [n(i, 'rotation', Infinity), turns(n(i, 'speed', Infinity)), turns(n(i, 'feet', Infinity) * 0.00508)];
    const given = all.filter(Number.isFinite);
    return { lowest: Math.min(...given), apart: (Math.max(...given) / Math.min(...given) - 1) * 100 };
  },
  // Marked in rpm and in m/s: the lower of both, for the blade as it is or as it was new.
  'blade-speed': (i) => {
    const turns = (n(i, 'alsoSpeed', n(i, 'markedSpeed')) * 60_000) / (Math.PI * n(i, 'newDiameter', n(i, 'diameter')));
    return {
      speed: (Math.PI * n(i, 'diameter') * n(i, 'spindle')) / 60_000,
      share: (n(i, 'spindle') / n(i, 'markedRotation')) * 100,
      ...(Number.isNaN(turns) ? {} : { limitRotation: Math.min(turns, n(i, 'markedRotation', Infinity)) }),
    };
  },
  // A plain disc: m = rho pi / 4 (D2 - d2) t, I = m (D2 + d2) / 8, E = I w2 / 2; a thin ring at 80 m/s: rho v2.
  'blade-rundown/disc': (i) => disc(n(i, 'diameter'), n(i, 'bore'), n(i, 'thickness')),
  'blade-rundown/energy': (i) => ({ energy: (n(i, 'inertia') * turning(n(i, 'rotation')) ** 2) / 2 }),
  'blade-rundown/run-down': (i) => ({ time: (n(i, 'inertia') * turning(n(i, 'rotation'))) / n(i, 'torque') }),
  'blade-rundown/hoop-stress': (i) => {
    const ring = (n(i, 'density') * ((turning(n(i, 'rotation')) * n(i, 'diameter')) / 2000) ** 2) / 1e6;
    return { ring, bore: ring };
  },
  'blade-rundown': (i) => {
    const { mass, inertia } = disc(n(i, 'diameter'), n(i, 'bore'), n(i, 'thickness'));
    const w = turning(n(i, 'rotation'));
    return { mass, energy: (inertia * w * w) / 2, ringStress: (7850 * ((w * n(i, 'diameter')) / 2000) ** 2) / 1e6 };
  },
  // ISO 898-1: area x proof stress x 75 %; T = K F d (Shigley, Table 8-15); a casting is loaded to half of 0.875 pi d L tau.
  'bolt-torque': (i) => {
    if (i['series'] === 'inch') return inchBolt(text(i, 'inchSize'), n(i, 'ownFactor'));
    const [d, stressArea] = bolts[text(i, 'size')] ?? [NaN, NaN];
    const K = i['state'] === 'oiled' ? 0.18 : 0.2;
    const proof = 0.75 * stressArea * (i['boltClass'] === '10.9' ? 830 : d > 16 ? 600 : 580);
    const strips = 0.875 * Math.PI * d * n(i, 'engaged') * n(i, 'shear');
    const force = i['into'] === 'light' ? Math.min(proof, strips / 2) : proof;
    return { torque: (K * force * d) / 1000, strips: strips / 1000 };
  },
  'bolt-torque/strip-force': (i) => {
    const aRound = 0.875 * Math.PI * n(i, 'diameter') * n(i, 'shear');
    return { strips: (aRound * n(i, 'engaged')) / 1000, needed: (n(i, 'force') * 1000) / aRound };
  },
};

/** Printed clamp load of grade 5 [lbf] and diameter [in] (IFI handbook, 5th edition); torque in N·m. */
const clamps: Readonly<Record<string, readonly [number, number]>> = { '7/16-14': [6788, 0.4375] };
function inchBolt(size: string, K: number) {
  const [clamp, inches] = clamps[size] ?? [NaN, NaN];
  return { torque: K * clamp * 4.4482216152605 * inches * 0.0254 };
}

/** Diameter [mm] and stress area [mm2] (ISO 898-1). */
const bolts: Readonly<Record<string, readonly [number, number]>> = {
  ...{ M5: [5, 14.2], M6: [6, 20.1], M8: [8, 36.6], M10: [10, 58] },
};

const turning = (rpm: number) => (rpm * 2 * Math.PI) / 60;

function disc(D: number, d: number, t: number) {
  const mass = (7850 * Math.PI * (D * D - d * d) * t) / 4e9;
  return { mass, inertia: (mass * (D * D + d * d)) / 8e6 };
}
