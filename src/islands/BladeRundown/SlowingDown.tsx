/** Speed and energy from letting go to standstill: speed falls evenly, energy with its square. */
import { formatNumber } from '../../core/quantity/index.ts';
import { linear, niceSteps } from '../kit/index.ts';

interface Props {
  readonly top: number;
  /** [s] */
  readonly time: number;
  readonly speedText: string;
}

const [left, right] = [44, 346];
const tall = 112;

export function SlowingDown({ top, time, speedText }: Props) {
  const bottom = top + tall;
  const x = linear(0, time, left, right);
  const y = linear(0, 1, bottom, top);
  const points = Array.from({ length: 25 }, (_, i) => i / 24);
  const energy = points.map((p) => `${x(p * time).toFixed(1)} ${y((1 - p) ** 2).toFixed(1)}`).join('L');
  return (
    <g>
      {[0, 0.5, 1].map((p) => (
        <g key={p}>
          <path class="pic-grid" d={`M${left} ${y(p)}H${right}`} />
          <text class="pic-tick" x={left - 6} y={y(p) + 4} text-anchor="end">
            {formatNumber(p * 100, 0)}%
          </text>
        </g>
      ))}
      {niceSteps(0, time, 5).map((t) => (
        <g key={t}>
          <path class="pic-axis" d={`M${x(t).toFixed(1)} ${bottom}v5`} />
          <text class="pic-tick" x={Math.min(x(t), right - 12)} y={bottom + 18} text-anchor="middle">
            {formatNumber(t)}
          </text>
        </g>
      ))}
      <path class="pic-axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <path class="pic-second" d={`M${left} ${top}L${right} ${bottom}`} />
      <path class="pic-first" d={`M${energy}`} />
      <text class="pic-text pic-halo" x={x(time * 0.42)} y={y(0.72)}>
        speed <tspan class="pic-figure">{speedText}</tspan>
      </text>
      <text class="pic-text pic-halo" x={left + 8} y={bottom - 10}>
        energy
      </text>
      <text class="pic-text" x={right} y={bottom + 36} text-anchor="end">
        seconds after letting go
      </text>
    </g>
  );
}
