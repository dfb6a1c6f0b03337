/** A saw that is not on the site's list: its plate typed in, checked by the reader every form uses, kept on the device. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { ofDevice, save, takeOut, watch } from '../../browser/device/index.ts';
import { describeProblem } from '../../core/contract/messages.ts';
import { facts, readFacts, type FactKey, type Facts } from '../../core/machine/index.ts';
import { ownSawWords as say } from '../../words/own-saws.ts';
import { ownMachineKind, ownMachines, type OwnMachine } from '../BenchStrip/own-machines.ts';
import { useBegun } from '../kit/state/use-begun.ts';
import { download } from '../kit/take-away/download.ts';
import { FactBox } from './FactBox.tsx';
import { readSaws, sawsText } from './file.ts';

type Listed = ReturnType<typeof ownMachines>[number];
type Typed = Readonly<Partial<Record<FactKey, string>>>;

/** Boxes of the form that are no facts: which saw is being changed, and its name. */
const empty: Readonly<Record<string, string>> = { id: '', name: '' };
const blank = { ...empty, ...Object.fromEntries(facts.map((f) => [f.key, ''])) };

const groups = [...new Set(facts.map((f) => f.group))];

/** Texts of the boxes as facts; yes and no become what a machine file writes. */
function factsOf(typed: Typed): Facts {
  return Object.fromEntries(
    facts.flatMap(({ key, kind }) => {
      const text = typed[key]?.trim() ?? '';
      if (text === '') return [];
      return [[key, { value: kind === 'yes-no' ? text === 'yes' : text, from: 'typed' as const }]];
    }),
  );
}

function typedOf(known: Facts): Typed {
  return Object.fromEntries(
    Object.entries(known).map(([key, { value }]) => [
      key,
      typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value),
    ]),
  );
}

export default function OwnSaws() {
  const [live, setLive] = useState(false);
  const [saws, setSaws] = useState<readonly Listed[]>([]);
  const [{ id = '', name = '', ...typed }, type] = useBegun('own-saw', empty);
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const [said, setSaid] = useState('');
  const [undo, setUndo] = useState<() => void>();
  const chooser = useRef<HTMLInputElement>(null);

  useEffect(() => {
    const read = () => setSaws(ownMachines());
    read();
    setLive(true);
    return watch(ofDevice(ownMachineKind).key, read);
  }, []);

  function begin(saw?: Listed): void {
    const before = { ...blank, id, name, ...typed };
    type({ ...blank, ...(saw && { id: idOf(saw), name: saw.name, ...typedOf(saw.facts) }) });
    setProblems({});
    setSaid('');
    setUndo(undefined);
    if (!saw || !isNew(before)) return;
    setSaid(say.putAside(name));
    setUndo(() => () => type(before));
  }

  /** Whether the boxes hold what is not kept yet. */
  function isNew({ id: of = '', name: called = '', ...boxes }: Readonly<Record<string, string>>): boolean {
    const kept = saws.find((saw) => idOf(saw) === of);
    const was: Readonly<Record<string, string>> = kept ? { name: kept.name, ...typedOf(kept.facts) } : {};
    return Object.entries({ name: called, ...boxes }).some(([key, text]) => text.trim() !== (was[key] ?? ''));
  }

  function keep(event: Event): void {
    event.preventDefault();
    const known = factsOf(typed);
    const read = readFacts(known);
    const wrong = read.ok || !('problems' in read) ? [] : read.problems;
    const lines = Object.fromEntries(wrong.map((p) => [p.field, describeProblem(p, { fields: facts })]));
    if (name.trim() === '') lines['name'] = say.nameless;
    setProblems(lines);
    const first = Object.keys(lines)[0];
    if (first !== undefined) return document.getElementById(`saw-${first}`)?.focus();
    put({ name: name.trim(), facts: known }, id || newId());
    begin();
    setSaid(say.kept(name.trim()));
  }

  function put(saw: OwnMachine, as: string): void {
    save(ofDevice(ownMachineKind, as), saw);
  }

  function remove(saw: Listed): void {
    const back = takeOut([ofDevice(ownMachineKind, idOf(saw)).key]);
    setUndo(() => back);
    setSaid(say.removed(saw.name));
  }

  async function open(): Promise<void> {
    const file = chooser.current?.files?.[0];
    if (!file) return;
    const read = readSaws(await file.text());
    if (chooser.current) chooser.current.value = '';
    if (!read) return setSaid(say.broken);
    const doubles = read.filter((saw) => saws.some((s) => s.name === saw.name)).map((saw) => saw.name);
    read.forEach((saw, i) => put(saw, newId(i)));
    setSaid(doubles.length > 0 ? say.both(doubles.join(', ')) : say.read(read.length));
  }

  return (
    <div class="saws" data-live={live ? 'yes' : 'no'}>
      <ul class="plain saws-list">
        {saws.map((saw) => (
          <li key={saw.id}>
            <span>
              <b>{saw.name}</b> <span class="saws-quiet">{say.figures(Object.keys(saw.facts).length)}</span>
            </span>
            <button type="button" class="saws-button" onClick={() => begin(saw)}>
              {say.change}
              <span class="spoken"> {saw.name}</span>
            </button>
            <button type="button" class="saws-button" onClick={() => remove(saw)}>
              {say.remove}
              <span class="spoken"> {saw.name}</span>
            </button>
          </li>
        ))}
        {saws.length === 0 && <li>{say.none}</li>}
      </ul>
      <p class="saws-acts">
        <button
          type="button"
          class="saws-button"
          disabled={saws.length === 0}
          onClick={() => download('saws', 'json', sawsText(saws.map((s) => ({ name: s.name, facts: s.facts }))))}
        >
          {say.save}
        </button>
        <button type="button" class="saws-button" disabled={!live} onClick={() => chooser.current?.click()}>
          {say.open}
        </button>
        <input
          ref={chooser}
          type="file"
          accept=".json,application/json"
          hidden
          aria-label={say.open}
          onChange={() => void open()}
        />
      </p>
      <p class="saws-said" role="status">
        {said}{' '}
        {undo && (
          <button
            type="button"
            class="saws-button"
            onClick={() => {
              undo();
              setUndo(undefined);
              setSaid('');
            }}
          >
            {say.undo}
          </button>
        )}
      </p>
      <form noValidate onSubmit={keep} aria-label={say.fresh}>
        <h2>{id === '' ? say.fresh : `${say.change}: ${name}`}</h2>
        <p class="saws-quiet">{say.units}</p>
        <div class="saws-box">
          <label for="saw-name">{say.name}</label>
          <input
            id="saw-name"
            type="text"
            autocomplete="off"
            maxLength={60}
            disabled={!live}
            value={name}
            aria-invalid={problems['name'] ? true : undefined}
            aria-describedby="saw-name-more"
            onInput={(e) => type({ name: e.currentTarget.value })}
          />
          <p id="saw-name-more" class={problems['name'] ? 'saws-problem' : 'saws-quiet'}>
            {problems['name'] ?? say.nameHelp}
          </p>
        </div>
        {groups.map((group) => (
          <fieldset key={group} disabled={!live}>
            <legend>{group}</legend>
            <div class="saws-boxes">
              {facts
                .filter((f) => f.group === group)
                .map((field) => (
                  <FactBox
                    key={field.key}
                    field={field}
                    text={(typed as Typed)[field.key] ?? ''}
                    problem={problems[field.key]}
                    onText={(text) => type({ [field.key]: text })}
                  />
                ))}
            </div>
          </fieldset>
        ))}
        <p class="saws-acts">
          <button type="submit" class="saws-button saws-first" disabled={!live}>
            {say.add}
          </button>
        </p>
      </form>
    </div>
  );
}

const idOf = (saw: Listed): string => saw.id.replace(/^own\//, '');

/** Short and not used before on this device. */
function newId(more = 0): string {
  return `${Date.now().toString(36)}${more}${Math.random().toString(36).slice(2, 5)}`;
}
