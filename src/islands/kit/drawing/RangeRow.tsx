/** One figure with its range: its name on a line, under it a bar from least to most. 34 units high. */
import type { ComponentChildren } from 'preact';
import type { VerdictValue } from '../../../core/contract/result.ts';
import type { Scale } from './scale.ts';

interface Props {
  readonly name: string;
  /** The range in words, "5 to 20 µm". */
  readonly figures: string;
  /** Base line of the name; the bar lies from 6 to 18 below it. */
  readonly y: number;
  readonly x: Scale;
  readonly low: number;
  readonly high: number;
  /** Marked on the bar. */
  readonly mid?: number;
  readonly left: number;
  readonly right: number;
  readonly level?: VerdictValue['level'] | 'plain';
  /** The row the reader chose among several. */
  readonly chosen?: boolean;
  readonly children?: ComponentChildren;
}

export const barTop = 6;
export const barHeight = 12;

export function RangeRow({
  name,
  figures,
  y,
  x,
  low,
  high,
  mid,
  left,
  right,
  level = 'plain',
  chosen = false,
  children,
}: Props) {
  const [from, to] = [x(low), x(high)];
  const bar = y + barTop;
  // About as wide as the two faces set them. Where the line is too short for both, the figures stand beside the bar.
  const [nameWide, figuresWide] = [name.length * 6.8, figures.length * 7.2];
  const onLine = nameWide + figuresWide + 10 <= right - left;
  const after = to + 8 + figuresWide <= right;
  return (
    <g>
      {children}
      <text class={chosen ? 'pic-text pic-strong' : 'pic-text'} x={left} y={y}>
        {name}
      </text>
      <rect
        class={level === 'plain' ? 'pic-bar' : `pic-bar pic-bar-${level}`}
        x={Math.max(left, Math.min(from, right - 2.5)).toFixed(1)}
        y={bar}
        width={Math.max(2.5, to - from).toFixed(1)}
        height={barHeight}
      />
      {mid !== undefined && to - from > 12 && (
        <path class="pic-middle" d={`M${x(mid).toFixed(1)} ${bar}v${barHeight}`} />
      )}
      {onLine ? (
        <text class="pic-figure" x={right} y={y} text-anchor="end">
          {figures}
        </text>
      ) : (
        <text
          class="pic-figure pic-halo"
          x={after ? to + 8 : Math.max(left + figuresWide, from - 8)}
          y={bar + 10.5}
          text-anchor={after ? 'start' : 'end'}
        >
          {figures}
        </text>
      )}
    </g>
  );
}
