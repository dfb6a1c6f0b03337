/** What the reader came for: verdicts first, then the large figures with their range. */
import type { Value, VerdictValue } from '../../../core/contract/result.ts';
import type { ShownSource } from '../state/props.ts';
import { say } from '../../../words/kit.ts';
import type { Saying } from '../state/saying.ts';
import { Icon } from './Icon.tsx';
import { isMeasured, otherSystem, readingOf, verdictText, type Measured, type Reader } from '../state/reading.ts';
import { SourceMark } from './SourceMark.tsx';

interface Props {
  readonly values: readonly Value[];
  /** How a verdict stands: said, as part of an example, or not at all. */
  readonly saying: Saying;
  readonly reader: Reader;
  readonly sources: Readonly<Record<string, ShownSource>>;
}

export function MainValues({ values, saying, reader, sources }: Props) {
  return (
    <div class="calc-main">
      {values.map((v) =>
        v.kind === 'verdict' ? <Verdict key={v.key} value={v} saying={saying(v)} reader={reader} /> : null,
      )}
      <dl class="calc-large">
        {values.map((v) => {
          if (v.kind === 'verdict' || v.kind === 'table') return null;
          return (
            <div key={v.key} data-value={v.key}>
              <dt>
                {v.label}
                {v.source && <SourceMark id={v.source} source={sources[v.source]} />}
              </dt>
              {isMeasured(v) ? <Figure value={v} reader={reader} /> : <dd class="calc-figure">{v.value}</dd>}
              {v.note && <dd class="calc-note">{v.note}</dd>}
            </div>
          );
        })}
      </dl>
    </div>
  );
}

interface VerdictProps {
  readonly value: VerdictValue;
  readonly saying: ReturnType<Saying>;
  readonly reader: Reader;
}

export function Verdict({ value, saying, reader }: VerdictProps) {
  if (saying === 'held-back') return null;
  const said = saying === 'said';
  // An example's verdict is a sentence to look at: no mark, no colour, no level.
  return (
    <p
      class={said ? `calc-verdict calc-level-${value.level}` : 'calc-verdict calc-verdict-pencil'}
      data-value={value.key}
      data-level={said ? value.level : undefined}
    >
      {said && <Icon name={value.level} />}
      <span>
        {!value.main && <strong>{value.label}: </strong>}
        {verdictText(value, reader)}
        {value.note && ` ${value.note}`}
      </span>
    </p>
  );
}

function Figure({ value, reader }: { readonly value: Measured; readonly reader: Reader }) {
  const { figure, unit } = readingOf(value, value.value, reader);
  const other = otherSystem(value, reader);
  return (
    <>
      <dd class="calc-figure">
        {figure}
        {unit && <span class="calc-figure-unit">&nbsp;{unit}</span>}
      </dd>
      {other && <dd class="calc-other">{other}</dd>}
      <Range value={value} reader={reader} />
    </>
  );
}

export function Range({ value, reader }: { readonly value: Measured; readonly reader: Reader }) {
  const { low, high } = value;
  if (low === undefined || high === undefined) return null;
  const at = (n: number) => readingOf(value, n, reader).figure;
  const names = value.kind === 'money' ? [say.low, say.high] : [say.min, say.max];
  // "mean" is only written where the figure is the mean of the two.
  const isMean = Math.abs(value.value - (low + high) / 2) <= 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  return (
    <dd class="calc-range">
      <span>
        <i>{names[0]}</i> {at(low)}
      </span>
      {isMean && (
        <span>
          <i>{say.mean}</i> {at(value.value)}
        </span>
      )}
      <span>
        <i>{names[1]}</i> {at(high)}
      </span>
    </dd>
  );
}
