/** One tolerance zone as a block, never thinner than can be seen; what was measured stands on it as marks. */
interface Props {
  readonly kind: 'a' | 'b';
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** Measured sizes: one, or smallest, mean and largest. */
  readonly marks: readonly number[];
}

export function Zone({ kind, x, width, top, bottom, marks }: Props) {
  const height = Math.max(2, bottom - top);
  const mean = marks.length === 3 ? marks[1] : marks[0];
  const middle = x + width / 2;
  return (
    <g>
      <rect class={`pic-zone-${kind}`} x={x} y={(top + bottom - height) / 2} width={width} height={height} />
      {marks.length === 3 && (
        <path
          class="pic-limit"
          d={
            `M${middle} ${(marks[0] ?? 0).toFixed(1)}V${(marks[2] ?? 0).toFixed(1)}M${middle - 7} ` +
            `${(marks[0] ?? 0).toFixed(1)}h14M${middle - 7} ${(marks[2] ?? 0).toFixed(1)}h14`
          }
        />
      )}
      {mean !== undefined && <path class="pic-dot" d={`M${middle} ${(mean - 6).toFixed(1)}l6 6l-6 6l-6 -6z`} />}
    </g>
  );
}
