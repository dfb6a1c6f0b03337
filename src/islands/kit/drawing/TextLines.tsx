/** A few short lines under one another; a pair is a word and its figure. */
interface Props {
  readonly x: number;
  /** Baseline of the first line. */
  readonly y: number;
  readonly lines: readonly (string | readonly [word: string, figure: string])[];
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly step?: number;
}

export function TextLines({ x, y, lines, anchor = 'start', step = 17 }: Props) {
  return (
    <g>
      {lines.map((line, i) => (
        <text class="pic-text pic-halo" key={i} x={x} y={y + i * step} text-anchor={anchor}>
          {typeof line === 'string' ? (
            line
          ) : (
            <>
              {line[0]} <tspan class="pic-figure">{line[1]}</tspan>
            </>
          )}
        </text>
      ))}
    </g>
  );
}
