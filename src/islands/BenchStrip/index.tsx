/** Which saw and which ticket the bench pages are about; kept on the device, the same on all of them. */
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  bench,
  chooseMachine,
  chooseTicket,
  countOnSheet,
  openTickets,
  ticketKeys,
  watch,
  watchBench,
  type Bench,
} from '../../browser/device/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import { stripWords as say } from '../../words/strip.ts';
import { DeviceNotes } from './DeviceNotes.tsx';
import { ownMachines } from './own-machines.ts';

export interface ListedMachine {
  readonly id: string;
  readonly name: string;
}

interface Props {
  readonly machines: readonly ListedMachine[];
}

interface Undoable {
  readonly text: string;
  readonly undo: () => void;
}

/** Stands in the list of saws for the way to add one. */
const addOwn = '+';

/** The strip as the server draws it: nothing on the bench. */
const empty: Bench = { ticket: '', machine: '' };

export default function BenchStrip({ machines }: Props) {
  const [live, setLive] = useState(false);
  const [now, setNow] = useState(empty);
  /** A number begun and not yet taken: what comes from elsewhere meanwhile must not wipe it. */
  const [typed, setTyped] = useState<string>();
  const box = useRef<HTMLInputElement>(null);
  const [count, setCount] = useState(0);
  const [own, setOwn] = useState<readonly ListedMachine[]>([]);
  const [tickets, setTickets] = useState<readonly string[]>([]);
  const [changed, setChanged] = useState<Undoable>();

  useEffect(() => {
    const all = ownMachines();
    setOwn(all);
    setChanged(fromAddress([...machines, ...all]));
    setNow(bench());
    setTickets(openTickets());
    setLive(true);
    return watchBench(setNow);
  }, [machines]);
  useEffect(() => {
    if (!live) return;
    const look = () => setCount(countOnSheet(now.ticket));
    look();
    return watch(ticketKeys(now.ticket), look);
  }, [live, now.ticket]);

  useEffect(() => {
    if (typed === undefined) return;
    // Where a pressed button does not take the focus, the number is taken before the press does its work.
    const press = ({ target }: Event) => {
      const at = box.current;
      if (at && !at.closest('label')?.contains(target as Node)) takeTicket(at.value);
    };
    document.addEventListener('click', press, true);
    return () => document.removeEventListener('click', press, true);
  });

  const nameOf = (id: string) => [...machines, ...own].find((m) => m.id === id)?.name ?? '';

  function take(machine: string): void {
    if (machine === addOwn) {
      location.href = siteLink('/own-saws/');
      return;
    }
    const undo = chooseMachine(machine);
    setChanged({ text: machine ? say.changedTo(nameOf(machine)) : say.noSaw, undo });
  }

  function takeTicket(whole: string): void {
    setTyped(undefined);
    const ticket = whole.trim();
    if (ticket === now.ticket) return;
    setChanged({ text: say.ticketNow(ticket), undo: chooseTicket(ticket) });
    setTickets(openTickets());
  }

  return (
    <div class="strip no-print" role="group" aria-label={say.name} data-live={live ? 'yes' : 'no'}>
      {changed && (
        <div class="strip-undo" role="status">
          <span>{changed.text}</span>
          <button
            type="button"
            onClick={() => {
              changed.undo();
              setChanged(undefined);
            }}
          >
            {say.undo}
          </button>
        </div>
      )}
      <span class="strip-label" aria-hidden="true">
        {say.name}
      </span>
      <select
        aria-label={say.machine}
        disabled={!live}
        value={now.machine}
        onChange={(e) => take(e.currentTarget.value)}
      >
        <option value="">{say.none}</option>
        {machines.map((m) => (
          <option key={m.id} value={m.id}>
            {m.name}
          </option>
        ))}
        {own.length > 0 && (
          <optgroup label={say.own}>
            {own.map((m) => (
              <option key={m.id} value={m.id}>
                {m.name}
              </option>
            ))}
          </optgroup>
        )}
        <option value={addOwn}>{say.addOwn}</option>
      </select>
      <label>
        <span class="strip-label">{say.ticket}</span>
        <input
          ref={box}
          type="text"
          aria-label={say.ticket}
          placeholder={say.ticket}
          autocomplete="off"
          maxLength={40}
          disabled={!live}
          list="strip-tickets"
          value={typed ?? now.ticket}
          onInput={(e) => setTyped(e.currentTarget.value)}
          onChange={(e) => takeTicket(e.currentTarget.value)}
          onBlur={() => setTyped(undefined)}
        />
        <datalist id="strip-tickets">
          {tickets.map((t) => (
            <option key={t} value={t} />
          ))}
        </datalist>
      </label>
      <a href={siteLink('/job-sheet/')}>{say.sheet(count)}</a>
      {live && <DeviceNotes />}
    </div>
  );
}

/** A link may bring a saw or a ticket: from the page of a machine, from the list of open sheets. */
function fromAddress(known: readonly ListedMachine[]): Undoable | undefined {
  const asked = new URLSearchParams(location.search);
  const ticket = asked.get('ticket')?.slice(0, 40);
  const machine = known.find((m) => m.id === asked.get('machine'));
  let changed: Undoable | undefined;
  if (ticket !== undefined && ticket !== bench().ticket)
    changed = { text: say.ticketNow(ticket), undo: chooseTicket(ticket) };
  if (machine && machine.id !== bench().machine)
    changed = { text: say.changedTo(machine.name), undo: chooseMachine(machine.id) };
  // The wish has been granted; a reload must not take up a ticket that was left since.
  asked.delete('ticket');
  asked.delete('machine');
  const query = asked.toString();
  const { pathname, hash } = location;
  if (`?${query}` !== location.search && location.search !== '')
    history.replaceState(history.state, '', `${pathname}${query && `?${query}`}${hash}`);
  return changed;
}
