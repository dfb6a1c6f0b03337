/** Interference from least to most on one line, clearance to the left of nothing. */
import { formatNumber } from '../../core/quantity/index.ts';
import { linear, spreadOut } from '../kit/index.ts';

interface Props {
  readonly top: number;
  /** In `unit`. */
  readonly least: number;
  readonly mean: number;
  readonly most: number;
  readonly unit: string;
  readonly measured: boolean;
}

const [left, right] = [14, 346];

export function InterferenceStrip({ top, least, mean, most, unit, measured }: Props) {
  const reach = Math.max(Math.abs(least), Math.abs(most), 1e-6);
  const [from, to] = [Math.min(0, least) - reach * 0.08, Math.max(0, most) + reach * 0.08];
  const x = linear(from, to, left, right);
  const bar = top + 8;
  const zero = x(0);
  const labels = [
    { name: 'min', n: least },
    { name: 'mean', n: mean },
    { name: 'max', n: most },
  ];
  const at = spreadOut(labels.map((l) => x(l.n)), 92, left + 38, right - 40);
  const decimals = unit === 'µm' ? 1 : 2;
  return (
    <g>
      <rect class="pic-clear" x={left} y={bar} width={Math.max(0, zero - left)} height={20} />
      <rect class="pic-bar pic-bar-note" x={x(least)} y={bar + 3} width={Math.max(2, x(most) - x(least))} height={14} />
      <path class="pic-axis" d={`M${left} ${bar + 20}H${right}`} />
      <path class="pic-limit" d={`M${zero.toFixed(1)} ${bar - 4}v28`} />
      {zero - left > 62 && <text class="pic-text" x={zero - 6} y={top} text-anchor="end">clearance</text>}
      {right - zero > 90 && <text class="pic-text" x={zero + 6} y={top}>interference{measured ? ', measured' : ''}</text>}
      {labels.map((l, i) => (
        <g key={l.name}>
          <path class="pic-lead" d={`M${x(l.n).toFixed(1)} ${bar + 17}V${bar + 26}L${(at[i] ?? 0).toFixed(1)} ${bar + 34}`} />
          <text class="pic-text" x={at[i]} y={bar + 48} text-anchor="middle">{l.name} <tspan class="pic-figure">{formatNumber(l.n, decimals)}</tspan>{i === 2 && <tspan class="pic-figure"> {unit}</tspan>}</text>
        </g>
      ))}
      <path class="pic-pointer" d={`M${x(mean).toFixed(1)} ${bar + 3}l-4 -6h8z`} />
    </g>
  );
}
