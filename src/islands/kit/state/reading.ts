/** Values as text: figure and unit apart, so that a page can set them in different faces. */
import { sayer } from '../../../core/contract/messages.ts';
import { formatIn, formatNumber, pick, type UnitKey, type UnitSystem } from '../../../core/quantity/index.ts';
import type { NumberValue, QuantityValue, Value, VerdictValue } from '../../../core/contract/result.ts';
import type { Words } from '../../../core/contract/words.ts';

export interface Reader {
  readonly system: UnitSystem;
  readonly currency: string;
  readonly words: Words;
}

export interface Reading {
  readonly figure: string;
  readonly unit: string;
}

export type Measured = QuantityValue | NumberValue;

export function isMeasured(value: Value): value is Measured {
  return value.kind === 'quantity' || value.kind === 'number' || value.kind === 'count' || value.kind === 'money';
}

export function readingOf(value: Measured, n: number, { system, currency }: Reader): Reading {
  switch (value.kind) {
    case 'quantity':
      return quantityReading(
        n,
        pick(value.units, system),
        value.decimals && pick(value.decimals, system),
        value.figures,
      );
    case 'money':
      return { figure: sayer({ currency }).money(n), unit: '' };
    case 'count':
      return { figure: formatNumber(n, 0), unit: '' };
    case 'number':
      return { figure: formatNumber(n, value.decimals), unit: '' };
  }
}

export function quantityReading(si: number, unit: UnitKey, decimals?: number, figures?: number): Reading {
  const [figure = '', label = ''] = formatIn(si, unit, decimals, figures).split('\u00a0');
  return { figure, unit: label };
}

export function readingText({ figure, unit }: Reading): string {
  return unit ? `${figure}\u00a0${unit}` : figure;
}

/** The same value in the other unit system, where that is another unit. */
export function otherSystem(value: Measured, reader: Reader): string | undefined {
  if (value.kind !== 'quantity' || value.units[0] === value.units[1]) return undefined;
  return readingText(
    readingOf(value, value.value, { ...reader, system: reader.system === 'metric' ? 'inch' : 'metric' }),
  );
}

export function verdictText(value: VerdictValue, { words, system, currency }: Reader): string {
  const sentence = words.verdicts[value.code];
  if (!sentence) throw new Error(`No words for the verdict "${value.code}".`);
  return sentence(value.data ?? {}, sayer({ system, currency }));
}

/** One value as a sentence part, for announcing. */
export function spoken(value: Value, reader: Reader): string {
  if (value.kind === 'verdict') return verdictText(value, reader);
  if (value.kind === 'table') return '';
  if (value.kind === 'text') return `${value.label}: ${value.value}.`;
  const range =
    value.low !== undefined && value.high !== undefined
      ? `, ${readingText(readingOf(value, value.low, reader))} – ${readingText(readingOf(value, value.high, reader))}`
      : '';
  return `${value.label}: ${readingText(readingOf(value, value.value, reader))}${range}.`;
}
