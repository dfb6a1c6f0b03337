/** Both pulleys and the belt to scale, with wraps, free span and the push check. */
import { formatQuantity } from '../../core/quantity/index.ts';
import { valueOf, type QuantityValue } from '../../core/contract/result.ts';
import { Arrow, Picture, readingOf, readingText, SizeLine, type DrawingProps } from '../kit/index.ts';
import { beltPath, layOut } from './layout.ts';

/** Room for the words above, and from a strand out to its size line. */
const above = 60;
const out = 18;

export function Drawing({ id, answer, reader }: DrawingProps) {
  const get = (key: string) => valueOf(answer, key, 'quantity');
  const [engine, blade, centre, span, push] = [
    get('enginePitch'),
    get('bladePitch'),
    get('centre'),
    get('span'),
    get('deflection'),
  ];
  const text = (v: QuantityValue) => readingText(readingOf(v, v.value, reader));
  const plain = (v: QuantityValue) => formatQuantity(v.value, v.units, reader.system, v.decimals);
  const lay = layOut({ engine: engine.value, blade: blade.value, centre: centre.value }, above);
  const { left, right, top, bottom, scale, up, down } = lay;
  const at = { x: (top.x1 + top.x2) / 2, y: (top.y1 + top.y2) / 2 };
  const sag = push.value * scale;
  const size = {
    x1: bottom.x1 + down[0] * out,
    y1: bottom.y1 + down[1] * out,
    x2: bottom.x2 + down[0] * out,
    y2: bottom.y2 + down[1] * out,
  };
  const force = get('pushForce');
  const below = Math.max(left.y + left.r, right.y + right.r, size.y1, size.y2) + 6;
  const description =
    `Engine pulley ${plain(engine)} with ${text(get('engineWrap'))} of wrap, blade pulley ` +
    `${plain(blade)} with ${text(get('bladeWrap'))}, shafts ${plain(centre)} apart, free span ` +
    `${plain(span)}. Pushed in the middle with ${forceRange(force, reader)}, the span gives ${plain(push)}.`;

  return (
    <Picture
      id={id}
      title="Belt and pulleys, and where to push"
      description={description}
      height={below + 66}
      {...(lay.enlarged
        ? { caption: 'The distance is to scale; the small pulley is drawn larger than it is, or it could not be seen.' }
        : {})}
    >
      <text class="pic-text" x={180} y={15} text-anchor="middle">
        push down <tspan class="pic-figure">{plain(push)}</tspan> with{' '}
        <tspan class="pic-figure">{forceRange(force, reader)}</tspan>
      </text>
      <path class="pic-lead" d={`M${left.x} ${left.y}L${right.x} ${right.y}`} stroke-dasharray="12 4 2 4" />
      <circle class="pic-part" cx={left.x} cy={left.y} r={left.r} />
      <circle class="pic-part" cx={right.x} cy={right.y} r={right.r} />
      <path class="pic-belt" d={beltPath(lay)} />
      <path class="pic-wrap" d={lay.wraps} />
      <path
        class="pic-pushed"
        d={`M${top.x1} ${top.y1}L${at.x - up[0] * sag} ${at.y - up[1] * sag}L${top.x2} ${top.y2}`}
      />
      <circle class="pic-dot" cx={left.x} cy={left.y} r={2.5} />
      <circle class="pic-dot" cx={right.x} cy={right.y} r={2.5} />
      <Arrow
        class="pic-arrow pic-accent"
        x1={at.x + up[0] * 34}
        y1={at.y + up[1] * 34}
        x2={at.x + up[0] * 2}
        y2={at.y + up[1] * 2}
      />
      <path
        class="pic-lead"
        d={
          `M${bottom.x1} ${bottom.y1}L${size.x1 + down[0] * 5} ${size.y1 + down[1] * 5}M${bottom.x2} ` +
          `${bottom.y2}L${size.x2 + down[0] * 5} ${size.y2 + down[1] * 5}`
        }
      />
      <SizeLine {...size} />
      <text class="pic-text" x={180} y={below + 18} text-anchor="middle">
        free span <tspan class="pic-figure">{plain(span)}</tspan>
      </text>
      <text class="pic-text" x={180} y={below + 60} text-anchor="middle">
        centers <tspan class="pic-figure">{plain(centre)}</tspan>
      </text>
      <text class="pic-text" x={8} y={below + 42}>
        engine <tspan class="pic-figure">{plain(engine)}</tspan>
      </text>
      <text class="pic-text" x={8} y={below + 60}>
        wrap <tspan class="pic-figure">{text(get('engineWrap'))}</tspan>
      </text>
      <text class="pic-text" x={352} y={below + 42} text-anchor="end">
        blade <tspan class="pic-figure">{plain(blade)}</tspan>
      </text>
      <text class="pic-text" x={352} y={below + 60} text-anchor="end">
        wrap <tspan class="pic-figure">{text(get('bladeWrap'))}</tspan>
      </text>
    </Picture>
  );
}

function forceRange(force: QuantityValue, reader: DrawingProps['reader']): string {
  const high = readingText(readingOf(force, force.high ?? force.value, reader));
  return force.low === undefined ? high : `${readingOf(force, force.low, reader).figure} to ${high}`;
}
