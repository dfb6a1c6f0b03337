/** What leaving the part costs, by its age, against changing it now; where this part stands, and where the two meet. */
import { formatNumber } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { linear, niceSteps, Picture, readingOf, type DrawingProps } from '../kit/index.ts';

const plot = { left: 52, right: 346, top: 40, bottom: 226 };
const hour = 3600;

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const money = (key: string) => {
    const value = valueOf(answer, key, 'money');
    return { n: value.value, text: readingOf(value, value.value, reader).figure };
  };
  const [now, leave] = [money('costNow'), money('costLeave')];
  const age = Number(inputs['age']) / hour;
  const found = answer.values.find((v) => v.key === 'ageToChange');
  const flip = found?.kind === 'quantity' ? found.value / hour : undefined;
  const table = valueOf(answer, 'ageTable', 'table').rows.map(([at, cost]) => ({
    age: Number(at) / hour,
    cost: Number(cost),
  }));
  const end = table.at(-1)?.age ?? 1;
  // Where the two cost the same is a point of the curve too, and so is this part, however old.
  const points = [
    ...table,
    { age, cost: leave.n },
    ...(flip !== undefined && flip > 0 && flip < end ? [{ age: flip, cost: now.n }] : []),
  ].sort((a, b) => a.age - b.age);
  const last = Math.max(end, age) || 1;
  const high = Math.max(now.n, ...points.map((p) => p.cost), 0.01) * 1.15;
  const x = linear(0, last, plot.left, plot.right);
  const y = linear(0, high, plot.bottom, plot.top);
  const crosses = flip !== undefined && flip > 0 && flip <= last;
  const pays = leave.n > now.n;
  const leaveUp = leave.n >= now.n;
  const hours = (n: number) => `${formatNumber(n, 0)} h`;
  const description =
    `Changing it now costs ${now.text} at any age. ` +
    `Leaving it costs ${leave.text} at ` +
    `${hours(age)}.${flip === undefined ? ' The two do not meet.' : ` Both cost the same at ${hours(flip)}.`}`;
  const right = x(age) > 210;
  // Words of the line stand on the side of the picture where the curve is not.
  const nowAtLeft = x(age) > 200;
  return (
    <Picture
      id={id}
      title="Leaving the part against changing it, by its age"
      description={description}
      height={270}
      caption={
        pays
          ? 'The part is past the age where the lines cross: leaving it costs more.'
          : 'The part has not reached the age where leaving it costs more.'
      }
    >
      <text class="pic-text" x={4} y={16}>
        cost, {reader.currency}
      </text>
      {niceSteps(0, high, 5).map((n) => (
        <g key={n}>
          <path class="pic-grid" d={`M${plot.left} ${y(n).toFixed(1)}H${plot.right}`} />
          <text class="pic-tick" x={plot.left - 6} y={y(n) + 4} text-anchor="end">
            {formatNumber(n)}
          </text>
        </g>
      ))}
      {niceSteps(0, last, 6).map((n) => (
        <text class="pic-tick" key={n} x={Math.min(x(n), plot.right - 8)} y={plot.bottom + 16} text-anchor="middle">
          {formatNumber(n)}
        </text>
      ))}
      <text class="pic-text" x={(plot.left + plot.right) / 2} y={plot.bottom + 36} text-anchor="middle">
        hours the part has run
      </text>
      <path class="pic-axis" d={`M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`} />
      <path class="pic-second" d={`M${plot.left} ${y(now.n).toFixed(1)}H${plot.right}`} />
      <path
        class="pic-first"
        d={points.map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p.age).toFixed(1)} ${y(p.cost).toFixed(1)}`).join('')}
      />
      {crosses && (
        <g>
          <path class="pic-lead" d={`M${x(flip).toFixed(1)} ${plot.top - 4}V${plot.bottom}`} />
          <circle class="pic-dot" cx={x(flip)} cy={y(now.n)} r={3} />
          <text
            class="pic-text pic-halo"
            x={Math.min(Math.max(x(flip), plot.left + 62), plot.right - 62)}
            y={plot.top - 9}
            text-anchor="middle"
          >
            changing pays from <tspan class="pic-figure">{hours(flip)}</tspan>
          </text>
        </g>
      )}
      <circle class="pic-accent-fill" cx={x(age)} cy={y(leave.n)} r={5} />
      <text
        class="pic-text pic-halo"
        x={x(age) + (right ? -8 : 8)}
        y={y(leave.n) + (leaveUp ? -8 : 18)}
        text-anchor={right ? 'end' : 'start'}
      >
        leave it <tspan class="pic-figure">{leave.text}</tspan>
      </text>
      <text
        class="pic-text pic-halo"
        x={nowAtLeft ? plot.left + 6 : plot.right - 4}
        y={y(now.n) + (leaveUp ? 17 : -7)}
        text-anchor={nowAtLeft ? 'start' : 'end'}
      >
        change it now <tspan class="pic-figure">{now.text}</tspan>
      </text>
    </Picture>
  );
}
