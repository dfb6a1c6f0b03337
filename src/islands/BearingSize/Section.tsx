/** A ball bearing cut through its axis, to scale in its three main sizes. Rings and ball are only indicated. */
import { SizeLine } from '../kit/index.ts';

interface Props {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  /** No standard bearing stands behind it: drawn as read. */
  readonly guess: boolean;
}

const [centreX, centreY, high] = [96, 108, 168];

export function Section({ bore, outside, width, guess }: Props) {
  const scale = Math.min(high / outside, 110 / width);
  const [R, r, half] = [(outside * scale) / 2, (bore * scale) / 2, (width * scale) / 2];
  const wall = R - r;
  const ball = Math.min(wall * 0.3, half * 0.8);
  const ring = Math.max(1, wall / 2 - ball * 0.6);
  const [x, wide] = [(centreX - half).toFixed(1), (2 * half).toFixed(1)];
  const [outsideAt, boreAt] = [centreX - half - 36, centreX - half - 14];
  const parts = [centreY - R, centreY - r - ring, centreY + r, centreY + R - ring];
  return (
    <g>
      <path
        class="pic-lead"
        d={
          `M${(outsideAt - 5).toFixed(1)} ${(centreY - R).toFixed(1)}H${x}M${(outsideAt - 5).toFixed(1)} ` +
          `${(centreY + R).toFixed(1)}H${x}M${(boreAt - 5).toFixed(1)} ` +
          `${(centreY - r).toFixed(1)}H${x}M${(boreAt - 5).toFixed(1)} ${(centreY + r).toFixed(1)}H${x}`
        }
      />
      <path class="pic-lead" d={`M${x} ${(centreY + R).toFixed(1)}v20m${wide} 0v-20`} />
      {parts.map((top, i) => (
        <rect
          key={i}
          class={guess ? 'pic-pushed-part' : 'pic-part'}
          x={x}
          y={top.toFixed(1)}
          width={wide}
          height={ring.toFixed(1)}
        />
      ))}
      {ball > 1.5 &&
        [-1, 1].map((side) => (
          <circle key={side} class="pic-inner" cx={centreX} cy={centreY + side * (r + wall / 2)} r={ball} />
        ))}
      <path
        class="pic-lead"
        stroke-dasharray="12 4 2 4"
        d={`M${centreX - half - 8} ${centreY}H${centreX + half + 8}`}
      />
      <SizeLine x1={outsideAt} y1={centreY - R} x2={outsideAt} y2={centreY + R} />
      <SizeLine x1={boreAt} y1={centreY - r} x2={boreAt} y2={centreY + r} />
      <SizeLine x1={centreX - half} y1={centreY + R + 15} x2={centreX + half} y2={centreY + R + 15} />
      <text class="pic-text" x={outsideAt} y={centreY - R - 8} text-anchor="middle">
        outside
      </text>
      <text class="pic-text pic-halo" x={boreAt + 8} y={centreY - 7}>
        bore
      </text>
      <text class="pic-text" x={centreX} y={centreY + R + 35} text-anchor="middle">
        width
      </text>
    </g>
  );
}
