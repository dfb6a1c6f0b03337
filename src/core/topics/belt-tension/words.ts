import type { Words } from '../../contract/words.ts';
import type { Say } from '../../contract/words.ts';

const newtons = (say: Say, si: number | string | undefined) => say.quantity(Number(si), ['N', 'lbf']);
const mm = (say: Say, si: number | string | undefined) => say.quantity(Number(si), ['mm', 'in']);

export const words: Words = {
  verdicts: {
    'belt-slack': (d, say) =>
      `Slack: ${newtons(say, d['measured'])}, below ${newtons(say, d['low'])}. ` +
      'Tighten it a little, turn the blade shaft two turns by hand with the engine off, and measure again.',
    'belt-right': (d, say) =>
      `Right: between ${newtons(say, d['low'])} and ${newtons(say, d['high'])}. ` +
      'Lock the tensioner and check again after the first hour of cutting.',
    'belt-tight': (d, say) =>
      `Tight: ${newtons(say, d['measured'])}, above ${newtons(say, d['high'])}. ` +
      'Let off a little: the bearings and the belt wear faster than they need to.',
    'belt-too-tight': (d, say) =>
      `Too tight: ${newtons(say, d['measured'])}, far above ${newtons(say, d['high'])}. ` +
      'Let it off before the engine is started: it overloads the blade-shaft and crankshaft bearings.',
    'set-together': (d, say) =>
      `They differ by ${newtons(say, d['apart'])}, and the window is ${newtons(say, d['allowed'])} wide: one setting of ` +
      'the shafts can put every belt in it. Set the slackest to the lower half.',
    'set-mixed': (d, say) =>
      `Not a set: they differ by ${newtons(say, d['apart'])}, and the window is only ${newtons(say, d['allowed'])} wide. ` +
      'No setting of the shafts puts all of them right. Turn the shaft two turns by hand and push again; still so: look ' +
      'for a worn groove, then change all belts together, one maker, one marked set.',
    'belt-too-fast': (d, say) =>
      `The belt runs at ${say.quantity(Number(d['speed']), ['m/s', 'ft/min'])}; belts of this section are commonly run to ` +
      `about ${say.quantity(Number(d['limit']), ['m/s', 'ft/min'])}. Check pulleys, speed and section before you set it.`,
    'belt-overloaded': (d, say) =>
      `Each belt has to carry ${say.quantity(Number(d['power']), ['kW', 'hp'])}: its work alone stresses it to ` +
      `${Number(d['times']).toFixed(1)} times what a textbook allows a classical V belt. No tension makes this a drive. ` +
      'Check the section, the number of belts and the power; the machine’s manual names the belt.',
    'wet-slips': () =>
      'With a wet or slurry-coated belt this drive slips at full power. Clean the belt and the grooves, and keep the belt cover closed; do not make up for slurry by tightening.',
    'wet-near': () =>
      'With a wet or slurry-coated belt little is left before it slips. Keep the cover closed and the grooves clean.',
    'wet-holds': () => 'The belt still holds when wet, by this estimate.',
    'pulley-small': () =>
      'The small pulley is below the least diameter for this section: the belt bends more sharply than it is made for and cracks early.',
  },
  problems: {
    'set-swapped': () => 'The slackest belt can’t take more force than the tightest. Swap the two, or push again.',
    'belt-flies-off': () =>
      'At this speed the belt’s own mass takes all the tension it can stand: nothing is left to pull with.',
    'pulleys-touch': (d, say) => `The shafts must be more than ${mm(say, d['least'])} apart, or the pulleys touch.`,
    'belt-too-short': (d, say) => `A belt must be longer than ${mm(say, d['least'])} to go round these pulleys.`,
    'no-pitch-diameter': () =>
      'This pulley is smaller than the groove is deep: check the diameter, or whether it is the outside diameter.',
    'pushed-too-far': (d, say) =>
      `Push the span down by no more than ${mm(say, d['most'])}: further, the belt itself stretches and the reading is wrong.`,
    'push-below-stiffness': () =>
      'The force read is smaller than the belt’s own stiffness gives. Measure again, or set the stiffness allowance to 0.',
    'stiffer-than-note': () =>
      'With this bending stiffness even a belt without tension would sound higher than that. Check the frequency, the span and the stiffness.',
    'stretch-needs-stiffness': () =>
      'To read tension from stretch, enter the pull that would double the length of one belt or rib.',
  },
};
