/**
 * Figures of the worked example never judge a reader's saw. Each case is one a mechanic met at the bench: the own figures
 * typed, and what the page said though nobody had measured it.
 */
import { describe, expect, it } from 'vitest';
import { filledIn } from '../../src/core/contract/entry.ts';
import { judged } from '../../src/core/contract/judged.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../src/core/contract/field.ts';
import type { Topic } from '../../src/core/contract/topic.ts';
import {
  askedOf,
  changesOf,
  rawOf,
  startFigures,
  unitsRead,
  type Change,
  type Figures,
} from '../../src/islands/kit/state/figures.ts';
import { exampleEntries, pageEntries } from '../../src/islands/kit/state/starts.ts';
import { calculators } from './calculators.ts';

function topicOf(name: string): Topic {
  const found = calculators.find((c) => c.name === name);
  if (!found) throw new Error(`There is no calculator ${name}.`);
  return found.topic;
}

function typedOver(topic: Topic, own: Readonly<Record<string, string>>): Figures {
  const start = startFigures(exampleEntries(topic.fields, topic.example), 'metric');
  const acts = Object.entries(own).map(([path, text]): Change => ({ do: 'type', path, text }));
  return acts.reduce(changesOf(topic.fields), start);
}

interface Said {
  /** Codes of the verdicts that are said. */
  readonly said: readonly string[];
  readonly stillToEnter: readonly string[];
  readonly cautions: readonly string[];
}

function saidOf(topic: Topic, now: Figures): Said | undefined {
  const read = readInputs(topic.fields, rawOf(now, topic.fields), {
    system: now.system,
    units: unitsRead(now, topic.fields),
  });
  const answer = read.ok ? topic.compute(read.inputs) : undefined;
  if (!answer?.ok) return undefined;
  const verdict = judged(answer, askedOf(now, topic.fields), now.entries, topic.decides);
  return {
    // A verdict that hangs on no figure at all is a standing order, such as "the manual goes first".
    said: answer.values.flatMap((v) =>
      v.kind === 'verdict' && !verdict.heldBack[v.key] && topic.decides?.[v.key]?.length !== 0 ? [v.code] : [],
    ),
    stillToEnter: verdict.stillToEnter,
    cautions: answer.cautions.map((c) => c.hazard),
  };
}

const after = (name: string, own: Readonly<Record<string, string>>) =>
  saidOf(topicOf(name), typedOver(topicOf(name), own));

describe('a verdict the example’s figures would have made is not said', () => {
  it('blade speed: 16 in alone is not within a mark nobody read', () => {
    const got = after('blade-speed', { diameter: '16 in' });
    expect(got?.said).toEqual([]);
    expect(got?.stillToEnter).toContain('markedRotation');
  });

  it('bolt torque: the example’s left-hand thread is gone at the first own choice', () => {
    const topic = topicOf('bolt-torque');
    const now = typedOver(topic, { size: 'M8' });
    expect(rawOf(now, topic.fields)['leftHand']).toBe('no');
  });

  it('compression: a pull never made and oil never poured say nothing', () => {
    const topic = topicOf('compression-check');
    const now = typedOver(topic, { reading: '8.9 bar', height: '1600 m' });
    expect(filledIn(now.entries['first'])).toEqual([]);
    expect(filledIn(now.entries['oiled'])).toEqual([]);
    expect(saidOf(topic, now)?.stillToEnter).toEqual(expect.arrayContaining(['healthy']));
  });

  it('blade run-down: nobody put a dial gauge on it', () => {
    const now = typedOver(topicOf('blade-rundown'), { diameter: '400 mm', rotation: '3200 rpm', time: '11 s' });
    expect(filledIn(now.entries['runOut'])).toEqual([]);
  });

  it('belt tension: nothing was plucked', () => {
    const topic = topicOf('belt-tension');
    const now = typedOver(topic, { belts: '4', enginePulley: '60 mm', bladePulley: '132 mm', centre: '410 mm' });
    expect(rawOf(now, topic.fields)['reading']).toBe('none');
    expect(filledIn(now.entries['frequency'])).toEqual([]);
    expect(saidOf(topic, now)?.said).toEqual([]);
  });

  it('split pulley: the example’s belt is not this belt', () => {
    const topic = topicOf('split-pulley');
    const now = typedOver(topic, {
      closedDiameter: '110 mm',
      drivePulley: '66 mm',
      centre: '255 mm',
      beltWidth: '10 mm',
    });
    expect(filledIn(now.entries['beltLength'])).toEqual([]);
    expect(filledIn(now.entries['beltWidthNow'])).toEqual([]);
  });

  it('bearing fit: the example’s zone does not condemn the reader’s seat', () => {
    const rows = { 'readings.1.across': '47.004', 'readings.1.quarter': '47.008' };
    const got = after('bearing-fit', { size: '47', basis: 'readings', ...rows });
    expect(got?.said ?? []).toEqual([]);
  });

  it('service interval: no part is named, so none is judged', () => {
    const topic = topicOf('service-interval');
    const now = typedOver(topic, { 'tasks.1.machine': 'Floor saw 7' });
    expect(['no', '']).toContain(rawOf(now, topic.fields)['replace']);
  });
});

describe('an article’s own figures borrow nothing from the example', () => {
  const opened = (name: string, preset: RawInputs) => startFigures(pageEntries(topicOf(name).fields, preset), 'metric');

  it('blade speed without a mark asks for the mark', () => {
    const preset = { diameter: '400 mm', engine: '9100 rpm', enginePulley: '60 mm', bladePulley: '132 mm' };
    const now = opened('blade-speed', preset);
    expect(filledIn(now.entries['markedRotation'])).toEqual([]);
    expect(saidOf(topicOf('blade-speed'), now)).toBeUndefined();
  });

  it('belt tension without a reading judges no tension', () => {
    const topic = topicOf('belt-tension');
    const now = opened('belt-tension', {
      section: 'A',
      belts: 4,
      enginePulley: '100 mm',
      bladePulley: '160 mm',
      centre: '420 mm',
      power: '15 kW',
      rotation: '3000 rpm',
    });
    expect(filledIn(now.entries['frequency'])).toEqual([]);
    expect(saidOf(topic, now)?.said ?? []).toEqual([]);
  });

  it('clutch speed without shoes and springs works out none', () => {
    expect(
      saidOf(topicOf('clutch-speed'), opened('clutch-speed', { idle: '2700 rpm', power: '4 kW' })),
    ).toBeUndefined();
  });
});

describe.each(calculators.map((c) => [c.name, c.topic] as const))('%s', (_, topic) => {
  it('says no verdict while it shows its worked example', () => {
    const now = startFigures(exampleEntries(topic.fields, topic.example), 'metric');
    expect(saidOf(topic, now)?.said).toEqual([]);
  });

  it('keeps no optional figure of the example after the first own one', () => {
    const first = topic.fields.find((f) => f.kind !== 'rows' && !f.optional && !f.more && !f.when);
    if (!first) return;
    const now = typedOver(topic, { [first.key]: filledIn(typedOver(topic, {}).entries[first.key])[0]?.text ?? '1' });
    const left = topic.fields.filter(
      (f) => f.optional && filledIn(now.entries[f.key]).some((e) => e.from === 'example'),
    );
    expect(left.map((f) => f.key)).toEqual([]);
  });

  it('raises the same cautions whosever the figures are', () => {
    const example = startFigures(exampleEntries(topic.fields, topic.example), 'metric');
    const own = Object.fromEntries(
      Object.entries(example.entries).map(([key, held]) => [
        key,
        Array.isArray(held) ? held : { ...held, from: 'own' as const },
      ]),
    );
    expect(saidOf(topic, { ...example, entries: own })?.cautions).toEqual(saidOf(topic, example)?.cautions);
  });
});

describe('once everything that decides is the reader’s, the verdict is said', () => {
  it('blade speed with every box typed or confirmed', () => {
    const topic = topicOf('blade-speed');
    const own = {
      diameter: '400 mm',
      engine: '9000 rpm',
      enginePulley: '66 mm',
      bladePulley: '125 mm',
      markedRotation: '4700 rpm',
      flange: '102 mm',
    };
    const typed = typedOver(topic, own);
    const rest = saidOf(topic, typed)?.stillToEnter ?? [];
    const now = changesOf(topic.fields)(typed, { do: 'confirm', keys: rest });
    // 9000 x 66/125 = 4752 rpm is over the 4700 marked.
    expect(saidOf(topic, now)?.said.length).toBeGreaterThan(0);
    expect(saidOf(topic, now)?.stillToEnter).toEqual([]);
  });
});
