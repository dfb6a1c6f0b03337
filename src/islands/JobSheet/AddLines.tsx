/** Notes and parts, typed at the bench. */
import { putOnSheet } from '../../browser/device/index.ts';
import { sheetWords as say } from '../../words/sheet.ts';
import { useBegun } from '../kit/state/use-begun.ts';

const empty = { note: '', part: '', quantity: '1' };

export function AddLines({ live }: { readonly live: boolean }) {
  const [{ note, part, quantity }, change] = useBegun('sheet', empty);

  const addNote = (event: Event) => {
    event.preventDefault();
    if (note.trim() === '') return;
    putOnSheet({ kind: 'note', title: say.note, sentence: note.trim() });
    change({ note: '' });
  };
  const addPart = (event: Event) => {
    event.preventDefault();
    if (part.trim() === '') return;
    putOnSheet({ kind: 'part', title: say.part, sentence: `${quantity.trim() || '1'} × ${part.trim()}` });
    change({ part: '', quantity: '1' });
  };

  return (
    <div class="job-add no-print">
      <form onSubmit={addNote}>
        <label for="job-note">{say.note}</label>
        <input
          id="job-note"
          type="text"
          autocomplete="off"
          maxLength={1000}
          disabled={!live}
          value={note}
          onInput={(e) => change({ note: e.currentTarget.value })}
        />
        <button type="submit" class="job-plain" disabled={!live}>
          {say.addNote}
        </button>
      </form>
      <form onSubmit={addPart}>
        <label for="job-quantity">{say.quantity}</label>
        <input
          id="job-quantity"
          class="job-short"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          maxLength={10}
          disabled={!live}
          value={quantity}
          onInput={(e) => change({ quantity: e.currentTarget.value })}
        />
        <span class="job-named">
          <label for="job-part">{say.part}</label>
          <input
            id="job-part"
            type="text"
            autocomplete="off"
            maxLength={200}
            disabled={!live}
            value={part}
            onInput={(e) => change({ part: e.currentTarget.value })}
          />
        </span>
        <button type="submit" class="job-plain" disabled={!live}>
          {say.addPart}
        </button>
      </form>
    </div>
  );
}
