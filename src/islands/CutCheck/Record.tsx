/** The record: when, which saw, who, and every check with its answer. To show, or on one sheet of paper. */
import type { CutCheck } from '../../browser/device/index.ts';
import type { CutCheckProps } from './props.ts';
import { dayAndTime, isClear, saidOf } from './said.ts';

interface Props extends CutCheckProps {
  readonly record: CutCheck;
  readonly kept: boolean;
  readonly another: () => void;
}

export function Record({ words, lang, title, checks, shop, record, kept, another }: Props) {
  const clear = isClear(record, checks);
  return (
    <section class="cut-record">
      <h2 tabIndex={-1} class={clear ? 'cut-clear' : 'cut-stopped'}>
        {clear ? words.clear : words.stopped}
      </h2>
      <p>
        <strong>{title}</strong>. {dayAndTime(record.at, lang)}.{record.saw && ` ${words.saw}: ${record.saw}.`}
        {record.who && ` ${words.who}: ${record.who}.`}
      </p>
      <ol>
        {checks.map((check) => {
          const given = record.answers[check.id];
          return (
            <li key={check.id} data-said={given?.said ?? 'none'}>
              <b>{check.name}.</b> {check.say} <span class="cut-said">{saidOf(given, words)}</span>
            </li>
          );
        })}
      </ol>
      {clear ? (
        <p>{words.clearSays}</p>
      ) : (
        <p>
          <a class="cut-button cut-call" href={shop.tel}>
            {shop.call} {shop.phone}
          </a>
        </p>
      )}
      <p class="no-print" role="status">
        {kept ? words.kept : words.notKept}
      </p>
      <div class="cut-acts no-print">
        <button type="button" class="cut-button cut-first" onClick={() => window.print()}>
          {words.print}
        </button>
        <button type="button" class="cut-button" onClick={another}>
          {words.another}
        </button>
      </div>
    </section>
  );
}
