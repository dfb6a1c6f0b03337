/** A measured figure on a strip of bands, with the figures where they meet. 58 units high. */
import type { VerdictValue } from '../../core/contract/result.ts';
import type { Scale } from '../kit/index.ts';

export interface StripBand {
  readonly from: number;
  readonly to: number;
  readonly level: VerdictValue['level'] | 'plain';
}

interface Props {
  readonly name: string;
  readonly figure: string;
  readonly y: number;
  readonly x: Scale;
  readonly bands: readonly StripBand[];
  readonly value: number;
  /** Where bands meet, in words under the strip; apart enough not to touch. */
  readonly marks: readonly (readonly [at: number, text: string])[];
}

export function Strip({ name, figure, y, x, bands, value, marks }: Props) {
  const at = x(value).toFixed(1);
  return (
    <g>
      <text class="pic-text" x={8} y={y}>
        {name}
      </text>
      <text class="pic-figure" x={352} y={y} text-anchor="end">
        {figure}
      </text>
      {bands.map((b) => (
        <rect
          key={b.from}
          class={b.level === 'plain' ? 'pic-bar' : `pic-bar pic-bar-${b.level}`}
          x={x(b.from).toFixed(1)}
          y={y + 10}
          width={(x(b.to) - x(b.from)).toFixed(1)}
          height={12}
        />
      ))}
      <path class="pic-needle" d={`M${at} ${y + 5}v22`} />
      {marks.map(([place, text]) => (
        <text key={text} class="pic-text" x={x(place).toFixed(1)} y={y + 40} text-anchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
}
