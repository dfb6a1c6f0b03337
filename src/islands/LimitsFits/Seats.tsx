/** The usual bearing seats of one size side by side, from loosest to tightest, with the other part's zone as a band behind them. */
import { formatNumber, toUnit, type UnitKey } from '../../core/quantity/index.ts';
import { linear, niceSteps } from '../kit/index.ts';

export interface Block {
  readonly name: string;
  readonly upper: number;
  readonly lower: number;
}

interface Props {
  readonly top: number;
  readonly height: number;
  readonly seats: readonly Block[];
  readonly chosen: string;
  readonly mate: Block | undefined;
  readonly hole: boolean;
  readonly unit: UnitKey;
}

const [left, right] = [44, 356];

export function Seats({ top, height, seats, chosen, mate, hole, unit }: Props) {
  const all = [0, ...seats.flatMap((s) => [s.upper, s.lower])];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const bottom = top + height;
  const y = linear(low, high, bottom, top);
  const each = (right - left) / Math.max(1, seats.length);
  const band = mate && { top: y(mate.upper), bottom: y(mate.lower) };
  return (
    <g>
      <text class="pic-text" x={4} y={top - 16}>
        usual {hole ? 'housing' : 'shaft'} seats at this size, {unit}
      </text>
      {niceSteps(toUnit(low, unit), toUnit(high, unit), 5).map((n) => (
        <g key={n}>
          <path class="pic-grid" d={`M${left} ${y(n / toUnit(1, unit)).toFixed(1)}H${right}`} />
          <text class="pic-tick" x={left - 5} y={y(n / toUnit(1, unit)) + 4} text-anchor="end">
            {n > 0 ? '+' : ''}
            {formatNumber(n)}
          </text>
        </g>
      ))}
      {band && band.bottom - band.top > 0.5 && (
        <rect
          class="pic-zone-b"
          x={left}
          y={band.top.toFixed(1)}
          width={right - left}
          height={(band.bottom - band.top).toFixed(1)}
        />
      )}
      <path class="pic-limit" d={`M${left} ${y(0).toFixed(1)}H${right}`} />
      {seats.map((s, i) => {
        const at = left + (i + 0.5) * each;
        const row = bottom + 18 + (i % 2) * 16;
        return (
          <g key={s.name}>
            <rect
              class={s.name === chosen ? 'pic-accent-fill' : 'pic-bar'}
              x={(at - each * 0.32).toFixed(1)}
              y={y(s.upper).toFixed(1)}
              width={(each * 0.64).toFixed(1)}
              height={Math.max(2, y(s.lower) - y(s.upper)).toFixed(1)}
            />
            {i % 2 === 1 && <path class="pic-lead" d={`M${at.toFixed(1)} ${bottom + 5}v16`} />}
            <text
              class={s.name === chosen ? 'pic-text pic-strong' : 'pic-text'}
              x={at.toFixed(1)}
              y={row}
              text-anchor="middle"
            >
              {s.name}
            </text>
          </g>
        );
      })}
    </g>
  );
}
