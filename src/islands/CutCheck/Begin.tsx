/** Which saw, who checks, and the records made before. */
import { useEffect, useState } from 'preact/hooks';
import { cutChecks, dropCutChecks, type CutCheck, type Draft } from '../../browser/device/index.ts';
import { fill } from '../../words/say/fill.ts';
import type { CutCheckProps } from './props.ts';
import { dayAndTime, isClear } from './said.ts';

interface Props extends CutCheckProps {
  /** Until then a box would forget what is typed in it, and a button does nothing. */
  readonly live: boolean;
  readonly draft: Draft;
  readonly done: number;
  readonly change: (part: Partial<Draft>) => void;
  readonly begin: (afresh: boolean) => void;
}

export function Begin({ words, lang, list, checks, live, draft, done, change, begin }: Props) {
  const [earlier, setEarlier] = useState<readonly CutCheck[]>([]);
  const [undo, setUndo] = useState<() => void>();
  useEffect(() => setEarlier(cutChecks(list)), [list]);
  return (
    <>
      <div class="cut-boxes">
        <label>
          {words.saw}
          <input
            value={draft.saw}
            autocomplete="off"
            disabled={!live}
            onInput={(e) => change({ saw: e.currentTarget.value })}
          />
        </label>
        <label>
          {words.who}
          <input
            value={draft.who}
            autocomplete="name"
            disabled={!live}
            onInput={(e) => change({ who: e.currentTarget.value })}
          />
        </label>
      </div>
      <div class="cut-acts">
        {done > 0 && (
          <button type="button" class="cut-button cut-first" onClick={() => begin(false)}>
            {fill(words.goOn, { done, all: checks.length })}
          </button>
        )}
        <button
          type="button"
          class={`cut-button ${done > 0 ? '' : 'cut-first'}`}
          disabled={!live}
          onClick={() => begin(true)}
        >
          {done > 0 ? words.startAfresh : words.begin}
        </button>
      </div>
      {(earlier.length > 0 || undo) && (
        <section class="cut-earlier no-print">
          <h2>{words.earlier}</h2>
          <ul>
            {earlier.slice(0, 10).map((one) => (
              <li key={one.at}>
                {dayAndTime(one.at, lang)}
                {one.saw && `, ${one.saw}`}: {isClear(one, checks) ? words.earlierClear : words.earlierStop}
              </li>
            ))}
          </ul>
          <button
            type="button"
            class="cut-button"
            onClick={() => {
              if (undo) {
                undo();
                setUndo(undefined);
              } else {
                const back = dropCutChecks(list);
                setUndo(() => back);
              }
              setEarlier(cutChecks(list));
            }}
          >
            {undo ? words.undo : words.drop}
          </button>
        </section>
      )}
    </>
  );
}
