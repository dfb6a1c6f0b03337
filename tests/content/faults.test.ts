import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { exactChecks, exactSuspects, planOrder } from '../../src/core/topics/fault-order/index.ts';
import { fault } from '../../src/schemas/fault.ts';

const content = new URL('../../content/knowledge/', import.meta.url);
const files = readdirSync(new URL('faults/', content)).filter((f) => f.endsWith('.yaml'));
const read = (file: string): unknown => parse(readFileSync(new URL(`faults/${file}`, content), 'utf8'));
const namesIn = (folder: string) => readdirSync(new URL(`${folder}/`, content)).map((f) => f.replace(/\.[a-z]+$/, ''));

const isPage = (path: string) => {
  const [folder = '', name = ''] = path.split('/');
  return name !== '' && existsSync(new URL(`${folder}/`, content)) && namesIn(folder).includes(name);
};

it('there are at least ten complaints', () => {
  expect(files.length).toBeGreaterThanOrEqual(10);
});

describe.each(files)('%s', (file) => {
  const complaint = fault.parse(read(file));

  it('names cautions and sources that exist', () => {
    expect(complaint.hazards.filter((h) => !namesIn('hazards').includes(h))).toEqual([]);
    expect([...complaint.sources, complaint.likelihoodsFrom].filter((s) => !namesIn('sources').includes(s))).toEqual(
      [],
    );
  });

  it('sends people to pages that exist', () => {
    expect(complaint.related.filter((path) => !isPage(path))).toEqual([]);
  });

  it('leads from every suspect to a page that exists', () => {
    expect(complaint.suspects.filter((s) => !isPage(s.fix ?? '')).map((s) => s.id)).toEqual([]);
  });

  it('is short enough to be solved exactly, and its order beats the list', () => {
    expect(complaint.suspects.length).toBeLessThanOrEqual(exactSuspects);
    expect(complaint.checks.length).toBeLessThanOrEqual(exactChecks);
    const plan = planOrder(complaint);
    expect(plan.method).toBe('exact');
    expect(plan.next).toBeDefined();
    expect(plan.expectedMinutes).toBeLessThanOrEqual(plan.listedMinutes);
  });

  it('finds every suspect when the checks show it and nothing else', () => {
    for (const suspect of complaint.suspects) {
      const seen = complaint.checks.map((c) => ({
        check: c.id,
        shows: c.tells.some((t) => t.suspect === suspect.id && t.ifFaulty > 0.5),
      }));
      const chances = [...planOrder(complaint, seen).belief.suspects].sort((a, b) => b.chance - a.chance);
      expect(chances[0]?.id, suspect.id).toBe(suspect.id);
    }
  });
});

describe('a saw that will not start', () => {
  it('that is heavy to pull is asked first whether the drive drags the engine', () => {
    expect(planOrder(fault.parse(read('heavy-to-pull.yaml'))).next?.id).toBe('pull-and-watch');
  });
  it('that pulls light has its cylinder looked at before fuel parts are opened', () => {
    const order = planOrder(fault.parse(read('hard-to-start.yaml'))).path.map((c) => c.id);
    const cylinder = Math.min(
      ...['compression', 'look-in-cylinder'].map((id) => order.indexOf(id)).filter((n) => n >= 0),
    );
    expect(cylinder).toBeLessThan(order.indexOf('fuel-flow'));
  });
});

describe('a complaint file with a slip in it', () => {
  const good = read('vibration.yaml') as {
    suspects: { id: string; likelihood: number }[];
    checks: { id: string; stripDown?: string; tells: { suspect: string; ifFaulty: number; ifSound: number }[] }[];
  };
  const broken = (change: (copy: typeof good) => void) => {
    const copy = structuredClone(good);
    change(copy);
    const result = fault.safeParse(copy);
    return result.success ? [] : result.error.issues.map((i) => i.message);
  };
  it.each([
    [
      'likelihoods above one in all',
      (c: typeof good) => {
        if (c.suspects[0]) c.suspects[0].likelihood = 0.9;
      },
      /add up to 1\.49/,
    ],
    [
      'the same id twice',
      (c: typeof good) => {
        if (c.suspects[1]) c.suspects[1].id = 'blade';
      },
      /"blade" is used twice/,
    ],
    [
      'a suspect that does not exist',
      (c: typeof good) => {
        if (c.checks[0]?.tells[0]) c.checks[0].tells[0].suspect = 'gearbox';
      },
      /no suspect "gearbox"/,
    ],
    [
      'a strip-down that does not exist',
      (c: typeof good) => {
        if (c.checks[0]) c.checks[0].stripDown = 'engine-out';
      },
      /no strip-down "engine-out"/,
    ],
    [
      'a check that tells nothing',
      (c: typeof good) => {
        if (c.checks[0]?.tells[0]) c.checks[0].tells[0].ifSound = 0.99;
      },
      /tells nothing/,
    ],
    [
      'a suspect nobody checks',
      (c: typeof good) => {
        c.checks = c.checks.filter((k) => k.tells.every((t) => t.suspect !== 'mounts'));
      },
      /no check tells about "mounts"/,
    ],
    [
      'a chance above one',
      (c: typeof good) => {
        if (c.checks[0]?.tells[0]) c.checks[0].tells[0].ifFaulty = 1.2;
      },
      /<=1/,
    ],
  ])('is told about %s', (_, change, words) => {
    expect(broken(change).join('; ')).toMatch(words);
  });
});
