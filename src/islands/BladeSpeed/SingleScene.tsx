/** One blade to scale in the slab: flange, depth, and the part of the blade that cuts. */
import { SizeLine } from '../kit/index.ts';

interface Props {
  readonly diameter: number;
  readonly flange: number;
  /** 0 when nothing of the blade is left to cut with. */
  readonly depth: number;
  readonly length: (si: number) => string;
}

const centre = { x: 138, y: 122 };
const radius = 100;
const slabBottom = 252;

export function SingleScene({ diameter, flange, depth, length }: Props) {
  const scale = radius / (diameter / 2);
  const slabTop = Math.min(centre.y + radius + 8, centre.y + radius - depth * scale);
  const hub = Math.max(4, (flange / 2) * scale);
  return (
    <g>
      <rect class="pic-stone" x={8} y={slabTop} width={260} height={Math.max(0, slabBottom - slabTop)} />
      <path class="pic-stone-edge" d={`M8 ${slabTop}H268`} />
      <circle class="pic-steel" cx={centre.x} cy={centre.y} r={radius} />
      {depth > 0 && <path class="pic-kerf" d={buried(slabTop)} />}
      <circle class="pic-rim" cx={centre.x} cy={centre.y} r={radius} />
      <circle class="pic-part" cx={centre.x} cy={centre.y} r={Math.min(hub, radius)} />
      <circle class="pic-dot" cx={centre.x} cy={centre.y} r={3} />
      <path
        class="pic-guard"
        d={`M${centre.x - radius - 9} ${centre.y}A${radius + 9} ${radius + 9} 0 0 1 ${centre.x + radius + 9} ${centre.y}`}
      />
      <path class="pic-turn" d={turning()} />
      {depth > 0 && <path class="pic-lead" d={`M${centre.x} ${centre.y + radius}H292M268 ${slabTop}H292`} />}
      {depth > 0 && <SizeLine x1={284} y1={slabTop} x2={284} y2={centre.y + radius} />}
      <text class="pic-figure" x={294} y={Math.max(slabTop + 4, (slabTop + centre.y + radius) / 2 - 2)}>
        {depth > 0 ? length(depth) : 'no'}
      </text>
      <text class="pic-text" x={294} y={Math.max(slabTop + 20, (slabTop + centre.y + radius) / 2 + 14)}>
        {depth > 0 ? 'deep' : 'cut left'}
      </text>
      <text class="pic-text" x={270} y={30}>
        Blade{' '}
        <tspan class="pic-figure" x={270} dy={16}>
          {length(diameter)}
        </tspan>
      </text>
      <text class="pic-text" x={270} y={74}>
        Flange{' '}
        <tspan class="pic-figure" x={270} dy={16}>
          {length(flange)}
        </tspan>
      </text>
      <path
        class="pic-lead"
        d={
          `M${centre.x + Math.min(hub, radius) * 0.94} ${centre.y - Math.min(hub, radius) * 0.34}L264 ` +
          `76M${centre.x + radius * 0.8} ${centre.y - radius * 0.6}L264 32`
        }
      />
    </g>
  );
}

/** The part of the blade below the surface of the slab. */
function buried(slabTop: number): string {
  const above = slabTop - centre.y;
  const half = Math.sqrt(Math.max(0, radius ** 2 - above ** 2));
  const large = above < 0 ? 1 : 0;
  return `M${centre.x - half} ${slabTop}A${radius} ${radius} 0 ${large} 0 ${centre.x + half} ${slabTop}Z`;
}

/** An arc with a head: the blade turns. */
function turning(): string {
  const r = radius - 14;
  const [x, y] = [centre.x + r * Math.sin(0.35), centre.y - r * Math.cos(0.35)];
  return `M${centre.x - r * Math.sin(0.35)} ${centre.y - r * Math.cos(0.35)}A${r} ${r} 0 0 1 ${x} ${y}m-9 -7l9 7l-10.5 3.5`;
}
