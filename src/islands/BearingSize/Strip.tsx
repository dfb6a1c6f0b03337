/** One caliper reading on a rule of the standard sizes round it; the band is what is allowed for wear and caliper. */
import { formatIn, pick } from '../../core/quantity/index.ts';
import { linear, type Reader } from '../kit/index.ts';

interface Props {
  readonly name: string;
  readonly top: number;
  /** Reading [m]. */
  readonly read: number;
  /** The named bearing's size [m]. */
  readonly nominal: number;
  /** Every size the tables hold, smallest first [m]. */
  readonly standard: readonly number[];
  readonly allow: number;
  readonly reader: Reader;
}

const [left, right] = [182, 352];

export function Strip({ name, top, read, nominal, standard, allow, reader }: Props) {
  const unit = pick(['mm', 'in'] as const, reader.system);
  const near = standard.reduce(
    (best, s, i) => (Math.abs(s - read) < Math.abs((standard[best] ?? 0) - read) ? i : best),
    0,
  );
  const shown = [...new Set([...standard.slice(Math.max(0, near - 1), near + 2), nominal])].sort((a, b) => a - b);
  const [least, most] = [Math.min(read, ...shown), Math.max(read, ...shown)];
  const pad = Math.max((most - least) * 0.1, allow * 1.5);
  const x = linear(least - pad, most + pad, left, right);
  const line = top + 34;
  const off = read - nominal;
  const figure = bare(formatIn(off, unit, reader.system === 'metric' ? 2 : 3));
  const words = shown.map((s) => ({
    s,
    at: x(s),
    text: bare(formatIn(s, unit, reader.system === 'metric' ? undefined : 3)),
  }));
  // The named bearing's size is always written; a neighbour only where it does not touch a word already there.
  const written = words.filter((w) => w.s === nominal);
  for (const w of words)
    if (w.s !== nominal && written.every((o) => Math.abs(o.at - w.at) > (o.text.length + w.text.length) * 3.9 + 4))
      written.push(w);
  return (
    <g>
      <text class="pic-text" x={left - 4} y={top}>
        {name} <tspan class="pic-figure">{formatIn(read, unit)}</tspan>
      </text>
      <rect
        class="pic-zone-b"
        x={x(nominal - allow).toFixed(1)}
        y={line - 12}
        width={(x(nominal + allow) - x(nominal - allow)).toFixed(1)}
        height={12}
      />
      <path class="pic-axis" d={`M${left} ${line}H${right}`} />
      {shown.map((s) => (
        <path key={s} class={s === nominal ? 'pic-limit' : 'pic-axis'} d={`M${x(s).toFixed(1)} ${line - 12}v16`} />
      ))}
      {written.map((w) => (
        <text class="pic-tick" key={w.s} x={w.at} y={line + 17} text-anchor="middle">
          {w.text}
        </text>
      ))}
      <path class="pic-pointer pic-accent-fill" d={`M${x(read).toFixed(1)} ${line - 1}l-6 -14h12z`} />
      <text class="pic-figure" x={right + 2} y={top} text-anchor="end">
        {off > 0 ? '+' : ''}
        {figure}
      </text>
    </g>
  );
}

function bare(text: string): string {
  return text.split('\u00a0')[0] ?? text;
}
