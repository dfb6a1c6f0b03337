/** All speeds on one upright rule: where the blade must stand, where the shoes let go, where they hold. */
import { formatNumber } from '../../core/quantity/index.ts';
import { linear, niceSteps, spreadOut } from '../kit/index.ts';

export interface Mark {
  readonly label: string;
  /** [rpm] */
  readonly speed: number;
  readonly text: string;
  readonly look: 'stand' | 'weak' | 'engage' | 'hold' | 'run';
}

interface Props {
  readonly marks: readonly Mark[];
  /** [rpm] */
  readonly idle: number;
  /** Below this the engagement is too near to idle [rpm]. */
  readonly near: number;
  /** Absent where only idle and engagement are known [rpm]. */
  readonly running?: number | undefined;
  readonly top: number;
}

const [left, right, words] = [56, 96, 132];
const tall = 214;
/** Speeds this far over running are shown at the top with an arrow. */
const farOver = 1.6;

export function SpeedLadder({ marks, idle, near, running, top }: Props) {
  const bottom = top + tall;
  const highest = Math.max(running ?? near, ...marks.map((m) => m.speed));
  const most = Math.min((running ?? highest) * farOver, highest) * 1.04;
  const y = linear(0, most, bottom, top);
  const order = [...marks].sort((a, b) => a.speed - b.speed);
  const places = spreadOut(
    order.map((m) => y(m.speed)),
    21,
    top + 4,
    bottom - 4,
  );
  return (
    <g>
      <rect class="pic-stone" x={left} y={y(idle)} width={right - left} height={bottom - y(idle)} />
      <rect
        class="pic-forbidden"
        x={left}
        y={y(Math.min(near, most))}
        width={right - left}
        height={Math.max(0, y(idle) - y(Math.min(near, most)))}
      />
      <path class="pic-axis" d={`M${left} ${top}V${bottom}H${right}V${top}`} />
      {niceSteps(0, most, 6).map((n) => (
        <g key={n}>
          <path class="pic-axis" d={`M${left - 5} ${y(n).toFixed(1)}h5`} />
          <text class="pic-tick" x={left - 8} y={y(n) + 4} text-anchor="end">
            {formatNumber(n, 0)}
          </text>
        </g>
      ))}
      {order.map((m, i) => {
        const [at, line] = [y(m.speed), places[i] ?? 0];
        const over = m.speed > most;
        return (
          <g key={m.label}>
            <path class={`pic-speed pic-speed-${m.look}`} d={`M${left} ${at.toFixed(1)}H${right}`} />
            {over && <path class="pic-pointer" d={`M${right - 12} ${top - 1}l5 -9l5 9z`} />}
            <path class="pic-lead" d={`M${right} ${at.toFixed(1)}h8L${words - 6} ${line.toFixed(1)}`} />
            <text class="pic-text" x={words} y={line + 4}>
              {m.label} <tspan class="pic-figure">{m.text}</tspan>
            </text>
          </g>
        );
      })}
      <text class="pic-text" x={left - 48} y={top - 14}>
        rpm
      </text>
    </g>
  );
}
