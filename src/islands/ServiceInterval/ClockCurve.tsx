/** Cost of an hour against the age at which the part is replaced: the flat bottom, and what running to failure costs. */
import type { Inputs } from '../../core/contract/field.ts';
import { formatNumber } from '../../core/quantity/index.ts';
import type { Answer } from '../../core/contract/result.ts';
import { partOf, type ServiceInputs } from '../../core/topics/service-interval/index.ts';
import { Axis, linear, niceSteps, type Reader } from '../kit/index.ts';

const hour = 3600;
const plot = { left: 52, right: 346, high: 190 };

export interface Clock {
  readonly points: readonly { readonly age: number; readonly cost: number }[];
  readonly best: number;
  readonly low: number;
  /** Nothing when any later age is as good. */
  readonly high: number | undefined;
  readonly bestRate: number;
  readonly runToFailure: number;
  readonly last: number;
  readonly description: string;
}

/** Nothing when no part is asked about, or none should be replaced by the clock. */
export function clockOf(answer: Answer, inputs: Inputs): Clock | undefined {
  const of = (key: string) => {
    const v = answer.values.find((x) => x.key === key);
    return v?.kind === 'quantity' || v?.kind === 'number' ? v : undefined;
  };
  const [best, rate, failure] = [of('bestAge'), of('bestRate'), of('runToFailure')];
  const part = partOf(inputs as ServiceInputs);
  if (!best || !rate || !failure || !part) return undefined;
  const last = 3 * best.value;
  const points = Array.from({ length: 60 }, (_, k) => {
    const age = (last * (k + 6)) / 65;
    return { age: age / hour, cost: part.rate(age) * hour };
  });
  const at = {
    best: best.value / hour,
    low: (best.low ?? best.value) / hour,
    high: best.high === undefined ? undefined : best.high / hour,
  };
  const description =
    `An hour costs least, ${formatNumber(rate.value, 3)}, when the part is replaced at ` +
    `${formatNumber(at.best, 0)} h; from ${formatNumber(at.low, 0)} h ` +
    `${at.high === undefined ? 'on' : `to ${formatNumber(at.high, 0)} h`} it is at most 5 % more. ` +
    `Run until it fails, an hour costs ${formatNumber(failure.value, 3)}.`;
  return { ...at, points, bestRate: rate.value, runToFailure: failure.value, last: last / hour, description };
}

export function ClockCurve({
  clock,
  top,
  reader,
}: {
  readonly clock: Clock;
  readonly top: number;
  readonly reader: Reader;
}) {
  const [ceiling, floor] = [top + 28, top + 28 + plot.high];
  const x = linear(0, clock.last, plot.left, plot.right);
  const high = Math.max(clock.runToFailure * 1.25, clock.bestRate * 1.6);
  const y = linear(0, high, floor, ceiling);
  const shown = clock.points.filter((p) => p.cost <= high);
  const bandEnd = clock.high === undefined ? plot.right : x(clock.high);
  return (
    <g>
      <text class="pic-text" x={4} y={top + 8}>
        an hour, {reader.currency}, by the age at which the part is replaced
      </text>
      <rect
        class="pic-zone-a"
        x={x(clock.low)}
        y={ceiling}
        width={Math.max(1, bandEnd - x(clock.low))}
        height={floor - ceiling}
      />
      {niceSteps(0, high, 5).map((n) => (
        <g key={n}>
          <path class="pic-grid" d={`M${plot.left} ${y(n).toFixed(1)}H${plot.right}`} />
          <text class="pic-tick" x={plot.left - 6} y={y(n) + 4} text-anchor="end">
            {formatNumber(n)}
          </text>
        </g>
      ))}
      <Axis
        x={x}
        steps={niceSteps(0, clock.last, 6)}
        y={floor}
        left={plot.left}
        right={plot.right}
        write={(n) => `${formatNumber(n)} h`}
      />
      <path class="pic-axis" d={`M${plot.left} ${ceiling}V${floor}`} />
      <path class="pic-second" d={`M${plot.left} ${y(clock.runToFailure).toFixed(1)}H${plot.right}`} />
      <path
        class="pic-first"
        d={shown.map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p.age).toFixed(1)} ${y(p.cost).toFixed(1)}`).join('')}
      />
      <circle class="pic-accent-fill" cx={x(clock.best)} cy={y(clock.bestRate)} r={5} />
      <text class="pic-text pic-halo" x={plot.right - 4} y={y(clock.runToFailure) - 7} text-anchor="end">
        run until it fails <tspan class="pic-figure">{formatNumber(clock.runToFailure, 2)}</tspan>
      </text>
      <text class="pic-text pic-halo" x={x(clock.best)} y={y(clock.bestRate) + 22} text-anchor="middle">
        least at <tspan class="pic-figure">{formatNumber(clock.best, 0)} h</tspan>
      </text>
      <text class="pic-text pic-quiet" x={plot.left} y={floor + 40}>
        shaded: at most 5 % above the least
      </text>
    </g>
  );
}
