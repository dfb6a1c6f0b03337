/** Parts of one whole beside one another, to scale; each carries its number where there is room. 22 units high. */
import type { Scale } from './scale.ts';

export interface StackPart {
  /** 1, 2, 3: the number written in it and in the list beside it. */
  readonly number: number;
  readonly value: number;
}

export interface StackMark {
  readonly at: number;
  readonly text: string;
}

interface Props {
  /** Written on the line above the bar. */
  readonly name: string;
  readonly figure: string;
  /** Baseline of the name; the bar lies from 7 to 29 below it. */
  readonly y: number;
  readonly x: Scale;
  readonly left: number;
  readonly right: number;
  readonly parts: readonly StackPart[];
  readonly marks?: readonly StackMark[];
  readonly tall?: number;
}

export function StackBar({ name, figure, y, x, left, right, parts, marks = [], tall = 22 }: Props) {
  const top = y + 7;
  let before = 0;
  const drawn = parts.map((p) => {
    const from = x(before);
    before += p.value;
    return { ...p, from, wide: x(before) - from };
  });
  return (
    <g>
      <text class="pic-text" x={left} y={y}>
        {name}
      </text>
      <text class="pic-figure" x={right} y={y} text-anchor="end">
        {figure}
      </text>
      <path class="pic-axis" d={`M${left} ${top}V${top + tall}`} />
      {drawn
        .filter((p) => p.wide > 0)
        .map((p) => (
          <g key={p.number}>
            <rect
              class={`pic-share pic-share-${((p.number - 1) % 4) + 1}`}
              x={p.from.toFixed(1)}
              y={top}
              width={p.wide.toFixed(1)}
              height={tall}
            />
            {p.wide > 11 && (
              <text class="pic-share-number" x={p.from + p.wide / 2} y={top + tall / 2 + 4.5} text-anchor="middle">
                {p.number}
              </text>
            )}
          </g>
        ))}
      {marks.map((m) => (
        <g key={m.text}>
          <path class="pic-bound" d={`M${x(m.at).toFixed(1)} ${top - 3}v${tall + 6}`} />
          <text
            class="pic-tick"
            x={Math.min(right, Math.max(left, x(m.at)))}
            y={top + tall + 16}
            text-anchor={x(m.at) > right - 40 ? 'end' : x(m.at) < left + 40 ? 'start' : 'middle'}
          >
            {m.text}
          </text>
        </g>
      ))}
    </g>
  );
}

/** What the numbers in the bars stand for, one a line. */
export function StackList({
  x,
  y,
  names,
}: {
  readonly x: number;
  readonly y: number;
  readonly names: readonly string[];
}) {
  return (
    <g>
      {names.map((name, k) => (
        <g key={k}>
          <rect class={`pic-share pic-share-${(k % 4) + 1}`} x={x} y={y + k * 19 - 11} width={16} height={14} />
          <text class="pic-share-number" x={x + 8} y={y + k * 19} text-anchor="middle">
            {k + 1}
          </text>
          <text class="pic-text" x={x + 23} y={y + k * 19}>
            {name}
          </text>
        </g>
      ))}
    </g>
  );
}
