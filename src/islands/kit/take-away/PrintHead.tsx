/** Head and foot of the bench card; only paper shows them. Job line and square code are filled in when it is printed. */
import { filledIn } from '../../../core/contract/entry.ts';
import type { IslandProps } from '../state/props.ts';
import { markOf } from '../state/saying.ts';
import type { Worked } from '../state/use-calculation.ts';
import { say } from '../../../words/kit.ts';

interface Props {
  readonly page: IslandProps;
  readonly title: string;
  readonly worked: Worked | undefined;
}

export function PrintHead({ page: { id, shop }, title, worked }: Props) {
  const mark = worked && markOf(worked);
  return (
    <header class="calc-print-head">
      {mark?.ink === 'pencil' && (
        <p class="calc-band">{mark.example ? say.exampleBand : say.pencilBand(worked?.pencil ?? 0, filled(worked))}</p>
      )}
      <p class="calc-print-title">{title}</p>
      <p>{shop.name}</p>
      <p class="calc-job-line" data-pagefind-ignore>
        {(['ticket', 'machine', 'date', 'by'] as const).map((part) => (
          <span key={part}>
            {say.jobLine[part]} <b id={`${id}-job-${part}`} />
          </span>
        ))}
      </p>
    </header>
  );
}

function filled(worked: Worked | undefined): number {
  return worked?.asked.filter((f) => filledIn(worked.figures.entries[f.key]).length > 0).length ?? 0;
}

/** The page these figures stand on, as an address and as a square code that opens it filled in. */
export function PrintCode({ page: { id, address } }: { readonly page: IslandProps }) {
  return (
    <footer class="calc-print-code">
      {address && (
        <p>
          {say.shownOn} {address}
        </p>
      )}
      <svg id={`${id}-code`} aria-hidden="true" viewBox="0 0 0 0">
        <path d="" />
      </svg>
    </footer>
  );
}
