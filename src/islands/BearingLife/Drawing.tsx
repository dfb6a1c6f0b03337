/** Hours in every degree of dirt, from the assembly room to slurry, on one scale of tens. */
import { levels } from '../../core/topics/bearing-life/index.ts';
import { formatFigures, toUnit } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Axis, linear, Picture, RangeRow, type DrawingProps } from '../kit/index.ts';

const [left, right, first, rowHigh] = [6, 354, 38, 36];
/** Beyond this something else ends the bearing, and the bars end too. */
const longest = 100_000;

export function Drawing({ id, answer, inputs }: DrawingProps) {
  const rows = valueOf(answer, 'byDirt', 'table').rows.map((row, i) => ({
    name: String(row[0]),
    low: toUnit(Number(row[3]), 'h'),
    high: toUnit(Number(row[4]), 'h'),
    here: levels[i]?.value === inputs['dirt'],
  }));
  const least = Math.min(...rows.map((r) => r.low), longest / 10);
  const most = Math.min(longest, Math.max(...rows.map((r) => r.high)));
  const from = Math.floor(Math.log10(Math.max(least, 1e-6)) + 1e-9);
  const to = Math.max(from + 1, Math.ceil(Math.log10(Math.max(most, 1e-6)) - 1e-9));
  const scale = linear(from, to, left, right);
  const x = (hours: number) => scale(Math.log10(Math.max(hours, 1e-9)));
  const bottom = first + rows.length * rowHigh - 8;
  const description = `Hours by what gets in: ${rows.map((r) => `${r.name.toLowerCase()}, ${figures(r)}`).join('; ')}.`;

  return (
    <Picture
      id={id}
      title="Hours of life from clean to slurry"
      description={description}
      height={bottom + 26}
      caption="Every tenfold step of the scale is equally long. The hours count tiring of the steel only: slurry also grinds and rusts."
    >
      <text class="pic-text" x={left} y={15}>
        hours
      </text>
      {rows.map((r, i) => (
        <RangeRow
          key={r.name}
          name={r.name}
          figures={figures(r)}
          y={first + i * rowHigh}
          x={x}
          low={r.low}
          high={r.high}
          left={left}
          right={right}
          level={r.here ? 'note' : 'plain'}
          chosen={r.here}
        />
      ))}
      <Axis x={x} steps={stepsOf(from, to)} y={bottom} left={left} right={right} />
    </Picture>
  );
}

/** Tens, and threes between them where there is room. */
function stepsOf(from: number, to: number): number[] {
  const parts = to - from > 3 ? [1] : [1, 3];
  return [...Array.from({ length: to - from }, (_, i) => parts.map((p) => p * 10 ** (from + i))).flat(), 10 ** to];
}

function figures({ low, high }: { readonly low: number; readonly high: number }): string {
  const text = (h: number) => formatFigures(h, 2);
  if (low >= longest) return `over ${longest} h`;
  if (high >= longest) return `${text(low)} h and more`;
  return text(low) === text(high) ? `${text(low)} h` : `${text(low)} to ${text(high)} h`;
}
