/** Yearly cost against years of service left, repair and new; below it the quote against the most worth paying. */
import { formatNumber } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Ladder, linear, niceSteps, Picture, readingOf, type DrawingProps } from '../kit/index.ts';

const plot = { left: 52, right: 346, top: 34, bottom: 214 };

export function Drawing({ id, answer, reader }: DrawingProps) {
  const rows = valueOf(answer, 'serviceTable', 'table').rows.map(([years, repair]) => ({
    years: Number(years),
    repair: Number(repair),
  }));
  const money = (key: string) => {
    const value = valueOf(answer, key, 'money');
    return { n: value.value, text: readingOf(value, value.value, reader).figure };
  };
  const [fresh, repair, quote] = [money('newYearly'), money('repairYearly'), money('toPay')];
  // The limit the verdict measures the quote against: with the chance of a worn engine in it where nobody looks.
  const verdict = valueOf(answer, 'verdict', 'verdict');
  const limit = Number(verdict.data?.['limit'] ?? 0);
  const most = { n: limit, text: readingOf(valueOf(answer, 'mostWorth', 'money'), limit, reader).figure };
  const found = answer.values.find((v) => v.key === 'crossing');
  const crossing = found?.kind === 'number' ? found.value : undefined;
  const last = Math.max(...rows.map((r) => r.years));
  // The crossing is a point of the curve, so that its mark lies on the line between two whole years.
  const points =
    crossing !== undefined && crossing > (rows[0]?.years ?? 0) && crossing < last
      ? [...rows, { years: crossing, repair: fresh.n }].sort((a, b) => a.years - b.years)
      : rows;
  const shown = crossing !== undefined && crossing <= last ? crossing : undefined;
  const given = rows.reduce(
    (best, r) => (Math.abs(r.repair - repair.n) < Math.abs(best.repair - repair.n) ? r : best),
    rows[0] ?? { years: 1, repair: repair.n },
  );

  const most3 = 3 * Math.max(fresh.n, repair.n, 1);
  const x = linear(0, last, plot.left, plot.right);
  const high = Math.min(most3, Math.max(fresh.n, ...rows.map((r) => r.repair)) * 1.12);
  const y = linear(0, high, plot.bottom, plot.top);
  // The curve falls to the right: the room for its label is below it on the left, or level with the point on the right.
  const roomLeft = x(given.years) - plot.left > 118;
  const end = rows.at(-1)?.repair ?? 0;
  const newAt = y(fresh.n) + (end > fresh.n ? 17 : -7);
  const description =
    `New costs ${fresh.text} a year. Repair costs ${repair.text} a year at ${formatNumber(given.years)} ` +
    `years of service.${crossing === undefined ? ' The two do not cross.' : ` Both cost the same at ${formatNumber(crossing, 1)} years.`} ` +
    `Saying yes costs ${quote.text}; the most worth paying is ${most.text}.`;

  return (
    <Picture
      id={id}
      title="Yearly cost against years of service, and the quote against its limit"
      description={description}
      height={346}
    >
      <text class="pic-text" x={4} y={16}>
        a year, {reader.currency}
      </text>
      {niceSteps(0, high, 5).map((n) => (
        <g key={n}>
          <path class="pic-grid" d={`M${plot.left} ${y(n).toFixed(1)}H${plot.right}`} />
          <text class="pic-tick" x={plot.left - 6} y={y(n) + 4} text-anchor="end">
            {formatNumber(n)}
          </text>
        </g>
      ))}
      {niceSteps(0, last, 8)
        .filter((n) => Number.isInteger(n))
        .map((n) => (
          <text class="pic-tick" key={n} x={x(n)} y={plot.bottom + 16} text-anchor="middle">
            {formatNumber(n)}
          </text>
        ))}
      <text class="pic-text" x={(plot.left + plot.right) / 2} y={plot.bottom + 34} text-anchor="middle">
        years of service after the repair
      </text>
      <path class="pic-axis" d={`M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`} />
      <path class="pic-second" d={`M${plot.left} ${y(fresh.n).toFixed(1)}H${plot.right}`} />
      <path class="pic-first" d={curve(points, high, x, y)} />
      {shown !== undefined && (
        <g>
          <path class="pic-lead" d={`M${x(shown).toFixed(1)} ${plot.top}V${plot.bottom}`} />
          <text class="pic-text pic-halo" x={Math.min(x(shown) + 5, 240)} y={plot.top - 2}>
            same at <tspan class="pic-figure">{formatNumber(shown, 1)}</tspan> years
          </text>
          {shown >= (rows[0]?.years ?? 0) && <circle class="pic-dot" cx={x(shown)} cy={y(fresh.n)} r={3} />}
        </g>
      )}
      <circle class="pic-accent-fill" cx={x(given.years)} cy={y(given.repair)} r={5} />
      <text class="pic-text pic-halo" x={plot.right - 4} y={newAt} text-anchor="end">
        new <tspan class="pic-figure">{fresh.text}</tspan>
      </text>
      <text
        class="pic-text pic-halo"
        x={x(given.years) + (roomLeft ? -4 : 10)}
        y={y(given.repair) + (roomLeft ? 18 : 4)}
        text-anchor={roomLeft ? 'end' : 'start'}
      >
        repair <tspan class="pic-figure">{repair.text}</tspan>
      </text>
      <Ladder
        top={272}
        value={quote.n}
        limit={most.n}
        level={verdict.level === 'good' || verdict.level === 'note' ? 'good' : 'caution'}
        valueLabel="quote"
        valueText={quote.text}
        limitLabel="most worth paying"
        limitText={most.text}
      />
    </Picture>
  );
}

interface Point {
  readonly years: number;
  readonly repair: number;
}

/** The points joined; where the first years cost more than the picture is high, the line enters from its top edge. */
function curve(rows: readonly Point[], high: number, x: (n: number) => number, y: (n: number) => number): string {
  const points = rows.flatMap((row, i): Point[] => {
    const next = rows[i + 1];
    if (row.repair <= high) return [row];
    if (!next || next.repair > high) return [];
    const part = (row.repair - high) / (row.repair - next.repair);
    return [{ years: row.years + part * (next.years - row.years), repair: high }];
  });
  return points.map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p.years).toFixed(1)} ${y(p.repair).toFixed(1)}`).join('');
}
