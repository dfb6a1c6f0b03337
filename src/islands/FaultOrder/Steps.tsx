/** Checks one after the other: under each name a bar as long as its minutes, from where the one before ended. */
import { formatNumber } from '../../core/quantity/index.ts';
import { fitText, linear } from '../kit/index.ts';

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

/** From one line of the drawing to the next. */
export const lineHigh = 19;
/** A bar lies so far under the base line of its name, and is so high. */
export const underBase = 3.5;
export const barHigh = 3.5;

export function Steps({ steps, left, right, top, more }: Props) {
  const ends = steps.reduce<number[]>((sums, s) => [...sums, (sums.at(-1) ?? 0) + s.minutes], []);
  const total = ends.at(-1) ?? 1;
  const x = linear(0, total, left, right);
  const first = top + 22;
  return (
    <g>
      <text class="pic-text pic-strong" x={left} y={top}>
        Order of checks{more > 0 && `, the first ${steps.length}`}
      </text>
      {steps.map((s, i) => {
        const y = first + i * lineHigh;
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
            <rect
              class={i === 0 ? 'pic-accent-fill' : 'pic-bar'}
              x={from.toFixed(1)}
              y={y + underBase}
              width={Math.max(2, to - from).toFixed(1)}
              height={barHigh}
            />
          </g>
        );
      })}
    </g>
  );
}
