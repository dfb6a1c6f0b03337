/** The job sheets begun on this device, one line on the start page. */
import { useEffect, useState } from 'preact/hooks';
import { openTickets, ticketKeys, watch } from '../../browser/device/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import { sheetWords as say } from '../../words/sheet.ts';

export default function OpenSheets() {
  const [tickets, setTickets] = useState<readonly string[]>([]);
  useEffect(() => {
    const read = () => setTickets(openTickets());
    read();
    return watch(ticketKeys(), read);
  }, []);
  return (
    <p class="open-sheets">
      <a href={siteLink('/job-sheet/')}>{say.others}</a>:{' '}
      {tickets.length === 0
        ? say.none
        : tickets.map((ticket, i) => (
            <>
              {i > 0 && ' · '}
              <a key={ticket} href={siteLink(`/job-sheet/?ticket=${encodeURIComponent(ticket)}`)}>
                {ticket || say.unnumbered}
              </a>
            </>
          ))}
    </p>
  );
}
