/** A gauge face: bands of the verdicts, round figures, and marks for what was read and what was to be expected. */
import { formatNumber } from '../../core/quantity/index.ts';
import { niceSteps } from '../kit/index.ts';

export interface DialMark {
  readonly key: string;
  /** In the unit of the face. */
  readonly value: number;
  readonly look: 'needle' | 'expected' | 'first' | 'oiled';
}

export interface Band {
  readonly level: 'low' | 'worn' | 'serviceable' | 'healthy';
  readonly from: number;
  readonly to: number;
}

interface Props {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** Figure at the end of the face. */
  readonly most: number;
  readonly bands: readonly Band[];
  readonly marks: readonly DialMark[];
  readonly unit: string;
}

const sweep = (240 * Math.PI) / 180;
/** Width of each band on the face: shape tells them apart without colour. */
const width: Record<Band['level'], number> = { low: 3, worn: 6, serviceable: 9, healthy: 13 };

export function Dial({ x, y, radius, most, bands, marks, unit }: Props) {
  const angle = (value: number) =>
    Math.PI / 2 + (2 * Math.PI - sweep) / 2 + Math.min(1, Math.max(0, value / most)) * sweep;
  const spot = (r: number, a: number) => `${(x + r * Math.cos(a)).toFixed(2)} ${(y + r * Math.sin(a)).toFixed(2)}`;
  const band = ({ from, to, level }: Band) => {
    const [a, b] = [angle(from), angle(to)];
    const [outer, inner] = [radius - 3, radius - 3 - width[level]];
    const large = b - a > Math.PI ? 1 : 0;
    return `M${spot(outer, a)}A${outer} ${outer} 0 ${large} 1 ${spot(outer, b)}L${spot(inner, b)}A${inner} ${inner} 0 ${large} 0 ${spot(inner, a)}Z`;
  };
  const steps = niceSteps(0, most, 8);
  return (
    <g>
      <circle class="pic-dial" cx={x} cy={y} r={radius} />
      {bands
        .filter((b) => b.to > b.from)
        .map((b) => (
          <path class={`pic-band-${b.level}`} key={b.level} d={band(b)} />
        ))}
      {marks
        .filter((m) => m.look === 'needle')
        .map((m) => (
          <g key={m.key}>
            <path class="pic-needle" d={`M${spot(18, angle(m.value) + Math.PI)}L${spot(radius - 8, angle(m.value))}`} />
            <circle class="pic-dot" cx={x} cy={y} r={6} />
          </g>
        ))}
      {steps.map((n) => (
        <g key={n}>
          <path class="pic-axis" d={`M${spot(radius - 3, angle(n))}L${spot(radius - 19, angle(n))}`} />
          <text
            class="pic-tick pic-halo"
            x={x + (radius - 34) * Math.cos(angle(n))}
            y={y + (radius - 32) * Math.sin(angle(n)) + 4}
            text-anchor="middle"
          >
            {formatNumber(n)}
          </text>
        </g>
      ))}
      <text class="pic-text" x={x} y={y + radius - 12} text-anchor="middle">
        {unit}
      </text>
      {marks.map((m) =>
        m.look === 'needle' ? null : (
          <path class={`pic-dial-${m.look}`} key={m.key} d={outside(m.look, angle(m.value), radius, spot)} />
        ),
      )}
    </g>
  );
}

/** Marks stand outside the face: a solid wedge, a ring, a hollow wedge. */
function outside(look: DialMark['look'], a: number, radius: number, spot: (r: number, a: number) => string): string {
  const tip = radius + 2;
  if (look === 'expected') return `M${spot(tip, a)}L${spot(tip + 13, a - 0.055)}L${spot(tip + 13, a + 0.055)}Z`;
  if (look === 'first') return `M${spot(tip, a)}L${spot(tip + 12, a)}`;
  return `M${spot(tip, a)}L${spot(tip + 11, a - 0.05)}M${spot(tip, a)}L${spot(tip + 11, a + 0.05)}`;
}
