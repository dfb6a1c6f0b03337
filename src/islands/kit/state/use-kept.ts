/** Keeps one form's figures on the device and takes up what another window or ticket holds. */
import { useEffect, useRef } from 'preact/hooks';
import { watch, watchBench } from '../../../browser/device/index.ts';
import type { Entries } from '../../../core/contract/entry.ts';
import { keep, keptIn, placeOf, type Kept } from './kept.ts';
import type { IslandProps } from './props.ts';

/** Typing is kept once it has paused for so long [ms], and at once when the page is left. */
const pause = 250;
const nothing: Entries = {};

interface KeptOptions {
  readonly page: IslandProps;
  readonly live: boolean;
  readonly entries: Entries;
  /** Something was typed before the form came alive: it is not on the device yet. */
  readonly begun: boolean;
  /** True for boxes as the page starts with them: there is nothing to keep then. */
  readonly isStart: (entries: Entries) => boolean;
  /** Something else is to stand in the boxes. */
  readonly onTaken: (kept: Kept | undefined) => void;
}

export function useKept({ page, live, entries, begun, isStart, onTaken }: KeptOptions): void {
  const now = useRef({ entries, isStart, onTaken });
  now.current = { entries, isStart, onTaken };
  /** What lies on the device, or is what the form started with. */
  const settled = useRef<Entries>();
  const write = useRef<() => void>(() => undefined);

  useEffect(() => {
    if (!live) return;
    let place = placeOf(page);
    settled.current = begun ? nothing : now.current.entries;
    write.current = () => {
      const { entries: newest, isStart: starts } = now.current;
      // Taken up and not drawn yet: the boxes still hold what was there before, of another ticket perhaps.
      if (settled.current === undefined || settled.current === newest) return;
      settled.current = newest;
      keep(place, newest, starts(newest));
      forgetLink(page.id);
    };
    const takeUp = () => {
      settled.current = undefined;
      now.current.onTaken(keptIn(place));
    };
    const leave = () => write.current();
    const stops = [
      watch(place.key, (key, elsewhere) => {
        if (!elsewhere || key === '') return;
        // What is being typed here goes to the other's first; what then lies there holds both.
        write.current();
        takeUp();
      }),
      watchBench(() => {
        const next = placeOf(page);
        if (next.key === place.key) return;
        write.current();
        place = next;
        takeUp();
      }),
    ];
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', leave);
    return () => {
      leave();
      for (const stop of stops) stop();
      removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', leave);
    };
    // The page does not change under a form; what does is read from `now`.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [live]);

  useEffect(() => {
    if (!live) return;
    // The first boxes after something was taken up are what lies there.
    settled.current ??= entries;
    const timer = setTimeout(() => write.current(), pause);
    return () => clearTimeout(timer);
  }, [live, entries]);
}

/** A link has done its work once the reader writes: a reload must bring back what was written, not the link. */
function forgetLink(id: string): void {
  if (new URLSearchParams(location.search).get('calc') === id)
    history.replaceState(history.state, '', location.pathname + location.hash);
}
