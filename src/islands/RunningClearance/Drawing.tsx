/** The clearance, from the box to running: what each fit and the heat take, with the best and the worst pair of parts. */
import { textOf } from '../../core/contract/text-of.ts';
import { pick, toUnit, type UnitKey } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import {
  Axis,
  barHeight,
  barTop,
  linear,
  niceSteps,
  Picture,
  quantityReading,
  RangeRow,
  readingText,
  type DrawingProps,
} from '../kit/index.ts';

const [left, right, first, rowHigh] = [6, 354, 46, 42];

interface Span {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const unit: UnitKey = pick(['µm', 'thou'], reader.system);
  const span = (key: string): Span => {
    const v = valueOf(answer, key, 'quantity');
    return { low: v.low ?? v.value, mid: v.value, high: v.high ?? v.value };
  };
  const heat = valueOf(answer, 'heatLoss', 'quantity').value;
  const fresh = span('start');
  const shaft = less(fresh, span('innerLoss'));
  const housing = less(shaft, span('outerLoss'));
  const warmer = readingText(
    quantityReading(Number(inputs['difference']), pick(['°C diff', '°F diff'], reader.system)),
  );
  const group = inputs['group'] === 'CN' ? 'normal' : textOf(inputs['group']);
  const verdict = valueOf(answer, 'verdict', 'verdict');
  const rows = [
    { name: `In the box, ${group}`, ...fresh },
    { name: 'On the shaft', ...shaft },
    { name: 'In the housing, warm', ...housing },
    {
      name: `Running, inner ring +${warmer}`.replace('+−', '−'),
      ...less(housing, { low: heat, mid: heat, high: heat }),
    },
  ];
  const [least, most] = [Math.min(0, ...rows.map((r) => r.low)), Math.max(0, ...rows.map((r) => r.high))];
  const pad = Math.max((most - least) * 0.06, 1e-7);
  const [from, to] = [least - pad, most + pad];
  const x = linear(from, to, left, right);
  const zero = x(0);
  const bottom = first + rows.length * rowHigh - 12;
  const text = (r: Span) => `${quantityReading(r.low, unit).figure} to ${readingText(quantityReading(r.high, unit))}`;
  const description = `Clearance, least to most: ${rows.map((r) => `${r.name.toLowerCase()} ${text(r)}`).join('; ')}. Below zero the bearing is preloaded.`;

  return (
    <Picture id={id} title="What is left of the clearance" description={description} height={bottom + 26}>
      {zero - left > 66 && (
        <text class="pic-text" x={zero - 6} y={16} text-anchor="end">
          preload
        </text>
      )}
      {right - zero > 76 && (
        <text class="pic-text" x={zero + 6} y={16}>
          clearance
        </text>
      )}
      {rows.map((r, i) => {
        const y = first + i * rowHigh;
        const next = rows[i + 1];
        const [a, b] = [y + barTop + barHeight, y + rowHigh + barTop];
        return (
          <RangeRow
            key={r.name}
            name={r.name}
            figures={text(r)}
            y={y}
            x={x}
            low={r.low}
            mid={r.mid}
            high={r.high}
            left={left}
            right={right}
            level={next ? 'plain' : verdict.level}
          >
            {zero - left > 2 && (
              <rect class="pic-forbidden" x={left} y={y + barTop} width={(zero - left).toFixed(1)} height={barHeight} />
            )}
            {next && (
              <path
                class="pic-lead"
                d={`M${x(r.low).toFixed(1)} ${a}v4M${x(next.low).toFixed(1)} ${b}v-4M${x(r.high).toFixed(1)} ${a}v4M${x(next.high).toFixed(1)} ${b}v-4`}
              />
            )}
          </RangeRow>
        );
      })}
      <ZeroLine x={zero} rows={rows.length} />
      <Axis
        x={(n) => x(n / toUnit(1, unit))}
        steps={niceSteps(toUnit(from, unit), toUnit(to, unit), 6)}
        y={bottom}
        left={left}
        right={right}
      />
    </Picture>
  );
}

/** The tightest pair loses most from the least clearance, the loosest least from the most. */
function less(from: Span, loss: Span): Span {
  return { low: from.low - loss.high, mid: from.mid - loss.mid, high: from.high - loss.low };
}

function ZeroLine({ x, rows }: { readonly x: number; readonly rows: number }) {
  const at = x.toFixed(1);
  return (
    <path
      class="pic-limit"
      d={`M${at} 4v16${Array.from({ length: rows }, (_, i) => `M${at} ${first + i * rowHigh + barTop - 4}v${barHeight + 8}`).join('')}`}
    />
  );
}
