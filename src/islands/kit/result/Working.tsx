/** The working: each formula, the numbers put in, what came out, where the formula is from. */
import { useEffect, useRef } from 'preact/hooks';
import { formatNumber, unitLabel } from '../../../core/quantity/index.ts';
import type { PutIn, WorkingStep } from '../../../core/contract/formula.ts';
import type { ShownSource } from '../state/props.ts';
import { say } from '../../../words/kit.ts';
import { SourceMark } from './SourceMark.tsx';
import { SymbolMark } from './SymbolMark.tsx';

interface Props {
  readonly steps: readonly WorkingStep[];
  readonly markup: Readonly<Record<string, string>>;
  readonly sources: Readonly<Record<string, ShownSource>>;
}

export function Working({ steps, markup, sources }: Props) {
  return (
    <ol>
      {steps.map((s, i) => (
        <li key={i} data-formula={s.formula}>
          <p class="calc-step">
            {s.what}
            <SourceMark id={s.source} source={sources[s.source]} />
          </p>
          <Formula markup={markup[s.formula] ?? ''} />
          <ul class="calc-put">
            {s.put.map((p) => (
              <li key={p.symbol}>
                <Term term={p} /> <span class="calc-term-name">{p.name}</span>
              </li>
            ))}
          </ul>
          <p class="calc-gave">
            {say.gives} <Term term={s.gave} /> <span class="calc-term-name">{s.gave.name}</span>
          </p>
        </li>
      ))}
    </ol>
  );
}

/** More signs than this may be wider than a phone. */
const manySigns = 12;

/** A formula wider than the page scrolls, and then the keyboard must reach it; how wide it is shows only once it is live. */
function Formula({ markup }: { readonly markup: string }) {
  const line = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    const at = line.current;
    if (!at) return;
    if (at.scrollWidth > at.clientWidth) at.tabIndex = 0;
    else at.removeAttribute('tabindex');
  }, [markup]);
  const mayScroll = (markup.match(/<m[ino]/g)?.length ?? 0) > manySigns;
  return (
    <p
      class="calc-formula"
      ref={line}
      tabIndex={mayScroll ? 0 : undefined}
      dangerouslySetInnerHTML={{ __html: markup }}
    />
  );
}

function Term({ term }: { readonly term: PutIn }) {
  const unit = unitLabel(term.unit);
  return (
    <span class="calc-term">
      <SymbolMark name={term.symbol} /> ={' '}
      <span class="calc-term-figure">
        {sixDigits(term.value)}
        {unit && `\u00a0${unit}`}
      </span>
    </span>
  );
}

/** Enough digits to redo the sum by hand and land on the same outcome. */
function sixDigits(value: number): string {
  const rounded = Number(value.toPrecision(6));
  const size = Math.abs(rounded);
  if (size === 0 || (size >= 1e-4 && size < 1e9)) return String(rounded).replace('-', '−');
  const [digits = '', power = '0'] = rounded.toExponential().split('e');
  return `${digits.replace('-', '−')} × 10^${formatNumber(Number(power))}`;
}
