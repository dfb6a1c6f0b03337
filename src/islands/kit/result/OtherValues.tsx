/** Everything else the calculation found: short ones as a list, tables as tables. */
import { formatNumber, pick, toUnit, unitLabel, unitOf } from '../../../core/quantity/index.ts';
import { sayer } from '../../../core/contract/messages.ts';
import type { TableColumn, TableValue, Value } from '../../../core/contract/result.ts';
import type { ShownSource } from '../state/props.ts';
import { say } from '../../../words/kit.ts';
import { Range, Verdict } from './MainValues.tsx';
import { isMeasured, readingOf, readingText, type Reader } from '../state/reading.ts';
import type { Saying } from '../state/saying.ts';
import { SourceMark } from './SourceMark.tsx';

interface Props {
  readonly values: readonly Value[];
  readonly saying: Saying;
  readonly reader: Reader;
  readonly sources: Readonly<Record<string, ShownSource>>;
}

export function OtherValues({ values, saying, reader, sources }: Props) {
  const verdicts = values.filter((v) => v.kind === 'verdict');
  const listed = values.filter((v) => v.kind !== 'verdict' && v.kind !== 'table');
  return (
    <>
      {verdicts.map((v) => (
        <Verdict key={v.key} value={v} saying={saying(v)} reader={reader} />
      ))}
      {listed.length > 0 && (
        <dl class="calc-list">
          {listed.map((v) => (
            <div key={v.key} data-value={v.key}>
              <dt>
                {v.label}
                {v.source && <SourceMark id={v.source} source={sources[v.source]} />}
              </dt>
              <dd>{isMeasured(v) ? readingText(readingOf(v, v.value, reader)) : v.value}</dd>
              {isMeasured(v) && <Range value={v} reader={reader} />}
              {v.note && <dd class="calc-note">{v.note}</dd>}
            </div>
          ))}
        </dl>
      )}
      {values.map((v) =>
        v.kind === 'table' ? <Table key={v.key} value={v} reader={reader} sources={sources} /> : null,
      )}
    </>
  );
}

function Table({
  value,
  reader,
  sources,
}: {
  readonly value: TableValue;
  readonly reader: Reader;
  readonly sources: Props['sources'];
}) {
  return (
    <details class="calc-fold" data-value={value.key}>
      <summary>
        {value.label} ({value.rows.length})
      </summary>
      <div class="calc-wide" role="region" aria-label={value.label} tabIndex={0}>
        <table>
          <caption>
            {value.label}
            {value.source && <SourceMark id={value.source} source={sources[value.source]} />}
          </caption>
          <thead>
            <tr>
              {value.columns.map((c) => (
                <th scope="col" key={c.key}>
                  {c.label}
                  {columnUnit(c, reader)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {value.rows.map((row, i) => (
              <tr key={i}>
                {row.map((cell, j) => (
                  <td key={j} class={typeof cell === 'number' || isDay(cell) ? 'calc-number' : undefined}>
                    {cellText(cell, value.columns[j], reader)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        {value.note && <p class="calc-note">{value.note}</p>}
      </div>
    </details>
  );
}

/** A day must not break at its hyphens. */
function isDay(cell: string | null): boolean {
  return cell !== null && /^\d{4}-\d\d-\d\d$/.test(cell);
}

function columnUnit(column: TableColumn, reader: Reader): string {
  const label = column.units ? unitLabel(pick(column.units, reader.system)) : '';
  return label && ` (${label})`;
}

function cellText(cell: number | string | null, column: TableColumn | undefined, reader: Reader): string {
  if (cell === null) return say.notKnown;
  if (typeof cell === 'string' || !column) return String(cell);
  if (column.money) return sayer(reader).money(cell);
  const decimals = typeof column.decimals === 'object' ? pick(column.decimals, reader.system) : column.decimals;
  if (!column.units) return formatNumber(cell, decimals);
  const unit = pick(column.units, reader.system);
  return formatNumber(toUnit(cell, unit), decimals ?? unitOf(unit).decimals);
}
