/** The belt climbing in the groove, state by state and to scale; below it a head drawn together in one go. */
import { formatQuantity } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Picture, SizeLine, spreadOut, TextLines, type DrawingProps } from '../kit/index.ts';
import { layGroove, some } from './groove.ts';
import { enlargement, Pinched } from './Pinched.tsx';

/** More belts over one another than this make a grey block. */
const shownAtMost = 9;

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const input = (key: string) => (typeof inputs[key] === 'number' ? inputs[key] : undefined);
  const nominal = input('beltWidth') ?? 0;
  const states = valueOf(answer, 'states', 'table').rows.map(([, gap, radius]) => ({
    gap: Number(gap),
    radius: Number(radius),
  }));
  const [open, closed] = [states[0] ?? { gap: 0, radius: 0 }, states.at(-1) ?? { gap: 0, radius: 0 }];
  const rim = input('rim');
  const groove = layGroove({
    closed: (input('closedDiameter') ?? 0) / 2,
    angle: input('angle') ?? 1,
    nominal,
    belt: input('beltWidthNow') ?? nominal,
    rim: rim === undefined ? undefined : rim / 2,
    states,
  });
  const shown = some(states, shownAtMost);
  const length = (si: number) => formatQuantity(si, ['mm', 'in'], reader.system, [2, 3]);
  const passes = valueOf(answer, 'passes', 'count').value;
  const climbs = length(valueOf(answer, 'climb', 'quantity').value);
  const [atClosed, atOpen] = [groove.y(closed.radius), groove.y(open.radius)];
  const [labelClosed = 0, labelClimb = 0, labelOpen = 0] = spreadOut(
    [atClosed, (atClosed + atOpen) / 2, atOpen],
    47,
    46,
    182,
  );
  const pinch = {
    tilt: valueOf(answer, 'tilt', 'quantity').value,
    runOut: valueOf(answer, 'runOut', 'quantity').value,
    gap: input('gapPinched') ?? 0,
    blade: input('blade') ?? 0,
    pitch: 2 * closed.radius,
  };
  const times = enlargement(pinch);
  const description =
    `The gap closes from ${length(open.gap)} to ${length(closed.gap)} in ${passes} passes and the belt ` +
    `climbs ${climbs}, from radius ${length(open.radius)} to ${length(closed.radius)}. ` +
    `Drawn together in one go with ${length(pinch.gap)} left on one side, a half tilts and the blade ` +
    `runs out ${length(pinch.runOut)}.`;
  const left = states.length === shown.length ? '' : ` ${shown.length} of ${states.length} states are drawn.`;

  return (
    <Picture
      id={id}
      title="The belt climbs in the split pulley, and what a pinched belt does"
      description={description}
      height={432}
      caption={
        `Groove to scale, cut off towards the axle; the belt’s height is drawn as 0.7 of its width.${left} ` +
        `Below, ${times > 1 ? `the tilt is drawn ${times} times as large` : 'the tilt is drawn as it is'}.`
      }
    >
      <TextLines x={8} y={16} lines={[['Small turns: the belt climbs', climbs]]} />
      {groove.halves.map((d) => (
        <path class="pic-part" key={d} d={d} />
      ))}
      {shown.slice(0, -1).map((s) => (
        <path class="pic-ghost" key={s.gap} d={groove.flanks(s.gap)} />
      ))}
      {shown.slice(0, -1).map((s) => (
        <path class="pic-ghost pic-ghost-belt" key={s.gap} d={groove.beltAt(s.radius)} />
      ))}
      <path class="pic-belt-body" d={groove.beltAt(closed.radius)} />
      <path class="pic-lead" d={`M112 ${atClosed}H226L238 ${labelClosed - 4}M112 ${atOpen}H226L238 ${labelOpen - 4}`} />
      <SizeLine x1={222} y1={atOpen} x2={222} y2={atClosed} />
      <TextLines
        x={242}
        y={labelClosed - 8}
        lines={[
          ['closed, gap', ''],
          ['', length(closed.gap)],
          ['r', length(closed.radius)],
        ]}
        step={16}
      />
      <TextLines x={242} y={labelClimb + 6} lines={[`${passes} ${passes === 1 ? 'pass' : 'passes'}`]} />
      <TextLines
        x={242}
        y={labelOpen - 8}
        lines={[
          ['start, gap', ''],
          ['', length(open.gap)],
          ['r', length(open.radius)],
        ]}
        step={16}
      />
      <Pinched
        {...pinch}
        times={times}
        length={length}
        bladeText={formatQuantity(pinch.blade, ['mm', 'in'], reader.system, [0, 2])}
      />
    </Picture>
  );
}
