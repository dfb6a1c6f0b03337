/**
 * A part of an answer given while needed boxes are empty must not hang on them. Each needed figure is left out in turn,
 * and several at once by chance with a fixed seed, from the worked example and from printed cases; what is still given is
 * held against the whole answer, with the figures as they were and with many others in their place. A caution that all
 * of them raise must not be lost, as long as the boxes are those of figures: a choice can ask for other boxes.
 */
import { describe, expect, it } from 'vitest';
import { isAsked } from '../../src/core/contract/check-inputs.ts';
import type { Field, Inputs, InputValue, SingleField } from '../../src/core/contract/field.ts';
import { onlyMissing, partAnswer } from '../../src/core/contract/part.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import type { Answer } from '../../src/core/contract/result.ts';
import type { Topic } from '../../src/core/contract/topic.ts';
import { fromUnit } from '../../src/core/quantity/index.ts';
import { topics } from '../../src/core/registry.ts';
import { examplesFor } from '../cases/examples.ts';

/** Starting points of a topic at most; the worked example is the first. */
const mostStarts = 6;
/** Times several boxes are left out at once from each starting point, and fillings tried for each. */
const severalTimes = 6;
const fillings = 12;

/** A small generator of even chances (Lehmer's, modulus 2^31 - 1, multiplier 48271: Park and Miller, 1993). */
function chances(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

/** Lawful figures spread over the whole range of a box, and every option of a choice. */
function others(field: SingleField, was: InputValue): readonly InputValue[] {
  switch (field.kind) {
    case 'choice':
      return field.options.map((o) => o.value);
    case 'yes-no':
      return [true, false];
    case 'text':
      return [];
    case 'quantity':
    case 'number':
    case 'count':
    case 'money': {
      const si = (n: number) => (field.kind === 'quantity' ? fromUnit(n, field.units[0]) : n);
      const old = typeof was === 'number' ? was : si(field.default ?? 1);
      const [low, high] = [si(field.min ?? 0), field.max === undefined ? 20 * Math.abs(old) : si(field.max)];
      const spread = [0.001, 0.03, 0.2, 0.5, 0.9].map((share) => low + share * (high - low));
      const near = [0.5, 0.8, 0.97, 1.03, 1.2, 2].map((times) => times * old);
      const inside = [...near, ...spread].filter((n) => n > low && n <= high);
      return field.kind === 'count' ? inside.map(Math.round) : inside;
    }
  }
}

function variants(field: Field, was: InputValue): readonly InputValue[] {
  if (field.kind !== 'rows') return others(field, was);
  const rows = Array.isArray(was) ? (was as readonly Inputs[]) : [];
  const [first, ...rest] = rows;
  if (!first) return [];
  const changed = field.columns.flatMap((c) => others(c, first[c.key]).map((v) => [{ ...first, [c.key]: v }, ...rest]));
  return rest.length >= field.minRows ? [...changed, rest] : changed;
}

const startsOf = (name: string, topic: Topic): readonly Inputs[] =>
  [topic.example, ...examplesFor(name, topic.example)].slice(0, mostStarts).flatMap((raw) => {
    const read = readInputs(topic.fields, raw);
    if (!read.ok) return [];
    // Sums by chance hang on the boxes with few draws as with many.
    const inputs = 'draws' in read.inputs ? { ...read.inputs, draws: 100 } : read.inputs;
    return topic.compute(inputs).ok ? [inputs] : [];
  });

const valuesOf = (answer: Answer) => Object.fromEntries(answer.values.map((v) => [v.key, JSON.stringify(v)]));

const hasCaution = (answer: Answer, hazard: string) => answer.cautions.some((c) => c.hazard === hazard);

const neededIn = (topic: Topic, inputs: Inputs) => topic.fields.filter((f) => !f.optional && isAsked(f, inputs));

/** One set of boxes left out, what may stand in them, and what was given without. */
interface Gap {
  readonly missing: readonly string[];
  readonly part: Answer;
  readonly filled: readonly Inputs[];
}

/** Each needed box left out alone, with all it may hold; then several together, filled by chance. */
function gapsOf(topic: Topic, inputs: Inputs): readonly Gap[] {
  const needed = neededIn(topic, inputs);
  const gaps: Gap[] = [];
  const add = (missing: readonly string[], filled: readonly Inputs[]) => {
    const left = Object.fromEntries(Object.entries(inputs).filter(([key]) => !missing.includes(key)));
    const part = partAnswer(topic, left, missing, topic.decides, topic.parts);
    if (part) gaps.push({ missing, part, filled: [inputs, ...filled] });
  };
  for (const field of needed)
    add(
      [field.key],
      variants(field, inputs[field.key]).map((v) => ({ ...inputs, [field.key]: v })),
    );
  const chance = chances(20250725);
  const choices = new Map(needed.map((f) => [f.key, [inputs[f.key], ...variants(f, inputs[f.key])]]));
  for (let n = 0; n < severalTimes; n += 1) {
    const missing = needed.filter(() => chance() < 0.5).map((f) => f.key);
    const filled = Array.from({ length: fillings }, () => {
      const other = missing.map((key) => {
        const from = choices.get(key) ?? [];
        return [key, from[Math.floor(chance() * from.length)]] as const;
      });
      return { ...inputs, ...Object.fromEntries(other) };
    });
    if (missing.length > 1) add(missing, filled);
  }
  return gaps;
}

/** "speed hangs on diameter" for every value given without a box that changes it; and how many values were given. */
function wronglyGiven(name: string, topic: Topic): { readonly wrong: readonly string[]; readonly given: number } {
  const wrong = new Set<string>();
  let given = 0;
  for (const inputs of startsOf(name, topic))
    for (const { missing, part, filled } of gapsOf(topic, inputs)) {
      given += part.values.length;
      const wholes = filled.map((other) => topic.compute(other)).filter((whole) => whole.ok);
      for (const whole of wholes) {
        const all = valuesOf(whole);
        for (const [key, said] of Object.entries(valuesOf(part)))
          if (all[key] !== said) wrong.add(`${key} hangs on ${missing.join(', ')}`);
      }
      const isChoice = missing.some((key) => topic.fields.find((f) => f.key === key)?.kind === 'choice');
      for (const { hazard } of isChoice ? [] : (wholes[0]?.cautions ?? []))
        if (wholes.every((w) => hasCaution(w, hazard)) && !hasCaution(part, hazard))
          wrong.add(`${hazard} is lost without ${missing.join(', ')}`);
    }
  return { wrong: [...wrong].sort(), given };
}

const hasFigure = (f: Field) => ['quantity', 'number', 'count', 'money'].includes(f.kind);

/** Values that stay as they are whatever one of the needed boxes holds: they could be given without it. */
function standing(name: string, topic: Topic): readonly string[] {
  const found = new Set<string>();
  for (const inputs of startsOf(name, topic)) {
    const was = topic.compute(inputs);
    if (!was.ok) continue;
    for (const field of neededIn(topic, inputs).filter((f) => hasFigure(f) && !f.usual)) {
      const others = variants(field, inputs[field.key]).flatMap((v) => {
        const whole = topic.compute({ ...inputs, [field.key]: v });
        return whole.ok ? [valuesOf(whole)] : [];
      });
      for (const [key, said] of Object.entries(valuesOf(was)))
        if (others.length > 0 && others.every((all) => all[key] === said))
          found.add(`${key} could be given without ${field.key}`);
    }
  }
  return [...found].sort();
}

describe.each(Object.entries(topics))('%s', (name, topic) => {
  it('names what it gives in part, or why it gives nothing before it has all', () => {
    expect(topic.parts === undefined).toBe(topic.wholeOnly !== undefined);
  });

  it('names only fields it has, and each value once', () => {
    const keys = topic.fields.map((f) => f.key);
    expect((topic.parts ?? []).flatMap((p) => p.from).filter((f) => !keys.includes(f))).toEqual([]);
    const gives = (topic.parts ?? []).flatMap((p) => p.gives);
    expect(new Set(gives).size).toBe(gives.length);
  });

  it('gives nothing that an empty box can change, and gives something', () => {
    if (!topic.parts) return expect(standing(name, topic)).toEqual([]);
    const { wrong, given } = wronglyGiven(name, topic);
    expect(wrong).toEqual([]);
    expect(given).toBeGreaterThan(0);
  }, 120_000);
});

describe('what is given', () => {
  const partOf = (name: string, raw: Record<string, string>) => {
    const topic = topics[name];
    if (!topic) throw new Error(`There is no ${name}.`);
    const blank = Object.fromEntries(topic.fields.map((f) => [f.key, f.optional ? undefined : (raw[f.key] ?? '')]));
    const read = readInputs(topic.fields, blank);
    if (read.ok || 'needsSum' in read) throw new Error('Nothing is missing.');
    const missing = onlyMissing(read.problems);
    return missing && partAnswer(topic, read.inputs, missing, topic.decides, topic.parts);
  };
  const drive = {
    diameter: '350 mm',
    known: 'pulleys',
    engine: '9500 rpm',
    enginePulley: '66 mm',
    bladePulley: '125 mm',
    slip: '0',
  };

  it('is the speed of a blade whose mark nobody has read yet: pi times 0.35 m times 9500 x 66/125 a minute', () => {
    const part = partOf('blade-speed', { ...drive, markedAs: 'rpm' });
    const speed = part?.values.find((v) => v.key === 'speed');
    expect(speed?.kind === 'quantity' && speed.value).toBeCloseTo((Math.PI * 0.35 * 9500 * 66) / 125 / 60, 9);
    expect(part?.values.map((v) => v.key)).not.toContain('verdict');
  });

  it('is nothing where a box holds what it cannot read', () => {
    expect(partOf('blade-speed', { ...drive, diameter: 'x', markedAs: 'rpm' })).toBeUndefined();
  });

  it('is nothing of a topic that names no parts and no verdicts that can stand', () => {
    const topic = topics['blade-speed'];
    if (!topic) throw new Error('There is no blade-speed.');
    const read = readInputs(topic.fields, topic.example);
    if (!read.ok) throw new Error('The example cannot be read.');
    const { diameter: _, ...inputs } = read.inputs;
    expect(partAnswer(topic, inputs, ['diameter'])).toBeUndefined();
  });
});
