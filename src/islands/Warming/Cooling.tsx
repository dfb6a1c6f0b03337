/** How it cools on the way from oven to bench: quickest, usual and slowest, down to where the gap closes. */
import { formatIn, formatNumber, pick } from '../../core/quantity/index.ts';
import type { QuantityValue } from '../../core/contract/result.ts';
import { Axis, linear, niceSteps, type Reader } from '../kit/index.ts';

interface Props {
  readonly top: number;
  readonly reader: Reader;
  /** Time until the gap has gone, with its range [s]. */
  readonly time: QuantityValue;
  /** [K] */
  readonly room: number;
  readonly hot: number;
  /** Temperature at which the gap has gone [K]. */
  readonly closed: number;
}

const [left, right, high] = [52, 346, 74];

export function Cooling({ top, reader, time, room, hot, closed }: Props) {
  const times = [time.low ?? time.value, time.value, time.high ?? time.value];
  const last = Math.max(...times, 1) * 1.04;
  const degrees = pick(['°C', '°F'] as const, reader.system);
  const bottom = top + high;
  const x = linear(0, last / 60, left, right);
  const y = linear(closed, hot, bottom, top);
  const curve = (end: number) => {
    // The time constant of Newton's law, from the two ends of the curve.
    const constant = end / Math.log((hot - room) / (closed - room));
    const points = Array.from({ length: 13 }, (_, i) => (end * i) / 12);
    return points
      .map(
        (t, i) =>
          `${i === 0 ? 'M' : 'L'}${x(t / 60).toFixed(1)} ${y(room + (hot - room) * Math.exp(-t / constant)).toFixed(1)}`,
      )
      .join('');
  };
  const names = times.map((t) => formatNumber(t / 60, 1));
  return (
    <g>
      <text class="pic-text" x={4} y={top - 12}>
        open for {names[0]} to {names[2]} min, about <tspan class="pic-figure">{names[1]} min</tspan>
      </text>
      <text class="pic-tick" x={left - 5} y={top + 8} text-anchor="end">
        {formatIn(hot, degrees)}
      </text>
      <text class="pic-tick" x={left - 5} y={bottom + 1} text-anchor="end">
        {formatIn(closed, degrees)}
      </text>
      <path class="pic-axis" d={`M${left} ${top}V${bottom}`} />
      <path class="pic-lead" d={curve(times[0] ?? 1)} />
      <path class="pic-lead" d={curve(times[2] ?? 1)} />
      <path class="pic-first" d={curve(times[1] ?? 1)} />
      <circle class="pic-accent-fill" cx={x((times[1] ?? 0) / 60)} cy={bottom} r={4} />
      <Axis x={x} steps={niceSteps(0, last / 60, 6)} y={bottom} left={left} right={right} />
      <text class="pic-text" x={(left + right) / 2} y={bottom + 34} text-anchor="middle">
        minutes from the oven until it closes
      </text>
    </g>
  );
}
