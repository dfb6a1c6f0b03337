/** The figures of a machine: read like any box, and fit for the boxes they fill. */
import { describe, expect, it } from 'vitest';
import { facts, fillsOf, readFacts, type Facts } from '../../../src/core/machine/index.ts';
import { plateFigures } from '../../../src/core/contract/plate.ts';
import { topics } from '../../../src/core/registry.ts';
import type { SingleField } from '../../../src/core/contract/field.ts';

const problemsOf = (known: Facts) => {
  const read = readFacts(known);
  if (read.ok) return [];
  return 'problems' in read ? read.problems.map((p) => `${p.field} ${p.code}`) : ['a sum'];
};

describe('reading', () => {
  it('takes quantities with their unit, bare metric numbers, choices and yes or no', () => {
    const read = readFacts({
      bladeDiameter: { value: '14 in', from: 'plate' },
      displacement: { value: '71 cm³', from: 'plate' },
      engineSpeed: { value: 9500, from: 'plate' },
      beltSection: { value: 'PJ', from: 'parts-list' },
      clutch: { value: true, from: 'manual' },
      bearing: { value: '6205-2RS C3', from: 'parts-list' },
    });
    // 14 in are 355.6 mm and 9500 turns a minute 158.33 a second, by definition of inch and minute.
    expect(read.ok && read.inputs).toEqual({
      bladeDiameter: expect.closeTo(0.3556, 12) as number,
      displacement: expect.closeTo(71e-6, 15) as number,
      engineSpeed: expect.closeTo(9500 / 60, 9) as number,
      beltSection: 'PJ',
      clutch: true,
      bearing: '6205-2RS C3',
    });
  });

  it.each<[string, Facts, string]>([
    ['a mass for a length', { bladeDiameter: { value: '3 kg', from: 'plate' } }, 'bladeDiameter'],
    ['a figure beyond its limit', { idle: { value: '60000 rpm', from: 'plate' } }, 'idle'],
    ['a section that does not exist', { beltSection: { value: 'QX', from: 'plate' } }, 'beltSection'],
    ['a zone that is none', { housingZone: { value: 'seven', from: 'plate' } }, 'housingZone'],
    ['a fact nobody knows', { colour: { value: 'red', from: 'plate' } } as Facts, 'colour'],
  ])('refuses %s and names it', (_, known, key) => {
    const problems = problemsOf(known);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(new RegExp(`^${key} `));
  });

  it('asks for none of them', () => {
    expect(facts.filter((f) => !f.optional)).toEqual([]);
    expect(new Set(facts.map((f) => f.key)).size).toBe(facts.length);
  });
});

/** Why a fact does not fit a box, or nothing. */
function misfit(box: SingleField, fact: SingleField): string | undefined {
  if (box.kind !== fact.kind) return `a ${fact.kind} for a ${box.kind}`;
  if (box.kind === 'quantity' && fact.kind === 'quantity' && box.dimension !== fact.dimension)
    return `${fact.dimension} for ${box.dimension}`;
  if (box.kind === 'choice' && fact.kind === 'choice') {
    const extra = fact.options.filter((o) => !box.options.some((b) => b.value === o.value));
    if (extra.length > 0) return `no choice ${extra.map((o) => o.value).join(', ')}`;
  }
  return undefined;
}

/** True when a fact of this name can be so. */
function mayBe(key: string, is: string | boolean): boolean {
  const fact = facts.find((f) => f.key === key);
  if (typeof is === 'boolean') return fact?.kind === 'yes-no';
  return fact?.kind === 'choice' && fact.options.some((o) => o.value === is);
}

describe('what a topic takes from a machine', () => {
  const plates = Object.entries(topics).flatMap(([name, topic]) =>
    fillsOf(topic.plate ?? {}).map((fill) => ({ name, topic, ...fill })),
  );
  it('names boxes and facts that exist and fit each other', () => {
    const wrong = plates.flatMap(({ name, topic, box, fact, only }) => {
      const field = topic.fields.find((f) => f.key === box);
      const known = facts.find((f) => f.key === fact);
      if (!field || field.kind === 'rows') return [`${name}: no single box "${box}"`];
      if (!known) return [`${name}: no fact "${fact}"`];
      const unknown = Object.entries(only).filter(([key, is]) => !mayBe(key, is));
      if (unknown.length > 0) return [`${name}: no fact says ${JSON.stringify(Object.fromEntries(unknown))}`];
      const why = misfit(field, known);
      return why ? [`${name}: ${fact} in ${box}: ${why}`] : [];
    });
    expect(wrong).toEqual([]);
  });

  it('does so wherever a machine can know the figure', () => {
    expect([...new Set(plates.map((p) => p.name))].sort()).toEqual([
      'bearing-fit',
      'bearing-life',
      'bearing-size',
      'belt-tension',
      'blade-rundown',
      'blade-speed',
      'bolt-torque',
      'clutch-speed',
      'compression-check',
      'fuel-mix',
      'fume-room',
      'running-clearance',
      'split-pulley',
      'warming',
      'water-supply',
    ]);
  });

  const from = (name: string, known: Facts) => plateFigures(fillsOf(topics[name]?.plate ?? {}), known);
  const said = (value: string | number | boolean) => ({ value, from: 'typed' as const });

  it('gives a bare number the unit of the fact', () => {
    expect(from('blade-speed', { bladeDiameter: said(350), engineSpeed: said('9500') })).toEqual({
      diameter: '350 mm',
      engine: '9500 rpm',
    });
    expect(from('compression-check', { displacement: said('71'), stroke: said('two') })).toEqual({ swept: '71 cm3' });
    expect(from('blade-speed', { bladeDiameter: said('14 in') })).toEqual({ diameter: '14 in' });
  });

  it('takes pulleys measured over the rim for no pitch diameters', () => {
    const drive = { enginePulley: said('66 mm'), bladePulley: said('125 mm') };
    expect(from('blade-speed', { ...drive, pulleysAre: said('outside') })).toEqual({});
    expect(from('blade-speed', drive)).toEqual({});
    expect(Object.keys(from('blade-speed', { ...drive, pulleysAre: said('pitch') }))).toEqual([
      'enginePulley',
      'bladePulley',
    ]);
  });

  // 9500 rpm x 66 / 105 is 5971 rpm at the wheel; a 150 mm wheel on a 300 mm track turns the ring at half of that.
  it('never works the speed of a ring out from its pulleys', () => {
    const ring = { bladeTurnedBy: said('spindle'), spindleSpeed: said('2990 rpm') };
    expect(from('blade-speed', ring)).toEqual({ known: 'spindle', spindle: '2990 rpm', machineRotation: '2990 rpm' });
    expect(from('bearing-life', ring)).toEqual({});
  });

  it('would tell a fact that does not fit', () => {
    const by = (key: string) => facts.find((f) => f.key === key) as SingleField;
    expect(misfit(by('idle'), by('mass'))).toMatch(/mass for rotation/);
    expect(misfit(by('bladeBolt'), by('beltSection'))).toMatch(/no choice PH/);
    expect(misfit(by('plug'), by('mass'))).toMatch(/quantity for a text/);
  });
});
