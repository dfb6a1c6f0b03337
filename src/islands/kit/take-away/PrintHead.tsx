/** Head of the bench card; only paper shows it. The day is filled in when it is printed. */
import { say } from '../../../words/index.ts';

interface Props {
  readonly id: string;
  readonly title: string;
  readonly shop: string;
  readonly address: string | undefined;
}

export function PrintHead({ id, title, shop, address }: Props) {
  return (
    <header class="calc-print-head">
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
