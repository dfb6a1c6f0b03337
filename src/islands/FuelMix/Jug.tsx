/** An upright vessel with a rule at its side; what is in it and what goes in are stacked to scale. */
import { formatNumber } from '../../core/quantity/index.ts';
import { linear, niceSteps } from '../kit/index.ts';

export interface Layer {
  readonly key: string;
  /** In the unit of the rule. */
  readonly volume: number;
  readonly look: 'fuel' | 'oil' | 'add-fuel' | 'add-oil';
}

interface Props {
  readonly x: number;
  readonly bottom: number;
  readonly tall: number;
  readonly wide: number;
  readonly layers: readonly Layer[];
  readonly unit: string;
}

/** A layer too thin to draw is drawn as a line of this thickness. */
const least = 1.6;

export function Jug({ x, bottom, tall, wide, layers, unit }: Props) {
  const total = layers.reduce((sum, l) => sum + l.volume, 0);
  const most = Math.max(total * 1.08, 1e-12);
  const y = linear(0, most, bottom, bottom - tall);
  let under = 0;
  const drawn = layers
    .filter((l) => l.volume > 0)
    .map((l) => {
      const [low, high] = [y(under), y(under + l.volume)];
      under += l.volume;
      return { ...l, top: Math.min(high, low - least), low };
    });
  return (
    <g>
      {drawn.map((l) => (
        <rect
          class={`pic-${l.look}`}
          key={l.key}
          x={x}
          y={l.top.toFixed(2)}
          width={wide}
          height={(l.low - l.top).toFixed(2)}
        />
      ))}
      <path class="pic-vessel" d={`M${x} ${bottom - tall}V${bottom}H${x + wide}V${bottom - tall}`} />
      {niceSteps(0, most, 6).map((n) => (
        <g key={n}>
          <path class="pic-axis" d={`M${x} ${y(n).toFixed(1)}h-5`} />
          <text class="pic-tick" x={x - 8} y={y(n) + 4} text-anchor="end">
            {formatNumber(n)}
          </text>
        </g>
      ))}
      <text class="pic-text" x={x + wide / 2} y={bottom + 18} text-anchor="middle">
        {unit}
      </text>
    </g>
  );
}
