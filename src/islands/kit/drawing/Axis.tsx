/** A rule with round figures under it. Figures that would touch are left out, their marks stay. About 20 units high. */
import { formatNumber } from '../../../core/quantity/index.ts';
import type { Scale } from './scale.ts';

interface Props {
  readonly x: Scale;
  /** In the unit shown; `x` takes the same. */
  readonly steps: readonly number[];
  readonly y: number;
  readonly left: number;
  readonly right: number;
  /** Where lines up from the marks end, for reading bars off. */
  readonly up?: number;
  readonly write?: (n: number) => string;
}

export function Axis({ x, steps, y, left, right, up, write = formatNumber }: Props) {
  let end = -Infinity;
  const marks = steps.map((n) => {
    const text = write(n);
    const half = (text.length * 7.6) / 2;
    const at = Math.min(right - half, Math.max(left + half, x(n)));
    const shown = at - half >= end + 6;
    if (shown) end = at + half;
    return { n, text, at, shown };
  });
  return (
    <g>
      {up !== undefined && marks.map((m) => <path class="pic-grid" key={m.n} d={`M${x(m.n).toFixed(1)} ${up}V${y}`} />)}
      <path class="pic-axis" d={`M${left} ${y}H${right}`} />
      {marks.map((m) => (
        <g key={m.n}>
          <path class="pic-axis" d={`M${x(m.n).toFixed(1)} ${y}v4`} />
          {m.shown && (
            <text class="pic-tick" x={m.at} y={y + 16} text-anchor="middle">
              {m.text}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}
