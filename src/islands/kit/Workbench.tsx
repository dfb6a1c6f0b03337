/** A whole calculator: units, boxes, answer, and the sheet that prints. Every island is this with its topic and its drawing. */
import type { ComponentType } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { siteLink } from '../../browser/site-link.ts';
import type { RawInputs } from '../../core/contract/field.ts';
import { mayBeSaid } from '../../core/contract/judged.ts';
import { say } from '../../words/kit.ts';
import { FormActions, AnswerActions } from './Actions.tsx';
import type { DrawingProps } from './drawing/props.ts';
import { ErrorSummary } from './form/ErrorSummary.tsx';
import { FieldList } from './form/FieldList.tsx';
import { few, hasLongRows } from './form/RowsBox.tsx';
import { hasTwoSystems, UnitSwitch } from './form/UnitSwitch.tsx';
import { AnswerLine } from './result/AnswerLine.tsx';
import { AnswerPanel } from './result/AnswerPanel.tsx';
import { FiguresUsed } from './result/FiguresUsed.tsx';
import { mainOf } from './state/main-values.ts';
import { Below, Side } from './result/Rest.tsx';
import { hasOwn } from './state/figures.ts';
import type { UnderBox } from './state/form.ts';
import { linkQuery } from './state/link.ts';
import type { IslandProps, ShopFacts } from './state/props.ts';
import { spoken, type Reader } from './state/reading.ts';
import { markOf } from './state/saying.ts';
import type { TopicParts } from './state/topic-parts.ts';
import type { Worked } from './state/use-calculation.ts';
import { useAnnouncement } from './state/use-announcement.ts';
import { useForm } from './state/use-form.ts';
import { useLate } from './state/use-late.ts';
import { putAnswerOnSheet } from './take-away/on-sheet.ts';
import { fillJobLine } from './take-away/print-sheet.ts';
import { PrintCode, PrintHead } from './take-away/PrintHead.tsx';
import type { TakeAwayProps } from './take-away/take-away.ts';

interface Props extends IslandProps {
  readonly topic: TopicParts;
  readonly drawing?: ComponentType<DrawingProps>;
  /** Boxes the shop's own file fills: labour rate, tax. */
  readonly fromShop?: (shop: ShopFacts) => RawInputs;
  /** Another way to get a figure, shown under its box; by field key. */
  readonly underBox?: UnderBox;
  /** Sheets to print and files to save, under the answer. */
  readonly takeAway?: ComponentType<TakeAwayProps>;
  /** Fits figures that hold a day to the day it is for the reader; asked once scripts run. */
  readonly toToday?: (figures: RawInputs) => RawInputs;
}

export function Workbench({ topic, drawing, fromShop, underBox, takeAway: TakeAway, toToday, ...given }: Props) {
  // The same object for as long as the page lives: what hangs on it is not made again at every key.
  const page = useRef<IslandProps>(given).current;
  const [shop] = useState(() => fromShop?.(page.shop));
  const bench = useForm(topic, page, { shop, toToday });
  const { live, figures, calculation } = bench;
  const { worked, stale } = calculation;
  const answerHead = useRef<HTMLHeadingElement>(null);
  const { system } = figures;
  const reader = useMemo<Reader>(
    () => ({ system, currency: page.shop.currency, words: topic.words }),
    [system, page, topic],
  );
  const announced = useAnnouncement(worked && !stale ? summaryOf(worked, reader) : '', live && figures.past.length > 0);
  // Long rows need the whole width; the answer then stands beside them in a narrow column.
  const lists = topic.fields.filter((f) => f.kind === 'rows').filter((f) => !f.more);
  const longRows = lists.some(hasLongRows);
  const fourColumns = lists.some((f) => f.columns.length === few);
  // A form that begins with a list bears that list's name: one head where two would stand.
  const first = topic.fields[0];
  const headList = first?.kind === 'rows' ? first : undefined;
  const compact = page.compact === true;
  // In full it is what its page is about; in short it stands under a heading of the article.
  const Head = compact ? 'h3' : 'h2';
  const mark = worked && markOf(worked);
  // The short form leads to the full one, which goes by the topic's name.
  const query = () => linkQuery(figures, topic.fields, compact ? page.name : page.id, calculation.said);

  // Parts that did not change are one and the same node: Preact then passes over them at every key. What may follow a
  // moment later does so in three tasks.
  const now = useMemo(() => ({ worked, stale }), [worked, stale]);
  const { values, flush } = useLate(now, live, 3);
  const [{ worked: forSide } = now, { worked: forBelow, stale: staleBelow } = now, { worked: forPaper } = now] = values;
  const side = useMemo(
    () => forSide && !compact && <Side page={page} worked={forSide} reader={reader} drawing={drawing} />,
    [forSide, reader, compact, page, drawing],
  );
  const forDesk = useLastWhole(forBelow);
  const staleDesk = staleBelow || forDesk !== forBelow;
  const desk = useMemo(
    () => TakeAway && forDesk && live && <TakeAway page={page} worked={forDesk} stale={staleDesk} />,
    [TakeAway, forDesk, page, live, staleDesk],
  );
  const below = useMemo(
    () =>
      forBelow &&
      !compact && <Below page={page} worked={forBelow} reader={reader} live={live} desk={desk} onReach={flush} />,
    [forBelow, reader, compact, page, live, desk, flush],
  );
  const paper = useMemo(
    () => forPaper && <FiguresUsed asked={forPaper.asked} figures={forPaper.figures} currency={page.shop.currency} />,
    [forPaper, page],
  );
  const panel = useMemo(
    () =>
      worked && (
        <AnswerPanel
          page={page}
          worked={worked}
          reader={reader}
          live={live}
          onConfirm={live ? (keys) => bench.change({ do: 'confirm', keys }) : undefined}
        />
      ),
    // The act does not hang on when it was made.
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [worked, page, reader, live],
  );
  const printHead = useMemo(
    () => <PrintHead page={page} title={topic.title} worked={forPaper} />,
    [page, topic, forPaper],
  );
  useEffect(() => {
    const beforePrint = () => {
      flush();
      fillJobLine(page);
    };
    addEventListener('beforeprint', beforePrint);
    return () => removeEventListener('beforeprint', beforePrint);
  }, [flush, page]);

  const submit = (event: Event) => {
    event.preventDefault();
    bench.press();
    if (calculation.problems.length === 0) answerHead.current?.focus();
  };

  return (
    <section
      class={`calc${compact ? ' calc-compact' : ''}${longRows ? ' calc-rows-first' : ''}${fourColumns ? ' calc-four-columns' : ''}${headList ? ' calc-list-head' : ''}`}
      id={`${page.id}-calculator`}
      data-live={live ? 'yes' : 'no'}
      data-dated={toToday && ''}
      data-lost={say.notLoaded}
      aria-label={topic.title}
    >
      {printHead}
      {!compact && <AnswerLine id={page.id} worked={worked} stale={stale} reader={reader} />}
      <div class="calc-sheet">
        {/* Figures are brought back by the form itself. A browser would put those of another ticket in some of the boxes. */}
        <form class="calc-form" autocomplete="off" noValidate onSubmit={submit} aria-labelledby={`${page.id}-figures`}>
          <fieldset class="calc-switchable" disabled={!live}>
            <div class="calc-top">
              <Head class="calc-head" id={`${page.id}-figures`}>
                {headList?.label ?? say.figures}
              </Head>
              {hasTwoSystems(topic.fields, worked?.answer.values ?? []) && (
                <UnitSwitch id={page.id} system={system} onSwitch={bench.switchUnits} />
              )}
            </div>
            {!live && <p class="calc-example">{say.exampleOff}</p>}
            {figures.pressed && <ErrorSummary id={page.id} lines={bench.problemLines} presses={bench.presses} />}
            <FieldList form={{ ...bench.form, underBox }} fields={topic.fields} compact={compact} />
            <FormActions
              untouched={!hasOwn(figures.entries)}
              toStart={page.preset ? say.backToPage : bench.plate ? say.backToPlate : say.backToExample}
              canUndo={figures.past.length > 0}
              onEmpty={() => {
                bench.empty();
                focusFirst(page.id);
              }}
              onStart={bench.showStart}
              onUndo={() => bench.change({ do: 'undo' })}
            />
          </fieldset>
          {paper}
        </form>
        <div
          class={worked && worked.pencil > 0 ? 'calc-answer calc-pencil' : 'calc-answer'}
          id={`${page.id}-answer`}
          data-stale={stale && worked ? 'yes' : 'no'}
          data-pagefind-ignore="index"
        >
          <div class="calc-top">
            <Head class="calc-head" id={`${page.id}-answer-head`} ref={answerHead} tabIndex={-1}>
              {say.answer}
            </Head>
            {mark && (
              <span class="calc-marks">
                <span class={`calc-mark calc-mark-${mark.ink}`}>{mark.text}</span>
                {live && <span class="calc-earlier">{say.earlier}</span>}
              </span>
            )}
          </div>
          {panel ?? <p class="calc-nothing">{say.noAnswer}</p>}
        </div>
        {side}
        <div class="calc-acts">
          {compact ? (
            page.full !== false && (
              <p class="calc-full">
                <a href={siteLink(`/calculators/${page.name}/?${query()}`)}>{say.fullForm}</a>
              </p>
            )
          ) : (
            <AnswerActions
              page={page}
              query={query}
              beforePrint={flush}
              onSheet={
                worked && !stale && worked.pencil === 0 && worked.missing.length === 0
                  ? () => putAnswerOnSheet(page, topic.title, worked, reader, query())
                  : undefined
              }
            />
          )}
        </div>
        {below}
      </div>
      {!compact && <PrintCode page={page} />}
      <output class="calc-hidden" id={`${page.id}-said`} aria-live="polite" aria-atomic="true">
        {announced}
      </output>
    </section>
  );
}

/** While a row is being filled in or a box is empty a desk stays, with the words typed there, at the last whole answer. */
function useLastWhole(worked: Worked | undefined): Worked | undefined {
  const last = useRef<Worked>();
  if (worked?.missing.length === 0) last.current = worked;
  else if (worked?.figures.series !== last.current?.figures.series) last.current = undefined;
  return last.current;
}

function summaryOf(worked: NonNullable<ReturnType<typeof useForm>['calculation']['worked']>, reader: Reader): string {
  return mainOf(worked.answer.values)
    .filter((v) => v.kind !== 'verdict' || mayBeSaid(v, worked.judged))
    .map((v) => spoken(v, reader))
    .join(' ');
}

/** After the boxes have been emptied the hand goes on typing in the first of them. */
function focusFirst(id: string): void {
  setTimeout(() =>
    document.querySelector<HTMLElement>(`#${id}-calculator :is(input[type=text], select):not([disabled])`)?.focus(),
  );
}
