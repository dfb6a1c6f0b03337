/** Checks one after the other: each bar as long as its minutes. */
import { formatNumber } from '../../core/quantity/index.ts';
import { Axis, fitText, linear, niceSteps } from '../kit/index.ts';

export interface Step {
  readonly name: string;
  readonly minutes: number;
  /** Share of searches that get this far. */
  readonly reached: number;
}

interface Props {
  readonly steps: readonly Step[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Steps that are not drawn. */
  readonly more: number;
}

export const stepHigh = 34;

export function Steps({ steps, left, right, top, more }: Props) {
  const ends = steps.reduce<number[]>((sums, s) => [...sums, (sums.at(-1) ?? 0) + s.minutes], []);
  const total = ends.at(-1) ?? 1;
  const x = linear(0, total, left, right);
  const first = top + 28;
  const bottom = first + steps.length * stepHigh - 8;
  return (
    <g>
      <text class="pic-text pic-strong" x={left} y={top}>
        Order of checks{more > 0 && `, the first ${steps.length}`}
      </text>
      {steps.map((s, i) => {
        const y = first + i * stepHigh;
        const [from, to] = [x((ends[i] ?? 0) - s.minutes), x(ends[i] ?? 0)];
        const figures = `${formatNumber(s.minutes, 0)} min, ${Math.round(s.reached * 100)} %`;
        return (
          <g key={i}>
            <text class="pic-text" x={left} y={y}>
              <tspan class="pic-figure">{i + 1}</tspan> {fitText(s.name, right - left - figures.length * 7.6 - 26)}
            </text>
            <text class="pic-figure" x={right} y={y} text-anchor="end">
              {figures}
            </text>
            <path class="pic-grid" d={`M${left} ${y + 10.5}H${right}`} />
            <rect
              class={i === 0 ? 'pic-accent-fill' : 'pic-bar'}
              x={from.toFixed(1)}
              y={y + 6}
              width={Math.max(2, to - from).toFixed(1)}
              height={9}
            />
          </g>
        );
      })}
      <Axis
        x={x}
        steps={niceSteps(0, total, 6)}
        y={bottom}
        left={left}
        right={right}
        write={(n) => `${formatNumber(n)} min`}
      />
    </g>
  );
}
