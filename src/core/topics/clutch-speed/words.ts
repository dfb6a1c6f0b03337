import type { Sentence, Words } from '../../contract/words.ts';

const inTheClutch =
  'slurry packed behind the shoes, a shoe that sticks on its guide, a weak, stretched or broken spring, a dry or seized ' +
  'drum bearing';
const checks =
  `Set the idle to the manual’s speed. If the blade turns all the same, do not go lower: look for ${inTheClutch}, an air leak, ` +
  'or a throttle that does not close.';

/** A blade seen to turn has its own verdict with the way out; it is not said twice. */
const seenToTurn = (d: Parameters<Sentence>[0]) => d['observed'] !== undefined && d['observed'] !== 'stands';

export const words: Words = {
  verdicts: {
    'idle-clear': (d) =>
      seenToTurn(d)
        ? 'Idle stays well below engagement, so these speeds do not explain what you saw: something drags.'
        : 'Idle stays well below engagement: the blade must stand still at idle. If it turns all the same, something drags. ' +
          'With the start throttle set it may turn when the engine fires, until the trigger is touched.',
    'idle-too-near': (d, say) =>
      'Stop work. Idle is too close to engagement: a warm engine or a tired spring brings the blade to ' +
      `turn. Idle must not be above ${say.quantity(Number(d['highest']), ['rpm', 'rpm'])} by these ` +
      `figures; the manual's figure comes first.${seenToTurn(d) ? '' : ` ${checks}`}`,
    'idle-over-engagement': (d) =>
      seenToTurn(d)
        ? 'Stop work. By these speeds the clutch engages at or below idle, so the blade turns there.'
        : 'Stop work. By these speeds the clutch engages at or below idle, and the blade would turn there. You saw it ' +
          `stand: one of the two is not so. Take the saw out of use and the blade off, and measure both speeds again. ${checks}`,
    'drags-on-cord': () =>
      'Stop work. The cord turns the engine far too slowly to throw the shoes: something drags. Look for a dry or seized drum bearing, slurry packed between shoes and drum, a jammed shoe, a broken spring end wedged in the drum.',
    'turns-at-idle-seen': () => `Stop work. Take the saw out of use and the blade off. ${checks}`,
    'lingers-after-cut': () =>
      'Stop work. Let it cool and see whether it stops: a hot drum on worn shoes, a hot drum bearing, or lining glued up with slurry and oil. A blade that merely runs down stops within seconds and does not start again.',
    'weak-turns-at-idle': () =>
      'With one spring that weak its shoe reaches the drum at idle and the blade turns. Change springs as a set.',
    'weak-holds-off': () =>
      'One spring that weak lowers the engagement speed, with the square root of its force, but not yet to idle.',
    'clutch-holds': () => 'The clutch holds the engine’s full torque at running speed.',
    'clutch-slips': () =>
      'The clutch can’t hold the full torque at running speed: it slips, heats up and glazes. Look for oil on the lining, worn shoes, or an engine that does not reach its speed.',
  },
  problems: {
    'idle-over-running': () => 'Idle speed must be below running speed.',
    'shoe-outside-drum': () =>
      'The center of mass of a shoe must lie inside the drum: check its radius, the gap and the drum diameter.',
    'engages-over-running': () => 'The engagement speed must be below the running speed.',
  },
};
