/** One check: its caution, what to look at, and the answers. */
import { useState } from 'preact/hooks';
import type { Answer } from '../../browser/device/index.ts';
import type { CheckWords } from '../../words/check.ts';
import { fill } from '../../words/say/fill.ts';
import type { ShownCheck } from './props.ts';

interface Props {
  readonly check: ShownCheck | undefined;
  /** From 0. */
  readonly n: number;
  readonly all: number;
  /** What was answered before. */
  readonly given: Answer | undefined;
  readonly words: CheckWords;
  readonly answer: (given: Answer) => void;
  readonly back: () => void;
}

export function OneCheck({ check, n, all, given, words, answer, back }: Props) {
  const [asking, setAsking] = useState(given?.said === 'not-here');
  const [why, setWhy] = useState(given?.why ?? '');
  const [refused, setRefused] = useState(false);
  if (!check) return null;
  const { caution } = check;
  const giveWhy = () => {
    if (why.trim().length < 3) setRefused(true);
    else answer({ said: 'not-here', why: why.trim() });
  };
  return (
    <>
      <p class="cut-count">{fill(words.of, { n: n + 1, all })}</p>
      <progress class="cut-bar" value={n} max={all} aria-label={fill(words.of, { n: n + 1, all })} />
      {caution && (
        <details class={`hazard-fold hazard-${caution.level} fold`} data-folded>
          <summary>
            <em>{caution.word}</em> <b>{caution.title}</b>
            <span>{caution.first}</span>
          </summary>
          <p>{caution.say}</p>
          <ul>
            {caution.do.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      <h2 tabIndex={-1}>{check.name}</h2>
      <p class="cut-say">{check.say}</p>
      <p>{check.more}</p>
      {check.running && <p class="cut-running">{words.running}</p>}
      <div class="cut-acts cut-answers">
        <button type="button" class="cut-button cut-even" onClick={() => answer({ said: 'yes', why: '' })}>
          {words.yes}
        </button>
        <button type="button" class="cut-button cut-even" onClick={() => answer({ said: 'no', why: '' })}>
          {words.no}
        </button>
        <button type="button" class="cut-button" aria-expanded={asking} onClick={() => setAsking(!asking)}>
          {words.notHere}
        </button>
        <button type="button" class="cut-button" onClick={back}>
          {words.back}
        </button>
      </div>
      {asking && (
        <div class="cut-why">
          <label for="cut-why">{words.whyNot}</label>
          <input
            id="cut-why"
            value={why}
            aria-describedby="cut-why-help"
            aria-invalid={refused}
            onInput={(e) => {
              setWhy(e.currentTarget.value);
              setRefused(false);
            }}
          />
          <p id="cut-why-help" class={refused ? 'cut-refused' : ''} role={refused ? 'alert' : undefined}>
            {refused ? words.whyNeeded : words.whyHelp}
          </p>
          <button type="button" class="cut-button cut-first" onClick={giveWhy}>
            {words.keepWhy}
          </button>
        </div>
      )}
    </>
  );
}
