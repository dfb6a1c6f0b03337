/** The blade in the slab, to scale, and its rim speed on a ladder against the marked limit. */
import { surfaceSpeed } from '../../core/blade-speed/index.ts';
import { formatIn, formatQuantity, pick, toUnit, type UnitKey } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/result.ts';
import { Ladder, Picture, SizeLine, type DrawingProps } from '../kit/index.ts';

const centre = { x: 138, y: 122 };
const radius = 100;
const slabBottom = 252;

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const diameter = Number(inputs['diameter']);
  const flange = Number(inputs['flange']);
  const speed = valueOf(answer, 'speed', 'quantity').value;
  const limitRotation = valueOf(answer, 'limitRotation', 'quantity').value;
  const level = valueOf(answer, 'verdict', 'verdict').level;
  const found = answer.values.find((v) => v.key === 'depth');
  const depth = found?.kind === 'quantity' ? found.value : 0;

  const scale = radius / (diameter / 2);
  const slabTop = Math.min(centre.y + radius + 8, centre.y + radius - depth * scale);
  const hub = Math.max(4, (flange / 2) * scale);
  const length = (si: number) => formatQuantity(si, ['mm', 'in'], reader.system, [0, 2]);
  const limit = surfaceSpeed(diameter, limitRotation);
  const unit = pick<UnitKey>(['m/s', 'ft/min'], reader.system);
  const description = `A ${length(diameter)} blade, flange ${length(flange)}, cuts ${depth > 0 ? `${length(depth)} deep` : 'nothing'}. Its rim runs at ${formatIn(speed, unit)}; the marked limit is ${formatIn(limit, unit)}.`;


  return (
    <Picture id={id} title="Blade in the slab and speed against the marking" description={description} height={352}>
      <rect class="pic-stone" x={8} y={slabTop} width={260} height={Math.max(0, slabBottom - slabTop)} />
      <path class="pic-stone-edge" d={`M8 ${slabTop}H268`} />
      <circle class="pic-steel" cx={centre.x} cy={centre.y} r={radius} />
      {depth > 0 && <path class="pic-kerf" d={buried(slabTop)} />}
      <circle class="pic-rim" cx={centre.x} cy={centre.y} r={radius} />
      <circle class="pic-part" cx={centre.x} cy={centre.y} r={Math.min(hub, radius)} />
      <circle class="pic-dot" cx={centre.x} cy={centre.y} r={3} />
      <path class="pic-guard" d={`M${centre.x - radius - 9} ${centre.y}A${radius + 9} ${radius + 9} 0 0 1 ${centre.x + radius + 9} ${centre.y}`} />
      <path class="pic-turn" d={turning()} />

      {depth > 0 && <path class="pic-lead" d={`M${centre.x} ${centre.y + radius}H292M268 ${slabTop}H292`} />}
      {depth > 0 && <SizeLine x1={284} y1={slabTop} x2={284} y2={centre.y + radius} />}
      <text class="pic-figure" x={294} y={Math.max(slabTop + 4, (slabTop + centre.y + radius) / 2 - 2)}>{depth > 0 ? length(depth) : 'no'}</text>
      <text class="pic-text" x={294} y={Math.max(slabTop + 20, (slabTop + centre.y + radius) / 2 + 14)}>{depth > 0 ? 'deep' : 'cut left'}</text>
      <text class="pic-text" x={270} y={30}>Blade <tspan class="pic-figure" x={270} dy={16}>{length(diameter)}</tspan></text>
      <text class="pic-text" x={270} y={74}>Flange <tspan class="pic-figure" x={270} dy={16}>{length(flange)}</tspan></text>
      <path class="pic-lead" d={`M${centre.x + Math.min(hub, radius) * 0.94} ${centre.y - Math.min(hub, radius) * 0.34}L264 76M${centre.x + radius * 0.8} ${centre.y - radius * 0.6}L264 32`} />

      <Ladder top={276} value={toUnit(speed, unit)} limit={toUnit(limit, unit)} level={level} valueLabel="this blade" valueText={formatIn(speed, unit)} limitLabel="marked limit" limitText={formatIn(limit, unit)} />
    </Picture>
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
