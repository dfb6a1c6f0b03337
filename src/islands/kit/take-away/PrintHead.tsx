/** Head of the bench card; only paper shows it. The day is filled in when it is printed. */
import { filledIn } from '../../../core/contract/entry.ts';
import { markOf } from '../state/saying.ts';
import type { Worked } from '../state/use-calculation.ts';
import { say } from '../../../words/index.ts';

interface Props {
  readonly id: string;
  readonly title: string;
  readonly shop: string;
  readonly address: string | undefined;
  readonly worked: Worked | undefined;
}

export function PrintHead({ id, title, shop, address, worked }: Props) {
  const mark = worked && markOf(worked);
  return (
    <header class="calc-print-head">
      {mark?.ink === 'pencil' && (
        <p class="calc-band">{mark.example ? say.exampleBand : say.pencilBand(worked?.pencil ?? 0, filled(worked))}</p>
      )}
      <p class="calc-print-title">{title}</p>
      <p>{shop}</p>
      <p>
        {say.printedOn} <span id={`${id}-date`} />
      </p>
      {address && (
        <p>
          {say.shownOn} {address}
        </p>
      )}
    </header>
  );
}

function filled(worked: Worked | undefined): number {
  return worked?.asked.filter((f) => filledIn(worked.figures.entries[f.key]).length > 0).length ?? 0;
}
