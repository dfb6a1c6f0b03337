import { describe, expect, it } from 'vitest';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { changesOf, entryAt, rawOf, startFigures, unitsRead } from '../../src/islands/kit/state/figures.ts';
import { blankEntries, exampleEntries, laidOver } from '../../src/islands/kit/state/starts.ts';
import { linkQuery, readLink } from '../../src/islands/kit/state/link.ts';
import { examplesFor } from '../cases/examples.ts';
import { calculators } from './calculators.ts';

describe.each(calculators.map((c) => [c.name, c.topic] as const))('%s', (name, topic) => {
  it('a link to figures brings back the same figures, whatever units the other reader uses', () => {
    for (const raw of examplesFor(name, topic.example)) {
      const sent = startFigures(exampleEntries(topic.fields, raw), 'inch');
      const linked = readLink(linkQuery(sent, topic.fields, name), topic.fields, name);
      const got = startFigures(linked?.entries ?? {}, 'metric');
      const read = (now: typeof sent) =>
        readInputs(topic.fields, rawOf(now, topic.fields), {
          system: now.system,
          units: unitsRead(now, topic.fields),
        });
      const [before, after] = [read(sent), read(got)];
      expect(linked?.system).toBe('inch');
      // Figures whose condition does not hold are not sent.
      if (before.ok) expect(after.ok && after.inputs, JSON.stringify(raw)).toEqual(before.inputs);
    }
  });
});

const { topic } = calculators.find((c) => c.name === 'blade-speed') ?? calculators[0] ?? { topic: undefined };

describe('a link', () => {
  const fields = topic?.fields ?? [];

  const type = (text: string, system: 'metric' | 'inch') =>
    changesOf(fields)(startFigures(blankEntries(fields), system), { do: 'type', path: 'diameter', text });
  const back = (query: string) => readLink(query, fields, 'blade-speed')?.entries ?? {};

  it('carries the unit a bare number was typed in', () => {
    expect(entryAt(back(linkQuery(type('14', 'inch'), fields, 'blade-speed')), 'diameter')?.text).toBe('14 in');
  });

  it.each(['450 + 2*25', '450 + 50'])('carries what a sum of bare numbers came to: %s', (text) => {
    const query = linkQuery(type(text, 'metric'), fields, 'blade-speed', { diameter: '500 mm' });
    expect(entryAt(back(query), 'diameter')?.text).toBe('500 mm');
  });

  it('says whose each figure is', () => {
    const now = type('14', 'inch');
    const plate = laidOver(fields, now.entries, { engine: '9500 rpm' }, 'plate', { machine: 'mp-350' });
    const got = back(linkQuery({ ...now, entries: plate }, fields, 'blade-speed'));
    expect(entryAt(got, 'diameter')?.from).toBe('own');
    expect(entryAt(got, 'engine')).toMatchObject({ from: 'plate', of: { machine: 'mp-350' } });
  });

  it('vouches for nothing it does not name: an example’s figures arrive as nobody’s', () => {
    const sent = startFigures(exampleEntries(fields, topic?.example ?? {}), 'metric');
    const got = back(linkQuery(sent, fields, 'blade-speed'));
    expect(entryAt(got, 'markedRotation')?.from).toBe('page');
    expect(entryAt(back('?f.diameter=350+mm'), 'diameter')).toMatchObject({ text: '350 mm', from: 'page' });
  });

  it('of another calculator on the page is passed over', () => {
    expect(readLink('?calc=belt-tension&f.diameter=350', fields, 'blade-speed')).toBeUndefined();
  });

  it('without figures or with unknown ones changes nothing', () => {
    expect(readLink('?utm=1&f.nothing=2', fields, 'blade-speed')).toBeUndefined();
  });
});
