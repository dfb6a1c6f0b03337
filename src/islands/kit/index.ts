/**
 * The calculator kit: a live form, its answer, working, cautions and bench card, all from a topic of the core.
 *
 * To add a calculator for a topic `my-topic` that is in src/core/registry.ts:
 *  1. src/islands/MyTopic/index.tsx
 *       import { compute, example, fields, title, words } from '../../core/topics/my-topic/index.ts';
 *       import { Workbench, type IslandProps } from '../kit/index.ts';
 *       import { Drawing } from './Drawing.tsx';
 *       const topic = { title, fields, example, compute, words };
 *       export default function MyTopic(props: IslandProps) {
 *         return <Workbench {...props} topic={topic} drawing={Drawing} />;
 *       }
 *     Leave `drawing` out where a picture would say nothing. `fromShop={(shop) => ({ labourRate: shop.labourRate })}`
 *     fills boxes from content/shop.yaml. `underBox={{ frequency: Listen }}` puts another way to get a figure under its box.
 *     `takeAway={Sheets}` puts sheets to print and files to save under the answer; `toToday` moves days to today.
 *  2. src/islands/MyTopic/Drawing.tsx: a component of DrawingProps. It gets the SI inputs and the answer; read the
 *     answer with `valueOf` from core/contract/result.ts. Draw inside <Picture>, to scale, in classes of styles/calculator-drawing.css
 *     (pic-line, pic-fill, pic-mark, ...), and keep labels apart with `spreadOut`. No style attributes.
 *  3. src/components/calculators/MyTopic.astro: as its neighbours; `client:reached` must be written out.
 *  4. content/calculators/my-topic.mdx with <Calculator topic="my-topic" />.
 *
 * What stands in a box is one entry of core/contract/entry.ts: its text and whose it is. core/contract/judged.ts says from
 * that which verdicts may be said; state/figures.ts is every act of the reader, state/starts.ts what the boxes begin with,
 * state/kept.ts what the device keeps. What a key press shows at once is in Workbench.tsx; result/Rest.tsx follows a
 * moment later.
 *
 * Ids: `${topic}-calculator` for the whole, `${topic}-${key}` for a box, `${topic}-${rows}-${n}-${column}` for a cell.
 * `...-help`, `...-problem`, `...-said` stand beside a box. The answer is
 * `${topic}-answer`; each value in it carries data-value="key".
 */
export { Workbench } from './Workbench.tsx';
export type { IslandProps, ShopFacts } from './state/props.ts';
export type { UnderBoxProps } from './state/form.ts';
export type { DrawingProps } from './drawing/props.ts';
export type { TakeAwayProps } from './take-away/take-away.ts';
export { DeskBox } from './take-away/DeskBox.tsx';
export { calendarStamp, today } from './take-away/clock.ts';
export { download, fileName } from './take-away/download.ts';
export { useBegun } from './state/use-begun.ts';
export { foreignIn, type Foreign } from './state/saying.ts';
export { printAlone } from './take-away/print-alone.ts';
export { Picture } from './drawing/Picture.tsx';
export { Ladder } from './drawing/Ladder.tsx';
export { Arrow, SizeLine } from './drawing/Arrow.tsx';
export { Axis } from './drawing/Axis.tsx';
export { barHeight, barTop, RangeRow } from './drawing/RangeRow.tsx';
export { StackBar, StackList, type StackMark, type StackPart } from './drawing/StackBar.tsx';
export { TextLines } from './drawing/TextLines.tsx';
export { fitText } from './drawing/fit-text.ts';
export { linear, niceSteps, spreadOut, type Scale } from './drawing/scale.ts';
export { readingOf, readingText, quantityReading, type Reader } from './state/reading.ts';
