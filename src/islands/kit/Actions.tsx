/** What can be done with the figures, under the boxes; and with the answer, under it. Every button keeps its place. */
import { useState } from 'preact/hooks';
import { say } from '../../words/kit.ts';
import type { IslandProps } from './state/props.ts';
import { printSheet } from './take-away/print-sheet.ts';

interface FormProps {
  readonly untouched: boolean;
  /** "Back to the example", to the plate, or to the article's own figures. */
  readonly toStart: string;
  readonly canUndo: boolean;
  readonly onEmpty: () => void;
  readonly onStart: () => void;
  readonly onUndo: () => void;
}

export function FormActions({ untouched, toStart, canUndo, onEmpty, onStart, onUndo }: FormProps) {
  return (
    <div class="calc-actions">
      <button type="button" class={untouched ? 'calc-button calc-button-first' : 'calc-button'} onClick={onEmpty}>
        {untouched ? say.useOwn : say.clear}
      </button>
      <button type="button" class="calc-button" onClick={onStart} disabled={untouched && !canUndo}>
        {toStart}
      </button>
      <button type="button" class="calc-button" onClick={onUndo} disabled={!canUndo}>
        {say.undo}
      </button>
      <button type="submit" class="calc-button">
        {say.work}
      </button>
    </div>
  );
}

interface AnswerProps {
  readonly page: IslandProps;
  readonly query: () => string;
  /** Brings on the page what was to come a moment later. */
  readonly beforePrint: () => void;
  /** Missing while a figure is not the reader's: such an answer does not go on a job sheet. */
  readonly onSheet: (() => void) | undefined;
}

export function AnswerActions({ page, query, beforePrint, onSheet }: AnswerProps) {
  const [copied, setCopied] = useState('');
  const share = async () => {
    const address = new URL(`?${query()}#${page.id}-calculator`, location.href).href;
    history.replaceState(history.state, '', address);
    setCopied((await copy(address)) ? say.linkCopied : say.linkInBar);
  };
  const print = () => {
    beforePrint();
    // One turn later what was brought on stands on the page.
    setTimeout(() => void printSheet(page, query()));
  };
  return (
    <div class="calc-actions">
      <button
        type="button"
        class="calc-button calc-button-first"
        disabled={!onSheet}
        onClick={() => {
          onSheet?.();
          setCopied(say.onSheet);
        }}
      >
        {say.putOnSheet}
      </button>
      <button type="button" class="calc-button" onClick={print}>
        {say.print}
      </button>
      <button type="button" class="calc-button" onClick={() => void share()}>
        {say.copyLink}
      </button>
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
