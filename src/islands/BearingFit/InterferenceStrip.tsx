/** Interference from least to most on one line, clearance to the left of nothing; under it what a warm housing leaves of it. */
import { formatNumber } from '../../core/quantity/index.ts';
import { linear, RangeRow, spreadOut } from '../kit/index.ts';

interface Props {
  readonly top: number;
  /** In `unit`. */
  readonly least: number;
  readonly mean: number;
  readonly most: number;
  readonly unit: string;
  readonly measured: boolean;
  /** What the warm housing takes, in `unit`; nothing for a shaft. */
  readonly lost: number | undefined;
}

const [left, right] = [14, 346];

export function InterferenceStrip({ top, least, mean, most, unit, measured, lost }: Props) {
  const warm = lost === undefined ? undefined : { least: least - lost, mean: mean - lost, most: most - lost };
  const [low, high] = [Math.min(0, least, warm?.least ?? 0), Math.max(0, most, warm?.most ?? 0)];
  const reach = Math.max(-low, high, 1e-6);
  const [from, to] = [low - reach * 0.08, high + reach * 0.08];
  const x = linear(from, to, left, right);
  const bar = top + 8;
  const zero = x(0);
  const labels = [
    { name: 'min', n: least },
    { name: 'mean', n: mean },
    { name: 'max', n: most },
  ];
  const at = spreadOut(
    labels.map((l) => x(l.n)),
    92,
    left + 38,
    right - 40,
  );
  const decimals = unit === 'µm' ? 1 : 2;
  return (
    <g>
      <rect class="pic-clear" x={left} y={bar} width={Math.max(0, zero - left)} height={20} />
      <rect class="pic-bar pic-bar-note" x={x(least)} y={bar + 3} width={Math.max(2, x(most) - x(least))} height={14} />
      <path class="pic-axis" d={`M${left} ${bar + 20}H${right}`} />
      <path class="pic-limit" d={`M${zero.toFixed(1)} ${bar - 4}v28`} />
      {zero - left > 62 && (
        <text class="pic-text" x={zero - 6} y={top} text-anchor="end">
          clearance
        </text>
      )}
      {right - zero > 90 && (
        <text class="pic-text" x={zero + 6} y={top}>
          interference{measured ? ', measured' : ''}
        </text>
      )}
      {labels.map((l, i) => (
        <g key={l.name}>
          <path
            class="pic-lead"
            d={`M${x(l.n).toFixed(1)} ${bar + 17}V${bar + 26}L${(at[i] ?? 0).toFixed(1)} ${bar + 34}`}
          />
          <text class="pic-text" x={at[i]} y={bar + 48} text-anchor="middle">
            {l.name} <tspan class="pic-figure">{formatNumber(l.n, decimals)}</tspan>
            {i === 2 && <tspan class="pic-figure"> {unit}</tspan>}
          </text>
        </g>
      ))}
      <path class="pic-pointer" d={`M${x(mean).toFixed(1)} ${bar + 3}l-4 -6h8z`} />
      {warm && (
        <RangeRow
          name="warm in use"
          figures={`${formatNumber(warm.least, decimals)} to ${formatNumber(warm.most, decimals)} ${unit}`}
          y={bar + 80}
          x={x}
          low={warm.least}
          mid={warm.mean}
          high={warm.most}
          left={left}
          right={right}
          level="note"
        >
          <rect class="pic-clear" x={left} y={bar + 83} width={Math.max(0, zero - left)} height={18} />
          <path class="pic-limit" d={`M${zero.toFixed(1)} ${bar + 82}v20`} />
        </RangeRow>
      )}
    </g>
  );
}
