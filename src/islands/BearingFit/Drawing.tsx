/** Tolerance zones of seat and ring to one scale, measured sizes on them, and the interference they make. */
import { formatIn, formatNumber, pick, toUnit, type UnitKey } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { linear, niceSteps, Picture, quantityReading, spreadOut, type DrawingProps } from '../kit/index.ts';
import { InterferenceStrip } from './InterferenceStrip.tsx';
import { Zone } from './Zone.tsx';

const plot = { top: 30, bottom: 104, left: 50 };

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const n = (key: string) => valueOf(answer, key, 'quantity').value;
  const shaft = inputs['seat'] === 'shaft';
  const size = Number(inputs['size']);
  const unit: UnitKey = pick(['µm', 'thou'], reader.system);
  const seat = { upper: n('seatUpper'), lower: n('seatLower') };
  const ring = { upper: n('ringUpper'), lower: n('ringLower') };
  const found = answer.values.find((v) => v.key === 'measured');
  const marks =
    found?.kind === 'quantity'
      ? [found.low ?? found.value, found.value, found.high ?? found.value].map((s) => s - size)
      : [];
  const ringMark = typeof inputs['ring'] === 'number' && marks.length > 0 ? [inputs['ring'] - size] : [];
  const all = [0, seat.upper, seat.lower, ring.upper, ring.lower, ...marks, ...ringMark];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const y = linear(low, high, plot.bottom, plot.top);
  const signed = (si: number) => `${si > 5e-8 ? '+' : ''}${quantityReading(si, unit).figure}`;
  const [seatTop = 0, seatLow = 0] = spreadOut(
    [y(seat.upper) + 4, y(seat.lower) + 4],
    16,
    plot.top - 4,
    plot.bottom + 6,
  );
  const [ringTop = 0, ringLow = 0] = spreadOut(
    [y(ring.upper) + 4, y(ring.lower) + 4],
    16,
    plot.top - 4,
    plot.bottom + 6,
  );
  const zone = valueOf(answer, 'seatZone', 'text').value;
  const seatName = shaft ? 'shaft' : 'housing';
  const ringName = shaft ? 'bearing bore' : 'outer ring';
  const fit = valueOf(answer, 'interference', 'quantity');
  const warm = answer.values.find((v) => v.key === 'warmInterference');
  const lost = warm?.kind === 'quantity' ? fit.value - warm.value : undefined;
  const steps = niceSteps(toUnit(low, unit), toUnit(high, unit), 5);
  const description =
    `From ${formatIn(size, pick(['mm', 'in'], reader.system))}: ${seatName} ${zone} ` +
    `${signed(seat.lower)} to ${signed(seat.upper)}, ${ringName} ${signed(ring.lower)} to ` +
    `${signed(ring.upper)} ${unit}.${marks.length > 0 ? ` Seat measured at ${signed(marks[1] ?? 0)} ${unit}.` : ''} ` +
    `Interference ${signed(fit.low ?? fit.value)} to ${signed(fit.high ?? fit.value)}, mean ` +
    `${signed(fit.value)} ${unit}.${lost === undefined ? '' : ` Warm in use ${signed((fit.low ?? fit.value) - lost)} to ${signed((fit.high ?? fit.value) - lost)} ${unit}.`}`;

  return (
    <Picture
      id={id}
      title="Tolerance zones of seat and ring, and the interference"
      description={description}
      height={plot.bottom + (lost === undefined ? 122 : 170)}
    >
      <text class="pic-text" x={4} y={15}>
        {unit} from {formatIn(size, pick(['mm', 'in'], reader.system))}
      </text>
      {steps.map((s) => {
        const at =
          plot.bottom -
          ((s - toUnit(low, unit)) / (toUnit(high, unit) - toUnit(low, unit) || 1)) * (plot.bottom - plot.top);
        return (
          <g key={s}>
            <path class={Math.abs(s) < 1e-9 ? 'pic-axis' : 'pic-grid'} d={`M${plot.left} ${at.toFixed(1)}H352`} />
            <text class="pic-tick" x={plot.left - 5} y={at + 4} text-anchor="end">
              {s > 0 ? '+' : ''}
              {formatNumber(s)}
            </text>
          </g>
        );
      })}
      <Zone kind="a" x={118} width={70} top={y(seat.upper)} bottom={y(seat.lower)} marks={marks.map(y)} />
      <Zone kind="b" x={222} width={70} top={y(ring.upper)} bottom={y(ring.lower)} marks={ringMark.map(y)} />
      <text class="pic-figure pic-halo" x={113} y={seatTop} text-anchor="end">
        {signed(seat.upper)}
      </text>
      <text class="pic-figure pic-halo" x={113} y={seatLow} text-anchor="end">
        {signed(seat.lower)}
      </text>
      <text class="pic-figure pic-halo" x={297} y={ringTop}>
        {signed(ring.upper)}
      </text>
      <text class="pic-figure pic-halo" x={297} y={ringLow}>
        {signed(ring.lower)}
      </text>
      <text class="pic-text" x={153} y={plot.bottom + 22} text-anchor="middle">
        {seatName} {zone}
      </text>
      <text class="pic-text" x={257} y={plot.bottom + 22} text-anchor="middle">
        {ringName}
      </text>
      <InterferenceStrip
        top={plot.bottom + 52}
        least={toUnit(fit.low ?? fit.value, unit)}
        mean={toUnit(fit.value, unit)}
        most={toUnit(fit.high ?? fit.value, unit)}
        unit={unit}
        measured={marks.length > 0}
        lost={lost === undefined ? undefined : toUnit(lost, unit)}
      />
    </Picture>
  );
}
