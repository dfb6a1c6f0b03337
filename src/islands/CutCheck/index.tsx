/**
 * Check before you cut: one check a screen. A check is answered yes, no, or does not apply with the reason; "no" stops.
 * What was answered outlives the page; the end is a dated record on this device.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  draftKind,
  keepCutCheck,
  load,
  ofDevice,
  save,
  type Answer,
  type CutCheck,
} from '../../browser/device/index.ts';
import { Begin } from './Begin.tsx';
import { OneCheck } from './OneCheck.tsx';
import type { CutCheckProps } from './props.ts';
import { Record } from './Record.tsx';
import { Stop } from './Stop.tsx';

type Screen = { readonly at: 'begin' } | { readonly at: 'check' | 'stop'; readonly n: number } | { readonly at: 'end' };

const empty = { saw: '', who: '', answers: {} };

export default function CutCheckIsland(props: CutCheckProps) {
  const { list, checks, words } = props;
  const place = ofDevice(draftKind, list);
  const [live, setLive] = useState(false);
  const [draft, setDraft] = useState<Omit<CutCheck, 'list' | 'at'>>(empty);
  const [screen, setScreen] = useState<Screen>({ at: 'begin' });
  const [ended, setEnded] = useState<{ record: CutCheck; kept: boolean }>();
  const top = useRef<HTMLDivElement>(null);

  // The device is read once the page is alive; until then the page shows what it was built with.
  useEffect(() => {
    const kept = load(place);
    if (kept) setDraft(kept);
    setLive(true);
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the place follows from the list, which a page never changes
  }, [list]);

  /** Who fills in forms for others fills several boxes before the page is drawn again. */
  const newest = useRef(draft);
  newest.current = draft;
  const keep = (part: Partial<typeof draft>) => {
    const next = { ...newest.current, ...part };
    newest.current = next;
    setDraft(next);
    // Of two windows the last to answer is the one gone on with; each ends with a record of its own.
    load(place);
    save(place, next);
  };
  const go = (next: Screen) => {
    setScreen(next);
    requestAnimationFrame(() => {
      const heading = top.current?.querySelector<HTMLElement>('h2');
      heading?.focus({ preventScroll: true });
      if (next.at !== 'begin') top.current?.scrollIntoView({ block: 'start' });
    });
  };
  const end = (answers: Readonly<Record<string, Answer>>) => {
    const record: CutCheck = { ...draft, answers, list, at: Date.now() };
    setEnded({ record, kept: keepCutCheck(record) });
    keep({ ...empty, saw: draft.saw, who: draft.who });
    go({ at: 'end' });
  };
  const answer = (n: number, given: Answer) => {
    const check = checks[n];
    if (!check) return;
    const answers = { ...draft.answers, [check.id]: given };
    keep({ answers });
    if (given.said === 'no') go({ at: 'stop', n });
    else if (n + 1 < checks.length) go({ at: 'check', n: n + 1 });
    else end(answers);
  };

  const done = checks.filter((c) => draft.answers[c.id] !== undefined && draft.answers[c.id]?.said !== 'no').length;
  const firstOpen = checks.findIndex((c) => {
    const given = draft.answers[c.id];
    return given === undefined || given.said === 'no';
  });

  return (
    <div class="cut-check" ref={top} data-screen={screen.at}>
      {screen.at === 'begin' && (
        <Begin
          {...props}
          live={live}
          draft={draft}
          done={done}
          change={keep}
          begin={(afresh) => {
            if (afresh) keep({ answers: {} });
            go({ at: 'check', n: afresh || firstOpen < 0 ? 0 : firstOpen });
          }}
        />
      )}
      {screen.at === 'check' && (
        <OneCheck
          key={screen.n}
          check={checks[screen.n]}
          n={screen.n}
          all={checks.length}
          given={draft.answers[checks[screen.n]?.id ?? '']}
          words={words}
          answer={(given) => answer(screen.n, given)}
          back={() => go(screen.n === 0 ? { at: 'begin' } : { at: 'check', n: screen.n - 1 })}
        />
      )}
      {screen.at === 'stop' && (
        <Stop
          name={checks[screen.n]?.name ?? ''}
          say={checks[screen.n]?.say ?? ''}
          shop={props.shop}
          words={words}
          again={() => go({ at: 'check', n: screen.n })}
          end={() => end(draft.answers)}
        />
      )}
      {screen.at === 'end' && ended && (
        <Record {...props} record={ended.record} kept={ended.kept} another={() => go({ at: 'begin' })} />
      )}
    </div>
  );
}
