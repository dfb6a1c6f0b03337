/** A whole calculator: units, boxes, answer, and the sheet that prints. Every island is this with its topic and its drawing. */
import { useRef } from 'preact/hooks';
import type { ComponentType } from 'preact';
import type { RawInputs } from '../../core/contract/field.ts';
import { mayBeSaid } from '../../core/contract/judged.ts';
import { Actions } from './Actions.tsx';
import type { DrawingProps } from './drawing/props.ts';
import type { TakeAwayProps } from './take-away/take-away.ts';
import type { UnderBox } from './state/form.ts';
import { ErrorSummary } from './form/ErrorSummary.tsx';
import { FieldList } from './form/FieldList.tsx';
import { hasLongRows } from './form/RowsBox.tsx';
import { hasTwoSystems, UnitSwitch } from './form/UnitSwitch.tsx';
import { PrintHead } from './take-away/PrintHead.tsx';
import type { IslandProps, ShopFacts } from './state/props.ts';
import { AnswerPanel, mainOf } from './result/AnswerPanel.tsx';
import { FiguresUsed } from './result/FiguresUsed.tsx';
import { Icon } from './result/Icon.tsx';
import { spoken, type Reader } from './state/reading.ts';
import { Working } from './result/Working.tsx';
import { siteLink } from '../../browser/site-link.ts';
import { linkQuery } from './state/link.ts';
import { useAnnouncement } from './state/use-announcement.ts';
import { hasOwn } from './state/figures.ts';
import { markOf } from './state/saying.ts';
import { useForm } from './state/use-form.ts';
import type { TopicParts } from './state/topic-parts.ts';
import { say } from '../../words/index.ts';

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

export function Workbench({ topic, drawing, fromShop, underBox, takeAway: TakeAway, toToday, ...page }: Props) {
  const bench = useForm(topic, page, { shop: fromShop?.(page.shop), toToday });
  const { worked, stale } = bench.calculation;
  const answerHead = useRef<HTMLHeadingElement>(null);
  const reader: Reader = { system: bench.figures.system, currency: page.shop.currency, words: topic.words };
  const summary =
    worked && !stale
      ? mainOf(worked.answer.values)
          .filter((v) => v.kind !== 'verdict' || mayBeSaid(v, worked.judged))
          .map((v) => spoken(v, reader))
          .join(' ')
      : '';
  const announced = useAnnouncement(summary, bench.live && bench.figures.past.length > 0);
  const untouched = !hasOwn(bench.figures.entries);
  const mark = worked && markOf(worked);
  // Long rows need the whole width; the answer then stands below them.
  const longRows = topic.fields.some((f) => f.kind === 'rows' && !f.more && hasLongRows(f));
  // The short form leads to the full one, which goes by the topic's name.
  const query = () =>
    linkQuery(bench.figures, topic.fields, page.compact ? page.name : page.id, bench.calculation.said);

  const submit = (event: Event) => {
    event.preventDefault();
    bench.press();
    if (bench.calculation.problems.length === 0) answerHead.current?.focus();
  };

  return (
    <section
      class={`calc${page.compact ? ' calc-compact' : ''}${longRows ? ' calc-form-above' : ''}`}
      id={`${page.id}-calculator`}
      data-live={bench.live ? 'yes' : 'no'}
      aria-label={topic.title}
    >
      <PrintHead id={page.id} title={topic.title} shop={page.shop.name} address={page.address} worked={worked} />
      <div class="calc-sheet">
        <form class="calc-form" noValidate onSubmit={submit} aria-labelledby={`${page.id}-figures`}>
          <fieldset class="calc-switchable" disabled={!bench.live}>
            <div class="calc-top">
              <h3 class="calc-head" id={`${page.id}-figures`}>
                {say.figures}
              </h3>
              {hasTwoSystems(topic.fields, worked?.answer.values ?? []) && (
                <UnitSwitch id={page.id} system={bench.figures.system} onSwitch={bench.switchUnits} />
              )}
            </div>
            {untouched && !bench.live && <p class="calc-example">{say.exampleOff}</p>}
            {bench.figures.pressed && <ErrorSummary id={page.id} lines={bench.problemLines} presses={bench.presses} />}
            <FieldList form={{ ...bench.form, underBox }} fields={topic.fields} compact={page.compact === true} />
            <Actions
              id={page.id}
              compact={page.compact === true}
              untouched={untouched}
              toStart={page.preset ? say.backToPage : say.backToExample}
              canUndo={bench.figures.past.length > 0}
              onEmpty={() => {
                bench.empty();
                focusFirst(page.id);
              }}
              onExample={bench.showExample}
              onUndo={() => bench.change({ do: 'undo' })}
              query={query}
            />
          </fieldset>
        </form>
        <div
          class={`calc-answer${stale && worked ? ' calc-stale' : ''}${worked && worked.pencil > 0 ? ' calc-pencil' : ''}`}
          id={`${page.id}-answer`}
          data-pagefind-ignore="index"
        >
          <div class="calc-top">
            <h3 class="calc-head" id={`${page.id}-answer-head`} ref={answerHead} tabIndex={-1}>
              {say.answer}
            </h3>
            {mark && <span class={`calc-mark calc-mark-${mark.ink}`}>{mark.text}</span>}
          </div>
          {worked && stale && (
            <p class="calc-earlier">
              <Icon name="note" /> {say.earlier}
            </p>
          )}
          {worked ? (
            <>
              <FiguresUsed asked={worked.asked} figures={worked.figures} currency={page.shop.currency} />
              <AnswerPanel
                drawing={drawing}
                page={page}
                worked={worked}
                reader={reader}
                onConfirm={bench.live ? (keys) => bench.change({ do: 'confirm', keys }) : undefined}
              />
            </>
          ) : (
            <p class="calc-nothing">{say.noAnswer}</p>
          )}
          {page.compact && (
            <p class="calc-full">
              <a href={siteLink(`/calculators/${page.name}/?${query()}`)}>{say.fullForm}</a>
            </p>
          )}
        </div>
        {bench.live && worked && !page.compact && TakeAway && (
          <div class="calc-take-away">
            <TakeAway page={page} worked={worked} stale={stale} />
          </div>
        )}
        {worked && !page.compact && (
          <Working
            id={page.id}
            stale={stale}
            steps={worked.answer.working}
            markup={page.markup}
            sources={page.sources}
          />
        )}
      </div>
      <output class="calc-hidden" id={`${page.id}-said`} aria-live="polite" aria-atomic="true">
        {announced}
      </output>
    </section>
  );
}

/** After the boxes have been emptied the hand goes on typing in the first of them. */
function focusFirst(id: string): void {
  setTimeout(() =>
    document.querySelector<HTMLElement>(`#${id}-calculator :is(input[type=text], select):not([disabled])`)?.focus(),
  );
}
