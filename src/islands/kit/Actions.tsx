/** What can be done with the figures: work out, start again, share, print. */
import { useState } from 'preact/hooks';
import { printSheet } from './take-away/print-sheet.ts';
import { say } from '../../words/index.ts';

interface Props {
  readonly id: string;
  readonly compact: boolean;
  readonly untouched: boolean;
  /** "Back to the example", or to the article's own figures. */
  readonly toStart: string;
  readonly canUndo: boolean;
  readonly onEmpty: () => void;
  readonly onExample: () => void;
  readonly onUndo: () => void;
  readonly query: () => string;
}

export function Actions(props: Props) {
  const { id, compact, untouched, toStart, canUndo, onEmpty, onExample, onUndo, query } = props;
  const [copied, setCopied] = useState('');
  const share = async () => {
    const address = new URL(`?${query()}#${id}-calculator`, location.href).href;
    history.replaceState(history.state, '', address);
    setCopied((await copy(address)) ? say.linkCopied : say.linkInBar);
  };
  return (
    <div class="calc-actions">
      <button type="submit" class="calc-button calc-button-first">
        {say.work}
      </button>
      <button type="button" class="calc-button" onClick={onEmpty}>
        {untouched ? say.useOwn : say.clear}
      </button>
      <button type="button" class="calc-button" onClick={onExample} disabled={untouched && !canUndo}>
        {toStart}
      </button>
      <button type="button" class="calc-button" onClick={onUndo} disabled={!canUndo}>
        {say.undo}
      </button>
      {!compact && (
        <button type="button" class="calc-button" onClick={() => printSheet(id)}>
          {say.print}
        </button>
      )}
      {!compact && (
        <button type="button" class="calc-button" onClick={() => void share()}>
          {say.copyLink}
        </button>
      )}
      <output class="calc-copied" aria-live="polite">
        {copied}
      </output>
    </div>
  );
}

/** The clipboard is refused on some phones and on plain http; the address bar holds the link either way. */
async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
