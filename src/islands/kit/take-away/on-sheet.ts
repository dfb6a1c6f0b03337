import { putOnSheet } from '../../../browser/device/index.ts';
import { mainOf } from '../state/main-values.ts';
import type { IslandProps } from '../state/props.ts';
import { spoken, type Reader } from '../state/reading.ts';
import { sayingOf } from '../state/saying.ts';
import type { Worked } from '../state/use-calculation.ts';
import { usedFigures } from '../state/used.ts';

/**
 * Puts a copy of an answer on the sheet of the ticket on the bench: what came out, what went in and whose each figure
 * is, and a link that opens the page with them. A verdict that may not be said is not written down either.
 */
export function putAnswerOnSheet(
  page: IslandProps,
  title: string,
  worked: Worked,
  reader: Reader,
  query: string,
): void {
  const saying = sayingOf(worked);
  const said = mainOf(worked.answer.values)
    .filter((v) => v.kind !== 'verdict' || saying(v) === 'said')
    .map((v) => spoken(v, reader))
    .filter(Boolean);
  const [sentence = '', ...more] = said;
  putOnSheet({
    kind: 'result',
    title,
    sentence,
    outcomes: more.map((text) => ({ label: '', text })),
    inputs: usedFigures(worked.asked, worked.figures, page.shop.currency).map(({ label, text, whose }) => ({
      label,
      text,
      ...(whose ? { from: whose } : {}),
    })),
    link: `/calculators/${page.name}/?${query}`,
  });
}
