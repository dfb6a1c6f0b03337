/** The gap against the temperature of the warmed part: closed below the line of zero, drop-in where it reaches the gap wanted, struck out past the ceiling. */
import { formatIn, pick, toUnit, unitLabel, type UnitKey } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { growth, type MaterialKey, materialOf } from '../../core/materials/index.ts';
import {
  Axis,
  linear,
  niceSteps,
  Picture,
  quantityReading,
  readingText,
  spreadOut,
  type DrawingProps,
} from '../kit/index.ts';
import { Cooling } from './Cooling.tsx';

const plot = { left: 52, right: 346, top: 62, bottom: 206 };

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const n = (key: string) => Number(inputs[key]);
  const [d, interference, gap, room] = [n('diameter'), n('interference'), n('gap'), n('room')];
  const housing = inputs['part'] === 'housing';
  const outer = materialOf((housing ? inputs['housingMaterial'] : 'bearing-steel') as MaterialKey);
  const inner = materialOf((housing ? 'bearing-steel' : inputs['shaftMaterial']) as MaterialKey);
  const [needed, ceiling] = [
    valueOf(answer, 'temperature', 'quantity').value,
    valueOf(answer, 'ceiling', 'quantity').value,
  ];
  const hot = typeof inputs['heatTo'] === 'number' ? inputs['heatTo'] : needed;
  const chilled = growth(d, inner.alpha, room - n('cold'));
  const found = answer.values.find((v) => v.key === 'openTime');
  const time = found?.kind === 'quantity' ? found : undefined;

  // The ceiling stays in the middle of the picture even where the need lies far beyond it.
  const last = Math.max(
    ceiling + 12,
    room + 30,
    Math.min(Math.max(needed, hot) + 12, room + 1.9 * Math.max(ceiling - room, 30)),
  );
  const open = (T: number) => growth(d, outer.alpha, T - room) - interference;
  const both = interference + gap > 0 && chilled > 0;
  const [least, most] = [Math.min(open(room), 0), Math.max(open(last) + (both ? chilled : 0), gap, 1e-6)];
  const x = linear(room, last, plot.left, plot.right);
  const y = linear(least, most, plot.bottom, plot.top);
  const degrees: UnitKey = pick(['°C', '°F'], reader.system);
  const unit: UnitKey = pick(['µm', 'thou'], reader.system);
  const steps = (room_: number, last_: number) => niceSteps(toUnit(room_, degrees), toUnit(last_, degrees), 6);
  const backT = (shown: number) =>
    room + ((shown - toUnit(room, degrees)) / (toUnit(last, degrees) - toUnit(room, degrees))) * (last - room);
  const shownNeeded = needed <= last;
  const waits = time !== undefined && hot <= ceiling + 0.5;
  const neededText =
    needed <= room + 0.5
      ? 'open enough as it is'
      : shownNeeded
        ? `open enough at ${formatIn(needed, degrees)}`
        : `needs ${formatIn(needed, degrees)}, off the scale`;
  const words = [neededText, `highest ${formatIn(ceiling, degrees)}`];
  const wide = words.map((w) => (w.length * 6.9) / 2);
  const at = [x(Math.min(needed, last)), x(ceiling)].map((p, i) =>
    Math.min(354 - (wide[i] ?? 0), Math.max(6 + (wide[i] ?? 0), p)),
  );
  const [gapY = 0, zeroY = 0] = spreadOut([y(gap) + 4, y(0) + 4], 15, plot.top + 4, plot.bottom + 2);
  const closed = room + interference / (outer.alpha * d);
  const description =
    `${housing ? 'Housing' : 'Bearing'} at ${formatIn(room, degrees)}: ` +
    `${readingText(quantityReading(interference, unit))} of interference. ` +
    `It opens by the ${readingText(quantityReading(gap, unit))} wanted at ${formatIn(needed, degrees)}; ` +
    `highest for it ${formatIn(ceiling, degrees)}.${time ? ` Out of the oven it stays open about ${readingText(quantityReading(time.value, 'min', 1))}.` : ''}`;

  return (
    <Picture
      id={id}
      title="Gap against temperature, and how long it lasts"
      description={description}
      height={plot.bottom + (waits ? 208 : 44)}
      {...(both
        ? {
            caption: `Broken line: with the ${housing ? 'bearing' : 'shaft'} chilled to ${formatIn(n('cold'), degrees)} as well.`,
          }
        : {})}
    >
      <text class="pic-text" x={4} y={15}>
        gap, {unit}
      </text>
      <text class="pic-text" x={at[0]} y={34} text-anchor="middle">
        {neededText}
      </text>
      <text class="pic-text" x={at[1]} y={52} text-anchor="middle">
        {words[1]}
      </text>
      <rect
        class="pic-forbidden"
        x={x(ceiling).toFixed(1)}
        y={plot.top}
        width={(plot.right - x(ceiling)).toFixed(1)}
        height={plot.bottom - plot.top}
      />
      <path class="pic-limit" d={`M${x(ceiling).toFixed(1)} 56V${plot.bottom}`} />
      <path
        class="pic-axis"
        d={`M${plot.left} ${plot.top}V${plot.bottom}M${plot.left} ${y(0).toFixed(1)}H${plot.right}`}
      />
      <path class="pic-grid" d={`M${plot.left} ${y(gap).toFixed(1)}H${plot.right}`} />
      {gap > 0 && (
        <text class="pic-tick" x={plot.left - 5} y={gapY} text-anchor="end">
          +{quantityReading(gap, unit).figure}
        </text>
      )}
      <text class="pic-tick" x={plot.left - 5} y={zeroY} text-anchor="end">
        0
      </text>
      {plot.bottom - y(0) > 20 && (
        <text class="pic-tick" x={plot.left - 5} y={plot.bottom + 2} text-anchor="end">
          {quantityReading(open(room), unit).figure}
        </text>
      )}
      {both && (
        <path
          class="pic-second"
          d={`M${plot.left} ${y(open(room) + chilled).toFixed(1)}L${plot.right} ${y(open(last) + chilled).toFixed(1)}`}
        />
      )}
      <path
        class="pic-first"
        d={`M${plot.left} ${y(open(room)).toFixed(1)}L${plot.right} ${y(open(last)).toFixed(1)}`}
      />
      {shownNeeded && <path class="pic-lead" d={`M${x(needed).toFixed(1)} 38V${y(gap).toFixed(1)}V${plot.bottom}`} />}
      {shownNeeded && <circle class="pic-accent-fill" cx={x(needed)} cy={y(open(needed))} r={5} />}
      {hot !== needed && hot <= last && (
        <path class="pic-dot" d={`M${x(hot).toFixed(1)} ${(y(open(hot)) - 6).toFixed(1)}l6 6l-6 6l-6 -6z`} />
      )}
      <Axis x={(t) => x(backT(t))} steps={steps(room, last)} y={plot.bottom} left={plot.left} right={plot.right} />
      <text class="pic-text" x={(plot.left + plot.right) / 2} y={plot.bottom + 34} text-anchor="middle">
        {housing ? 'housing' : 'bearing'}, {unitLabel(degrees)}
      </text>
      {waits && <Cooling top={plot.bottom + 90} reader={reader} time={time} room={room} hot={hot} closed={closed} />}
    </Picture>
  );
}
