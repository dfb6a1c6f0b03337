/** What is due on a line of days and, where a part is replaced by the clock, the cost of each age. */
import { sortedList } from '../../core/topics/service-interval/index.ts';
import { Picture, type DrawingProps } from '../kit/index.ts';
import { ClockCurve, clockOf } from './ClockCurve.tsx';
import { rowHigh, shownRows, Timeline } from './Timeline.tsx';

type Listed = Parameters<typeof sortedList>[0];

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const list = sortedList(inputs as Listed);
  const clock = clockOf(answer, inputs);
  const timelineEnd = 44 + Math.min(list.length, shownRows) * rowHigh + 30 + (list.length > shownRows ? 20 : 0);
  const due = list
    .slice(0, shownRows)
    .map((d) => `${d.machine}, ${d.task}: ${d.date}`)
    .join('; ');
  return (
    <Picture
      id={id}
      title="What is due, on a line of days"
      description={`${due}.${clock ? ` ${clock.description}` : ''}`}
      height={timelineEnd + (clock ? 286 : 0)}
    >
      <Timeline list={list} />
      {clock && <ClockCurve clock={clock} top={timelineEnd + 14} reader={reader} />}
    </Picture>
  );
}
