import { describe, expect, it } from 'vitest';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { changeFigures, startFigures, unitsRead } from '../../src/islands/kit/state/figures.ts';
import { linkQuery, readLink } from '../../src/islands/kit/state/link.ts';
import { examplesFor } from '../cases/examples.ts';
import { calculators } from './calculators.ts';

describe.each(calculators.map((c) => [c.name, c.topic] as const))('%s', (name, topic) => {
  it('a link to figures brings back the same figures, whatever units the other reader uses', () => {
    for (const raw of examplesFor(name, topic.example)) {
      const sent = startFigures(raw, true, 'inch');
      const linked = readLink(linkQuery(sent, topic.fields, name), topic.fields, name);
      const got = startFigures(linked?.base ?? {}, false, 'metric');
      const before = readInputs(topic.fields, raw, { units: unitsRead(sent, topic.fields) });
      const after = readInputs(topic.fields, got.base, { system: 'metric', units: unitsRead(got, topic.fields) });
      expect(linked?.system).toBe('inch');
      if (before.ok) expect(after.ok && after.inputs, JSON.stringify(raw)).toEqual(before.inputs);
    }
  });
});

const { topic } = calculators.find((c) => c.name === 'blade-speed') ?? calculators[0] ?? { topic: undefined };

describe('a link', () => {
  const fields = topic?.fields ?? [];

  it('carries the unit a bare number was typed in', () => {
    const inches = changeFigures(startFigures({}, false, 'inch'), { do: 'type', key: 'diameter', value: '14' });
    expect(readLink(linkQuery(inches, fields, 'blade-speed'), fields, 'blade-speed')?.base['diameter']).toBe('14 in');
  });

  it('carries what a sum of bare numbers came to', () => {
    const sum = changeFigures(startFigures({}, false, 'metric'), { do: 'type', key: 'diameter', value: '450 + 2*25' });
    expect(
      readLink(linkQuery(sum, fields, 'blade-speed', { diameter: '500 mm' }), fields, 'blade-speed')?.base['diameter'],
    ).toBe('500 mm');
  });

  it('of another calculator on the page is passed over', () => {
    expect(readLink('?calc=belt-tension&f.diameter=350', fields, 'blade-speed')).toBeUndefined();
  });

  it('may be written by hand', () => {
    expect(readLink('?f.diameter=350+mm', fields, 'blade-speed')?.base).toEqual({ diameter: '350 mm' });
  });

  it('without figures or with unknown ones changes nothing', () => {
    expect(readLink('?utm=1&f.nothing=2', fields, 'blade-speed')).toBeUndefined();
  });
});
