import type { InputsOf } from '../../contract/field.ts';
import type { Caution, TextValue, Value, VerdictValue } from '../../contract/result.ts';
import { filterSeries, silicaLimit, type SilicaLimit } from '../../exposure/index.ts';
import { isOver } from '../../thresholds/index.ts';
import type { fields } from './fields.ts';

export type DustInputs = InputsOf<typeof fields>;
type Data = NonNullable<VerdictValue['data']>;

export const cautions: readonly Caution[] = [{ hazard: 'silica-dust', level: 'danger' }];

/** A verdict of this topic with its level and data [SI]. */
export function verdict(
  key: string,
  label: string,
  code: string,
  level: VerdictValue['level'],
  data: Data = {},
  main = true,
): VerdictValue {
  return { kind: 'verdict', key, label, code, level, data, main };
}

/** True where the rules of the United States hold. */
export const isUsa = (i: DustInputs) => i.rule === 'us-construction' || i.rule === 'us-general';

/** The limit of the place and the law it stands in, for every answer. */
export function limitValues(i: DustInputs): Value[] {
  const row: SilicaLimit = silicaLimit(i.rule);
  const law: TextValue = {
    kind: 'text',
    key: 'law',
    label: 'Law and date, as seen',
    value: `${row.law}, ${row.date}`,
    source: row.source,
  };
  return [
    {
      kind: 'quantity',
      key: 'limit',
      label: `Limit, ${row.average}`,
      value: (row.limit ?? 0) * 1e-6,
      units: ['mg/m3', 'mg/m3'],
      decimals: [3, 3],
      source: row.source,
    },
    law,
    verdict('check', 'Rules of your place', 'check-local', 'note', { law: row.law, date: row.date }, false),
  ];
}

/** The highest factor of a British FFP3 or half mask with P3. Source: hse-kerbs. */
export const halfMaskFactor = 20;

/**
 * Which filter may be worn; US series only, since other places have one class for all.
 * @param factor of the mask named beside it [1]
 */
export function filterValues(i: DustInputs, factor = 0): Value[] {
  if (!isUsa(i)) {
    const code = isOver(factor, halfMaskFactor) ? 'filter-p3-full' : 'filter-p3';
    return i.rule === 'gb' ? [verdict('filter', 'Filter', code, 'note', {}, false)] : [];
  }
  const series = filterSeries(i.oil === true, i.filterTime ?? 0);
  const code = series.length === 3 ? 'filter-any' : series.length === 2 ? 'filter-r-p' : 'filter-p';
  return [verdict('filter', 'Filter', code, 'note', {}, false)];
}
