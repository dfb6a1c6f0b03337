/** The day's points by tool, against the action value and the limit, beside the time that makes them. */
import { formatNumber } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { actionPoints, limitPoints } from '../../core/topics/hand-arm-vibration/index.ts';
import { fitText, linear, Picture, StackBar, StackList, type DrawingProps } from '../kit/index.ts';

const [left, right] = [8, 352];

export function Drawing({ id, answer }: DrawingProps) {
  const table = valueOf(answer, 'each', 'table');
  const column = (key: string) => table.columns.findIndex((c) => c.key === key);
  const [what, value, time, points] = [column('what'), column('value'), column('time'), column('points')];
  const rows = table.rows.map((r) => ({
    what: String(r[what]),
    value: Number(r[value]),
    time: Number(r[time]),
    points: Number(r[points]),
  }));
  const sum = valueOf(answer, 'points', 'number').value;
  const total = rows.reduce((t, r) => t + r.time, 0);
  const minutes = (seconds: number) => `${formatNumber(seconds / 60, 0)} min`;
  const names = rows.map((r) => fitText(`${r.what}, ${formatNumber(r.value, 1)} m/s²`, right - left - 24));
  const description =
    `${minutes(total)} with hands on running tools make ${formatNumber(sum, 0)} points; ` +
    `${actionPoints} is the action value, ${limitPoints} the limit. ` +
    `${rows.map((r) => `${r.what}: ${minutes(r.time)}, ${formatNumber(r.points, 0)} points.`).join(' ')}`;
  return (
    <Picture
      id={id}
      title="The day’s points by tool"
      description={description}
      height={136 + names.length * 19}
      caption="Points go by the square of the value: a tool that shakes twice as hard fills the day four times as fast."
    >
      <StackBar
        name="Time, hands on"
        figure={minutes(total)}
        y={16}
        x={linear(0, Math.max(total, 1), left, right)}
        left={left}
        right={right}
        parts={rows.map((r, k) => ({ number: k + 1, value: r.time }))}
      />
      <StackBar
        name="Points"
        figure={formatNumber(sum, 0)}
        y={70}
        x={linear(0, Math.max(limitPoints * 1.05, sum), left, right)}
        left={left}
        right={right}
        parts={rows.map((r, k) => ({ number: k + 1, value: r.points }))}
        marks={[
          { at: actionPoints, text: sum > 16 * actionPoints ? '' : '100 act' },
          { at: limitPoints, text: '400 limit' },
        ]}
      />
      <StackList x={left} y={142} names={names} />
    </Picture>
  );
}
