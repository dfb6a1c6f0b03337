/** Under the list: a card for the wall, entries for a calendar, a table for a spreadsheet. */
import { textOf } from '../../core/contract/text-of.ts';
import { useEffect, useState } from 'preact/hooks';
import { calendarText, csvText } from '../../core/export/index.ts';
import { sortedList } from '../../core/topics/service-interval/index.ts';
import { calendarStamp, DeskBox, download, foreignIn, printAlone, useBegun, type TakeAwayProps } from '../kit/index.ts';
import { say } from '../../words/kit.ts';
import { calendarEntries, listRows, siteOf } from './files.ts';
import { WallCard } from './WallCard.tsx';

const empty = { heading: 'Due next' };

type Listed = Parameters<typeof sortedList>[0];

export function DueDesk({ page, worked, stale }: TakeAwayProps) {
  const [{ heading }, change] = useBegun('wall-card', empty);
  const [host, setHost] = useState('');
  useEffect(() => setHost(location.hostname), []);
  const id = `${page.id}-wall-card`;
  const start = textOf(worked.inputs['start']);
  const list = sortedList(worked.inputs as Listed);
  const foreign = foreignIn(worked);
  const band = foreign && (foreign.example ? say.exampleBand : say.pencilBand(foreign.count, foreign.of));
  const print = () => {
    const card = document.getElementById(id);
    if (card) printAlone(card);
  };
  const calendar = () => {
    const options = {
      stamp: calendarStamp(),
      product: `-//${page.shop.name}//Bench Almanac//EN`,
      name: `${page.shop.name}: ${heading}`,
    };
    download(
      `${heading} ${start}`,
      'ics',
      calendarText(calendarEntries(list, start, siteOf(page.address, host)), options),
    );
  };
  return (
    <section class="desk" aria-labelledby={`${id}-head`}>
      <h3 class="calc-head" id={`${id}-head`}>
        Wall card, calendar and table
      </h3>
      <p class="calc-help">
        Loading the calendar file again changes the entries of the same service and day instead of doubling them.
        Overdue work is entered on the first day of the list.
      </p>
      <DeskBox
        id={`${id}-heading`}
        label="Heading of the card"
        value={heading}
        onText={(text) => change({ heading: text })}
      />
      <div class="desk-acts">
        <button type="button" class="calc-button calc-button-first" disabled={stale} onClick={print}>
          Print the wall card
        </button>
        <button type="button" class="calc-button" disabled={stale || foreign?.example} onClick={calendar}>
          Save for a calendar (ICS)
        </button>
        <button
          type="button"
          class="calc-button"
          disabled={stale}
          onClick={() =>
            download(
              `${heading} ${start}`,
              'csv',
              csvText([...(band === undefined ? [] : [[band]]), ...listRows(list)]),
            )
          }
        >
          Save as a table (CSV)
        </button>
      </div>
      <p class={stale ? 'calc-help' : 'calc-help desk-at-hand'}>
        Put the boxes above right first: this card is for the earlier figures.
      </p>
      {foreign?.example && <p class="calc-help">{say.savedWhenYours}</p>}
      <WallCard id={id} band={band} heading={heading} start={start} list={list} shop={page.shop} />
    </section>
  );
}
