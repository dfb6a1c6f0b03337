/** Outer and inner part cut along the shaft, to scale, with the pressure between them. */
import { Arrow, SizeLine, spreadOut } from '../kit/index.ts';

interface Props {
  readonly outside: number;
  readonly joint: number;
  /** 0 for a solid inner part. */
  readonly hole: number;
  readonly length: number;
  readonly pressed: boolean;
  /** Sizes in words. */
  readonly text: { readonly outside: string; readonly joint: string; readonly hole: string; readonly length: string };
}

const [boxHigh, boxWide, middle, centre] = [100, 130, 92, 58];

export function Section({ outside, joint, hole, length, pressed, text }: Props) {
  const scale = Math.min(boxHigh / outside, boxWide / length);
  const wide = Math.max(3, length * scale);
  const [R, r, h] = [(outside * scale) / 2, (joint * scale) / 2, (hole * scale) / 2];
  const [x1, x2] = [middle - wide / 2, middle + wide / 2];
  const over = 12;
  const labels = [
    { y: centre - R, text: `outside ø ${text.outside}` },
    { y: centre - r, text: `joint ø ${text.joint}` },
    { y: centre + (h > 0 ? h : 0), text: h > 0 ? `hole ø ${text.hole}` : 'solid' },
  ];
  const at = spreadOut(
    labels.map((l) => l.y + 4),
    20,
    16,
    100,
  );
  const arrows = pressed && wide > 16;
  return (
    <g>
      <rect
        class="pic-part"
        x={x1.toFixed(1)}
        y={(centre - R).toFixed(1)}
        width={wide.toFixed(1)}
        height={Math.max(1, R - r).toFixed(1)}
      />
      <rect
        class="pic-part"
        x={x1.toFixed(1)}
        y={(centre + r).toFixed(1)}
        width={wide.toFixed(1)}
        height={Math.max(1, R - r).toFixed(1)}
      />
      {(h > 0
        ? [
            [r, r - h],
            [-h, r - h],
          ]
        : [[r, 2 * r]]
      ).map(([above = 0, high = 0]) => (
        <rect
          key={above}
          class="pic-inner"
          x={(x1 - over).toFixed(1)}
          y={(centre - above).toFixed(1)}
          width={(wide + 2 * over).toFixed(1)}
          height={Math.max(1, high).toFixed(1)}
        />
      ))}
      <path class="pic-lead" stroke-dasharray="12 4 2 4" d={`M${x1 - over - 6} ${centre}H${x2 + over + 6}`} />
      <path
        class="pic-press"
        d={`M${x1.toFixed(1)} ${(centre - r).toFixed(1)}H${x2.toFixed(1)}M${x1.toFixed(1)} ${(centre + r).toFixed(1)}H${x2.toFixed(1)}`}
      />
      {arrows &&
        [0.25, 0.75].map((part) => (
          <g key={part}>
            <Arrow
              class="pic-arrow pic-accent"
              x1={x1 + part * wide}
              y1={centre - r + 16}
              x2={x1 + part * wide}
              y2={centre - r + 3}
            />
            <Arrow
              class="pic-arrow pic-accent"
              x1={x1 + part * wide}
              y1={centre + r - 16}
              x2={x1 + part * wide}
              y2={centre + r - 3}
            />
          </g>
        ))}
      {labels.map((l, i) => (
        <g key={l.text}>
          <path
            class="pic-lead"
            d={`M${(i === 0 ? x2 : x2 + over).toFixed(1)} ${l.y.toFixed(1)}L190 ${((at[i] ?? 0) - 4).toFixed(1)}`}
          />
          <text class="pic-text" x={195} y={at[i]}>
            {l.text}
          </text>
        </g>
      ))}
      <SizeLine x1={x1} y1={centre + R + 12} x2={x2} y2={centre + R + 12} />
      <text class="pic-text" x={middle} y={centre + R + 32} text-anchor="middle">
        length {text.length}
      </text>
    </g>
  );
}

/** How far down the section reaches. */
export function sectionBottom(outside: number, length: number): number {
  return centre + (outside * Math.min(boxHigh / outside, boxWide / length)) / 2 + 36;
}
