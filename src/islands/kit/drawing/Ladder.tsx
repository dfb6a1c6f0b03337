/** One figure as a bar on a rule, against a limit; what lies beyond the limit is struck out. About 75 units high. */
import { formatNumber } from '../../../core/quantity/index.ts';
import type { VerdictValue } from '../../../core/contract/result.ts';
import { linear, niceSteps } from './scale.ts';

interface Props {
  readonly top: number;
  /** Figures in the unit shown. */
  readonly value: number;
  readonly limit: number;
  readonly level: VerdictValue['level'];
  readonly valueLabel: string;
  readonly valueText: string;
  readonly limitLabel: string;
  readonly limitText: string;
}

const [left, right] = [10, 350];

export function Ladder({ top, value, limit, level, valueLabel, valueText, limitLabel, limitText }: Props) {
  const most = Math.max(value, limit, 1e-9) * 1.12;
  const x = linear(0, most, left, right);
  const [bar, high] = [top + 8, 18];
  return (
    <g>
      <Words x={x(limit)} y={top} label={limitLabel} text={limitText} />
      <rect class="pic-forbidden" x={x(limit)} y={bar} width={right - x(limit)} height={high} />
      <rect class={`pic-bar pic-bar-${level}`} x={left} y={bar} width={x(value) - left} height={high} />
      <path class="pic-axis" d={`M${left} ${bar + high}H${right}`} />
      {niceSteps(0, most, 5).map((n) => (
        <g key={n}>
          <path class="pic-axis" d={`M${x(n).toFixed(1)} ${bar + high}v5`} />
          <text
            class="pic-tick"
            x={x(n)}
            y={bar + high + 18}
            text-anchor={n === 0 ? 'start' : x(n) > right - 20 ? 'end' : 'middle'}
          >
            {formatNumber(n)}
          </text>
        </g>
      ))}
      <path class="pic-limit" d={`M${x(limit).toFixed(1)} ${top + 4}V${bar + high + 6}`} />
      <path class="pic-pointer" d={`M${x(value).toFixed(1)} ${bar + high + 24}l-5 8h10z`} />
      <Words x={x(value)} y={bar + high + 46} label={valueLabel} text={valueText} />
    </g>
  );
}

/** A label with its figure, kept inside the picture by its own estimated length. */
function Words({
  x,
  y,
  label,
  text,
}: {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly text: string;
}) {
  const half = Math.min((right - left) / 2, (label.length * 6.8 + text.length * 8) / 2);
  return (
    <text class="pic-text" x={Math.min(right - half, Math.max(left + half, x))} y={y} text-anchor="middle">
      {label} <tspan class="pic-figure">{text}</tspan>
    </text>
  );
}
