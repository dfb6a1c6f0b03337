/** Rim speed as a bar on a rule; what lies beyond the marked limit is struck out. */
import { formatIn, formatNumber, fromUnit, toUnit, type UnitKey, type UnitSystem } from '../../core/quantity/index.ts';
import type { VerdictValue } from '../../core/result.ts';
import { linear, niceSteps } from '../kit/index.ts';

interface Props {
  readonly top: number;
  readonly speed: number;
  readonly limit: number;
  readonly level: VerdictValue['level'];
  readonly system: UnitSystem;
}

const [left, right] = [10, 350];
/** Half the room a label takes; keeps it inside the picture. */
const halfLabel = 84;

export function SpeedLadder({ top, speed, limit, level, system }: Props) {
  const unit: UnitKey = system === 'metric' ? 'm/s' : 'ft/min';
  const most = Math.max(speed, limit) * 1.12;
  const x = linear(0, most, left, right);
  const [bar, high] = [top + 8, 18];
  const inside = (at: number) => Math.min(right - halfLabel, Math.max(left + halfLabel, at));
  return (
    <g>
      <text class="pic-text" x={inside(x(limit))} y={top} text-anchor="middle">marked limit <tspan class="pic-figure">{formatIn(limit, unit)}</tspan></text>
      <rect class="pic-forbidden" x={x(limit)} y={bar} width={right - x(limit)} height={high} />
      <rect class={`pic-bar pic-bar-${level}`} x={left} y={bar} width={x(speed) - left} height={high} />
      <path class="pic-axis" d={`M${left} ${bar + high}H${right}`} />
      {niceSteps(0, toUnit(most, unit), 5).map((n) => (
        <g key={n}>
          <path class="pic-axis" d={`M${x(fromUnit(n, unit))} ${bar + high}v5`} />
          <text class="pic-tick" x={x(fromUnit(n, unit))} y={bar + high + 18} text-anchor={n === 0 ? 'start' : 'middle'}>{formatNumber(n)}</text>
        </g>
      ))}
      <path class="pic-limit" d={`M${x(limit)} ${top + 4}V${bar + high + 6}`} />
      <path class="pic-pointer" d={`M${x(speed)} ${bar + high + 24}l-5 8h10z`} />
      <text class="pic-text" x={inside(x(speed))} y={bar + high + 47} text-anchor="middle">this blade <tspan class="pic-figure">{formatIn(speed, unit)}</tspan></text>
    </g>
  );
}
