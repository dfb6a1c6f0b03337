/** The figures behind an answer as plain text: boxes print badly, and a bench card must stand alone. */
import type { Field } from '../../../core/contract/field.ts';
import { say } from '../../../words/kit.ts';
import type { Figures } from '../state/figures.ts';
import { usedFigures } from '../state/used.ts';

interface Props {
  readonly asked: readonly Field[];
  readonly figures: Figures;
  readonly currency: string;
}

export function FiguresUsed({ asked, figures, currency }: Props) {
  return (
    <dl class="calc-used" aria-label={say.used}>
      {usedFigures(asked, figures, currency).map(({ key, label, text, rows, whose, pencil }) => (
        <div key={key} class={`${rows ? 'calc-used-rows' : ''}${pencil ? ' calc-ink-pencil' : ''}`.trim() || undefined}>
          <dt>{label}</dt>
          <dd>
            {rows ? rows.map((row, i) => <span key={i}>{row}</span>) : text}
            {whose && <span class="calc-whose"> {whose}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
