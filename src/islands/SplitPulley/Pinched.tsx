/** A head drawn together at a standstill: one half square to the axle, the other leaning on the nipped belt. */
import { formatIn } from '../../core/quantity/index.ts';
import { SizeLine, TextLines } from '../kit/index.ts';

interface Pinch {
  /** [rad] */
  readonly tilt: number;
  /** Whole reading at the rim of the blade [m]. */
  readonly runOut: number;
  readonly gap: number;
  readonly blade: number;
  /** Pitch diameter, closed [m]. */
  readonly pitch: number;
}

interface Props extends Pinch {
  readonly times: number;
  readonly length: (si: number) => string;
  readonly bladeText: string;
}

const centre = { x: 78, y: 346 };
const tall = 148;
const [cone, web, thick] = [15, 5, 4];
/** Lean of the blade that the eye sees at once, in picture units at its rim. */
const plain = 24;

/** How many times the tilt is enlarged: a round figure, at least 1. */
export function enlargement(p: Pinch): number {
  const own = Math.tan(p.tilt) * tall;
  if (own <= 0) return 1;
  const rounds = [1000, 500, 200, 100, 50, 20, 10, 5, 2];
  return rounds.find((n) => own * n <= plain) ?? 1;
}

export function Pinched({ tilt, runOut, gap, blade, pitch, times, length, bladeText }: Props) {
  const scale = tall / Math.max(blade, pitch * 1.08);
  const [rim, rotor] = [(pitch / 2) * scale, (blade / 2) * scale];
  const lean = (Math.atan(times * Math.tan(tilt)) * 180) / Math.PI;
  const low = centre.y + rim;
  // The leaning half turns about the place where the two halves meet, opposite the nipped belt.
  const turn = `rotate(${lean.toFixed(2)} ${centre.x} ${low.toFixed(1)})`;
  const shape = (side: 1 | -1) =>
    `M${centre.x} ${f(centre.y - rim * 0.45)}L${centre.x + side * cone} ` +
    `${f(centre.y - rim)}h${side * web}V${f(centre.y + rim)}h${-side * web}L${centre.x} ` +
    `${f(centre.y + rim * 0.45)}Z`;
  const bladeX = centre.x + cone + web;
  const [foot, head] = [
    turned(bladeX + thick / 2, centre.y + rotor, lean, low),
    turned(bladeX + thick / 2, centre.y - rotor, lean, low),
  ];
  const nip = Math.tan((lean * Math.PI) / 180) * rim * 1.7;
  return (
    <g>
      <path class="pic-grid" d="M8 228H352" />
      <TextLines x={8} y={248} lines={['In one go: the belt is nipped and a half leans']} />
      <path class="pic-lead" d={`M${centre.x - 56} ${centre.y}H${centre.x + 56}`} stroke-dasharray="12 4 2 4" />
      <path class="pic-part" d={shape(-1)} />
      <rect
        class="pic-blade"
        x={centre.x - cone - web - thick}
        y={f(centre.y - rotor)}
        width={thick}
        height={f(2 * rotor)}
      />
      <g transform={turn}>
        <path class="pic-part" d={shape(1)} />
        <rect class="pic-blade" x={bladeX} y={f(centre.y - rotor)} width={thick} height={f(2 * rotor)} />
      </g>
      <path
        class="pic-belt-body"
        d={`M${centre.x - 10} ${f(centre.y - rim * 0.95)}h${f(20 + nip)}l-4 ${f(rim * 0.3)}h${f(-12 - nip)}Z`}
      />
      <path class="pic-true" d={`M${f(foot.x)} ${f(foot.y + 6)}V${f(centre.y - rotor - 8)}`} />
      <SizeLine x1={foot.x} y1={centre.y - rotor - 6} x2={head.x} y2={centre.y - rotor - 6} />
      <TextLines
        x={182}
        y={296}
        lines={[
          ['gap left', length(gap)],
          ['tilt', formatIn(tilt, '°', 2)],
          ['blade', bladeText],
          ['runs out', length(runOut)],
        ]}
        step={20}
      />
    </g>
  );
}

function turned(x: number, y: number, degrees: number, low: number): { readonly x: number; readonly y: number } {
  const a = (degrees * Math.PI) / 180;
  const [dx, dy] = [x - centre.x, y - low];
  return { x: centre.x + dx * Math.cos(a) - dy * Math.sin(a), y: low + dx * Math.sin(a) + dy * Math.cos(a) };
}

function f(n: number): string {
  return n.toFixed(1);
}
