/** The blade from its edge, leaning as it wobbles: so in this half turn, broken line in the next. Lean and limit are enlarged alike. */
import { SizeLine, TextLines } from '../kit/index.ts';

interface Props {
  readonly x: number;
  readonly y: number;
  /** Half the blade in picture units. */
  readonly radius: number;
  /** Picture units for a metre of blade. */
  readonly scale: number;
  readonly flange: number;
  /** Whole reading at the rim [m]. */
  readonly runOut: number;
  readonly limit: number;
  readonly times: number;
  readonly over: boolean;
  readonly lines: readonly (readonly [word: string, figure: string])[];
}

/** Half the room for the larger of swing and limit, in picture units. */
const room = 26;

/** A round enlargement at which swing and limit are both seen and both fit. */
export function enlargement(runOut: number, limit: number, scale: number): number {
  const widest = Math.max(runOut, limit) * scale;
  const rounds = [1000, 500, 200, 100, 50, 20, 10, 5, 2, 1];
  return rounds.find((n) => (widest * n) / 2 <= room) ?? room / (widest / 2);
}

export function Wobble({ x, y, radius, scale, flange, runOut, limit, times, over, lines }: Props) {
  const swing = (runOut / 2) * scale * times;
  const allowed = (limit / 2) * scale * times;
  const hold = flange * radius;
  return (
    <g>
      <rect class="pic-allowed" x={x - allowed} y={y - radius - 6} width={2 * allowed} height={2 * radius + 12} />
      <path class="pic-lead" d={`M${x - 30} ${y}H${x + 30}`} stroke-dasharray="12 4 2 4" />
      <path class="pic-other-turn" d={`M${f(x + swing)} ${y - radius}L${f(x - swing)} ${y + radius}`} />
      <path
        class={over ? 'pic-edge-on pic-edge-over' : 'pic-edge-on'}
        d={`M${f(x - swing)} ${y - radius}L${f(x + swing)} ${y + radius}`}
      />
      <rect class="pic-part" x={x - 9} y={y - hold} width={5} height={2 * hold} />
      <rect class="pic-part" x={x + 4} y={y - hold} width={5} height={2 * hold} />
      <SizeLine x1={x - swing} y1={y + radius + 14} x2={x + swing} y2={y + radius + 14} />
      <TextLines x={x} y={y + radius + 34} lines={lines} anchor="middle" step={17} />
    </g>
  );
}

function f(n: number): string {
  return n.toFixed(1);
}
