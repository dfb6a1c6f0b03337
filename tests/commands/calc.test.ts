/** The terminal command as a shop would script it. Real starts are few; what one line gives is tried in process. */
import { spawn, spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { answerLine } from '../../src/commands/calc/answer-line.ts';
import { find } from '../../src/commands/calc/find.ts';
import { listFields, listTopics } from '../../src/commands/calc/listings.ts';
import { readArguments } from '../../src/commands/calc/options.ts';
import { topics } from '../../src/core/registry.ts';
import { examplesFor } from '../cases/examples.ts';

interface Figure {
  readonly value: number;
  readonly unit?: string;
  readonly currency?: string;
}
interface Out {
  readonly ok: boolean;
  readonly problems?: readonly { readonly field: string; readonly code: string; readonly message: string }[];
  readonly taken?: Readonly<Record<string, Partial<Figure>>>;
  readonly values?: Readonly<
    Record<
      string,
      Figure & {
        readonly kind: string;
        readonly code?: string;
        readonly says?: string;
        readonly data?: Readonly<Record<string, Figure | string>>;
        readonly columns?: readonly { readonly key: string; readonly unit?: string; readonly currency?: string }[];
        readonly rows?: readonly (readonly (number | string | null)[])[];
      }
    >
  >;
}

const project = new URL('../..', import.meta.url);

function start(args: readonly string[], input = '') {
  const run = spawnSync(process.execPath, ['src/commands/calc.ts', ...args], { cwd: project, input, encoding: 'utf8' });
  return { code: run.status, out: run.stdout, err: run.stderr, lines: run.stdout.trim().split('\n').filter(Boolean) };
}

function line(name: string, input: unknown, currency = 'USD'): Out {
  const callable = find(name);
  if (!callable) throw new Error(`nothing is called ${name}`);
  const answer = answerLine(typeof input === 'string' ? input : JSON.stringify(input), callable, { currency });
  // As it leaves the terminal.
  return JSON.parse(JSON.stringify(answer.out ?? { ok: false, broken: answer.broken })) as Out;
}

const blade = {
  diameter: '14 in',
  known: 'spindle',
  spindle: 5000,
  markedAs: 'rpm',
  markedRotation: 5500,
  flange: '4 in',
};

describe('real starts', () => {
  it('answer each line in its order, leave blank lines out, and exit 1 when one had problems', () => {
    const { code, lines } = start(
      ['blade-speed/surface-speed'],
      '\uFEFF{"diameter": 350, "rotation": 5000}\n\n{"diameter": "12 kg"}\n{"diameter": "14 in", "rotation": "5000 rpm"}\n',
    );
    const [first, bad, last] = lines.map((l) => JSON.parse(l) as Out);
    // pi D n by hand: 3.14159 x 0.35 m x 83.3333/s and 3.14159 x 0.3556 m x 83.3333/s.
    expect(first?.values?.['speed']?.value).toBeCloseTo(91.63, 2);
    expect(last?.values?.['speed']).toMatchObject({ unit: 'm/s' });
    expect(last?.values?.['speed']?.value).toBeCloseTo(93.1, 1);
    expect(bad?.problems?.[0]?.message).toMatch(/^Blade diameter must be a length; "12 kg" is a mass/);
    expect([lines.length, code]).toEqual([3, 1]);
  });

  it('end without a word of complaint when the reader has seen enough', async () => {
    const run = spawn(process.execPath, ['src/commands/calc.ts', 'belt-tension'], { cwd: project });
    run.stdin.on('error', () => undefined);
    // Far more than a pipe holds.
    run.stdin.end('{}\n'.repeat(300));
    let complaint = '';
    run.stderr.setEncoding('utf8').on('data', (text: string) => (complaint += text));
    const ended = new Promise<number | null>((done) => run.on('close', done));
    await new Promise((seen) => run.stdout.once('data', seen));
    run.stdout.destroy();
    expect([await ended, complaint]).toEqual([0, '']);
  });

  it('stop at a line that is no object, and name it', () => {
    const { code, err, lines } = start(
      ['blade-speed'],
      `${JSON.stringify(blade)}\nnot json\n${JSON.stringify(blade)}\n`,
    );
    expect([code, lines.length]).toEqual([2, 1]);
    expect(err).toMatch(/^Line 2 is not a JSON object/);
  });
});

describe('the command line', () => {
  it.each([
    [['--list'], { what: 'list' }],
    [['--help'], { what: 'help' }],
    [['-h', 'limits-fits'], { what: 'help' }],
    [['limits-fits', '--fields'], { what: 'fields', name: 'limits-fits' }],
    [['limits-fits/limits'], { what: 'answers', name: 'limits-fits/limits', currency: 'USD' }],
    [['repair-worth', '--currency', 'eur'], { what: 'answers', name: 'repair-worth', currency: 'EUR' }],
  ])('%j is understood', (args, asked) => expect(readArguments(args)).toMatchObject(asked));

  it.each([
    [[], 'Name a topic.'],
    [['limits-fits', '--feilds'], 'There is no option "--feilds"'],
    [['-x'], 'There is no option "-x"'],
    [['limits-fits', 'warming'], 'One topic at a time; here are 2: limits-fits, warming.'],
    [['--list', 'warming'], '--list takes no topic'],
    [['warming', '--currency', 'QQQ'], '--currency wants a currency code of three letters, like USD; "QQQ" is none.'],
    [['warming', '--currency'], '--currency wants a currency code'],
    [[`--${'x'.repeat(1e6)}`], 'There is no option "--xxx'],
  ])('%j is refused with a reason', (args, says) => {
    const asked = readArguments(args);
    expect(asked.what === 'mistake' && asked.says.slice(0, says.length)).toBe(says);
  });

  it('finds topics and blocks by their full name only', () => {
    expect(find('limits-fits/limits')).toBeDefined();
    for (const name of [
      'no-such',
      'limits-fits/no-such',
      'limits-fits/limits/zz',
      'constructor',
      'limits-fits/toString',
    ])
      expect(find(name), name).toBeUndefined();
  });

  it('lists every topic and every block', () => {
    const list = listTopics(topics);
    for (const [name, topic] of Object.entries(topics)) {
      expect(list).toContain(name);
      for (const block of Object.keys(topic.blocks)) expect(list).toContain(`${name}/${block}`);
    }
  });

  it('prints the fields of a topic and of a block with units as people write them', () => {
    const fields = listFields(find('blade-speed')?.fields ?? []) as { key: string; units?: string[] }[];
    expect(fields.find((f) => f.key === 'diameter')?.units).toEqual(['mm', 'in']);
    expect((listFields(find('limits-fits/limits')?.fields ?? []) as { key: string }[]).map((f) => f.key)).toContain(
      'size',
    );
  });
});

describe('one line', () => {
  it('reads past a byte-order mark', () => {
    expect(line('limits-fits/limits', '\uFEFF{"size": 25, "zone": "H7"}').ok).toBe(true);
  });

  it('takes sums and fractions in text', () => {
    for (const flange of ['5 1/2 in', '5 in + 1/2 in'])
      // A 12 in blade that loses 2 3/4 in of radius cuts 3 1/4 in = 82.55 mm.
      expect(line('blade-speed/cut-depth', { diameter: '12 in', flange }).values?.['depth']).toMatchObject({
        value: 82.55,
        unit: 'mm',
      });
  });

  it('names a field that does not exist, and the ones that do', () => {
    expect(line('blade-speed/surface-speed', { diameter: 350, rotation: 5000, rpm: 1 }).problems?.[0]?.message).toBe(
      'There is no field called "rpm". Allowed: diameter, rotation.',
    );
  });

  it.each(['not json', '[1, 2]', '7', 'null', '"text"', '['.repeat(1e5), '{"a":'.repeat(1e5)])(
    'says why %.20s is no object',
    (text) =>
      expect(String((line('blade-speed', text) as unknown as { broken: string }).broken).length).toBeGreaterThan(5),
  );

  it('answers a value of any size or depth in few words', () => {
    const deep = `{"diameter": ${'['.repeat(5000)}${']'.repeat(5000)}}`;
    const big = `{"diameter": "${'9'.repeat(1e6)}", "known": "${'x'.repeat(1e6)}", "${'k'.repeat(1e6)}": 1}`;
    const sum = `{"diameter": "${'1+'.repeat(5000)}1"}`;
    for (const text of [deep, big, sum]) {
      const out = line('blade-speed', text);
      expect(out.ok).toBe(false);
      expect(JSON.stringify(out).length).toBeLessThan(5000);
    }
  });
});

describe('figures come back in the unit named beside them', () => {
  it('in a table', () => {
    // 25 k5 on a shaft is +11/+2 µm (ISO 286-1); a heated part is needed in °C, never in K.
    const warm = line('warming', topics['warming']?.example);
    const materials = Object.values(warm.values ?? {}).find((v) => v.kind === 'table');
    const column = materials?.columns?.findIndex((c) => c.unit === '°C') ?? -1;
    expect(column).toBeGreaterThanOrEqual(0);
    for (const row of materials?.rows ?? []) expect(Number(row[column])).toBeLessThan(200);
    const seat = line('bearing-fit', topics['bearing-fit']?.example).values?.['seats'];
    const micrometres = seat?.columns?.flatMap((c, i) => (c.unit === 'µm' ? [i] : [])) ?? [];
    expect(micrometres.length).toBeGreaterThan(0);
    for (const row of seat?.rows ?? [])
      for (const i of micrometres)
        if (row[i] !== null) expect(Number.isInteger(Math.abs(Number(row[i])) * 2)).toBe(true);
  });

  it('in the data of a verdict', () => {
    // A sealed bearing at 80 °C at most, asked for more: both figures are temperatures.
    const hot = line('warming', { part: 'ring', diameter: 25, interference: 40, gap: 20, sealed: true });
    const verdict = Object.values(hot.values ?? {}).find((v) => v.data?.['ceiling'] !== undefined);
    expect(verdict?.data?.['ceiling']).toEqual({ value: 80, unit: '°C' });
    expect(verdict?.data?.['needed']).toMatchObject({ unit: '°C' });
  });

  it('with money in the currency asked for', () => {
    const worth = line('repair-worth', topics['repair-worth']?.example, 'EUR');
    const money = Object.values(worth.values ?? {}).filter((v) => v.kind === 'money');
    expect(money.length).toBeGreaterThan(0);
    for (const v of money) expect(v.currency).toBe('EUR');
    expect(JSON.stringify(worth)).not.toContain('$');
  });

  it('without the dust of binary arithmetic, and every verdict figure with its unit or on the list of pure numbers', () => {
    const counted =
      'minutes share limit count squeeze chance ratio expected secondExpected times turns alone days saves';
    // Factors, percent, points, whole hours and minutes, decibels: said as they stand, whatever the reader's units.
    const said = 'factor failures least dose points hours left bare ear reduction level next';
    const pure = new Set(`${counted} ${said}`.split(' '));
    const dusty: string[] = [];
    const unnamed: string[] = [];
    for (const [name, topic] of Object.entries(topics))
      for (const raw of examplesFor(name, topic.example)) {
        const out = line(name, raw);
        expect(out.ok, `${name} ${JSON.stringify(raw)}`).toBe(true);
        const text = JSON.stringify(out);
        expect(text).not.toMatch(/NaN|Infinity|null,"unit"/);
        for (const [key, v] of Object.entries(out.values ?? {})) {
          const { si: _si, ...shown } = v as unknown as { si?: number };
          for (const n of JSON.stringify(shown).match(/\d+\.\d+/g) ?? [])
            if (n.replace('.', '').replace(/^0+/, '').length > 12) dusty.push(`${name} ${key} ${n}`);
          for (const [k, figure] of Object.entries(v.data ?? {}))
            if (typeof figure === 'object' && !figure.unit && !figure.currency && !pure.has(k))
              unnamed.push(`${name} ${v.code} ${k}`);
        }
      }
    expect([...new Set(dusty)]).toEqual([]);
    expect([...new Set(unnamed)]).toEqual([]);
  });
});

describe('what a line leaves out', () => {
  it('stands in the answer with the figure taken in its place; what was typed does not', () => {
    const part = { partCost: 6000, age: '100 h', mean: 400, horizon: 200, reopenMinutes: 30 };
    const { taken } = line('part-change', part, 'JPY');
    expect(taken?.['labourRate']).toEqual({ value: 75, currency: 'JPY' });
    expect(Object.keys(taken ?? {})).not.toContain('partCost');
    expect(line('part-change', { ...part, labourRate: 9000 }, 'JPY').taken).not.toHaveProperty('labourRate');
    const fit = { seat: 'shaft', size: 25 };
    expect(line('bearing-fit', fit).taken?.['room']).toEqual({ value: 20, unit: '°C' });
    // Not asked of a shaft, so nothing was taken for it.
    expect(line('bearing-fit', fit).taken).not.toHaveProperty('material');
  });
});
