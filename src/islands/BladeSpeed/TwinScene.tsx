/** A twin head at full depth, from the side and to scale: the arm stands in the slot, and the blade went down plunge by plunge. */
import { SizeLine, TextLines } from '../kit/index.ts';

interface Props {
  readonly diameter: number;
  readonly depth: number;
  /** Deepest single plunge; 0 is not drawn. */
  readonly pass: number;
  readonly length: (si: number) => string;
}

const middle = 128;
const [top, bottom] = [20, 250];
/** Part of a blade drawn free above the surface, and slab left below the cut. */
const [free, under] = [0.3, 0.08] as const;
/** More arcs than this run into each other. */
const arcsAtMost = 8;

export function TwinScene({ diameter, depth, pass, length }: Props) {
  const radius = diameter / 2;
  const shaft = depth - radius;
  const over = Math.max(free * diameter, -shaft + radius * 1.06);
  const scale = Math.min((bottom - top) / (over + depth + under * diameter), 236 / (diameter * 1.1));
  const slab = top + over * scale;
  const [r, centre, low] = [radius * scale, slab + shaft * scale, slab + depth * scale];
  const plunges = pass > 0 ? Math.min(arcsAtMost, Math.ceil(depth / pass - 1e-9) - 1) : 0;
  const arcs = Array.from({ length: plunges }, (_, i) => slab + (i + 1) * pass * scale).filter((y) => y < low - 2);
  const arm = Math.max(3, r * 0.12);
  const labels = { half: Math.max(slab + 52, low - r / 2), deep: Math.max(slab + 6, Math.min(slab + 14, low - 60)) };
  return (
    <g>
      <rect class="pic-stone" x={8} y={slab} width={240} height={bottom - slab} />
      <path class="pic-kerf" d={slot(slab, centre, r)} />
      <path class="pic-stone-edge" d={`M8 ${slab.toFixed(1)}H248`} />
      {arcs.map((y) => (
        <path class="pic-ghost" key={y} d={plunge(y, slab, r)} />
      ))}
      <circle class="pic-steel" cx={middle} cy={centre} r={r} />
      <circle class="pic-rim" cx={middle} cy={centre} r={r} />
      <path
        class="pic-part"
        d={`M${middle - arm} ${(Math.min(slab, centre) - over * scale * 0.7).toFixed(1)}h${2 * arm}V${centre.toFixed(1)}a${arm} ${arm} 0 0 1 ${-2 * arm} 0Z`}
      />
      <circle class="pic-dot" cx={middle} cy={centre} r={3} />
      <path
        class="pic-lead"
        d={`M${middle} ${low.toFixed(1)}H276M248 ${slab.toFixed(1)}H276M${middle} ${centre.toFixed(1)}H258`}
      />
      <SizeLine x1={270} y1={slab} x2={270} y2={low} />
      <SizeLine x1={254} y1={centre} x2={254} y2={low} />
      <TextLines x={280} y={labels.deep + 14} lines={['deep', ['', length(depth)]]} />
      <TextLines
        x={280}
        y={Math.max(labels.deep + 54, Math.min(labels.half, 226))}
        lines={['half blade', ['', length(radius)]]}
      />
    </g>
  );
}

/** What has been cut away: as wide as the blade down to the shaft, round below it. */
function slot(slab: number, centre: number, r: number): string {
  if (centre >= slab)
    return `M${middle - r} ${slab.toFixed(1)}V${centre.toFixed(1)}A${r} ${r} 0 0 0 ${middle + r} ${centre.toFixed(1)}V${slab.toFixed(1)}Z`;
  const half = Math.sqrt(Math.max(0, r ** 2 - (slab - centre) ** 2));
  return `M${(middle - half).toFixed(1)} ${slab.toFixed(1)}A${r} ${r} 0 0 0 ${(middle + half).toFixed(1)} ${slab.toFixed(1)}Z`;
}

/** The bottom of an earlier plunge that went down to y. */
function plunge(y: number, slab: number, r: number): string {
  const [above, half] = [Math.max(slab, y - r), Math.sqrt(Math.max(0, r ** 2 - Math.max(0, slab - (y - r)) ** 2))];
  return `M${(middle - half).toFixed(1)} ${above.toFixed(1)}A${r} ${r} 0 0 0 ${(middle + half).toFixed(1)} ${above.toFixed(1)}`;
}
