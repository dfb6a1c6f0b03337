/** The terminal command as a shop would script it: lines in, lines out, exit codes. */
import { spawn, spawnSync } from 'node:child_process';
import { setTimeout } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { topics } from '../../src/core/registry.ts';

function calc(args: readonly string[], input = '') {
  const run = spawnSync(process.execPath, ['src/commands/calc.ts', ...args], {
    cwd: new URL('../..', import.meta.url),
    input,
    encoding: 'utf8',
  });
  return { code: run.status, out: run.stdout, err: run.stderr, lines: run.stdout.trim().split('\n').filter(Boolean) };
}

const blade = {
  diameter: '14 in',
  known: 'spindle',
  spindle: 5000,
  markedAs: 'rpm',
  markedRotation: 5500,
  flange: '4 in',
};

describe('calc', () => {
  it('lists every topic and every block', () => {
    const { code, out } = calc(['--list']);
    expect(code).toBe(0);
    for (const [name, topic] of Object.entries(topics)) {
      expect(out).toContain(name);
      for (const block of Object.keys(topic.blocks)) expect(out).toContain(`${name}/${block}`);
    }
  });

  it('prints the fields of a topic and of a block as JSON', () => {
    const fields = JSON.parse(calc(['blade-speed', '--fields']).out) as { key: string; units?: string[] }[];
    expect(fields.find((f) => f.key === 'diameter')?.units).toEqual(['mm', 'in']);
    const block = JSON.parse(calc(['limits-fits/limits', '--fields']).out) as { key: string }[];
    expect(block.map((f) => f.key)).toContain('size');
  });

  it('answers each line in its order and leaves blank lines out', () => {
    const { code, lines } = calc(
      ['blade-speed/surface-speed'],
      '{"diameter": 350, "rotation": 5000}\n\n{"diameter": "14 in", "rotation": "5000 rpm"}\n',
    );
    expect(code).toBe(0);
    const speeds = lines.map(
      (l) => (JSON.parse(l) as { values: { speed: { value: number; unit: string } } }).values.speed,
    );
    expect(speeds.map((s) => s.unit)).toEqual(['m/s', 'm/s']);
    // pi D n by hand: 3.14159 x 0.35 m x 83.3333/s and 3.14159 x 0.3556 m x 83.3333/s.
    expect(speeds[0]?.value).toBeCloseTo(91.63, 2);
    expect(speeds[1]?.value).toBeCloseTo(93.1, 1);
  });

  it('writes every line to the end, also to a reader that takes its time', async () => {
    const run = spawn(process.execPath, ['src/commands/calc.ts', 'belt-tension'], {
      cwd: new URL('../..', import.meta.url),
    });
    run.stdin.end('{}\n'.repeat(60));
    // Far more than a pipe holds, and nobody reads it at first.
    await setTimeout(1500);
    let out = '';
    for await (const piece of run.stdout.setEncoding('utf8')) out += String(piece);
    const lines = out.trim().split('\n');
    expect(lines).toHaveLength(60);
    expect(new Set(lines.map((l) => (JSON.parse(l) as { ok: boolean }).ok))).toEqual(new Set([true]));
  });

  it('reads past a byte-order mark before the first line', () => {
    const { code, lines } = calc(['limits-fits/limits'], '\uFEFF{"size": 25, "zone": "H7"}\n');
    expect([code, JSON.parse(lines[0] ?? '').ok]).toEqual([0, true]);
  });

  it('takes sums and fractions in text', () => {
    const { lines } = calc(
      ['blade-speed/cut-depth'],
      '{"diameter": "12 in", "flange": "5 1/2 in"}\n{"diameter": "12 in", "flange": "5 in + 1/2 in"}\n',
    );
    // A 12 in blade that loses 2 3/4 in of radius cuts 3 1/4 in = 82.55 mm.
    for (const line of lines)
      expect((JSON.parse(line) as { values: { depth: { value: number } } }).values.depth.value).toBeCloseTo(82.55, 6);
  });

  it('gives problems in words, goes on with the next line, and exits 1', () => {
    const { code, lines } = calc(['blade-speed'], `{"diameter": "12 kg"}\n${JSON.stringify(blade)}\n`);
    expect(code).toBe(1);
    const [bad, good] = lines.map(
      (l) => JSON.parse(l) as { ok: boolean; problems?: { field: string; message: string }[] },
    );
    expect(bad?.problems?.find((p) => p.field === 'diameter')?.message).toMatch(
      /^Blade diameter must be a length; "12 kg" is a mass/,
    );
    expect(good?.ok).toBe(true);
  });

  it('names a field that does not exist, and the ones that do', () => {
    const { code, lines } = calc(['blade-speed/surface-speed'], '{"diameter": 350, "rotation": 5000, "rpm": 1}\n');
    expect(code).toBe(1);
    expect(lines[0]).toContain('There is no field called \\"rpm\\". Allowed: diameter, rotation.');
  });

  it.each([
    [['no-such-topic'], ''],
    [['blade-speed/no-such-block'], ''],
    [['constructor'], ''],
    [[], ''],
    [['blade-speed'], 'not json\n'],
    [['blade-speed'], '[1, 2]\n'],
    [['blade-speed'], '7\n'],
  ])('exits 2 for %j with %j, and says why', (args, input) => {
    const { code, err } = calc(args, input);
    expect(code).toBe(2);
    expect(err.length).toBeGreaterThan(20);
  });

  it('works the example of every topic', () => {
    for (const [name, topic] of Object.entries(topics)) {
      const { code, lines } = calc([name], `${JSON.stringify(topic.example)}\n`);
      expect(code, `${name}: ${lines[0]?.slice(0, 300)}`).toBe(0);
      expect(lines[0]).not.toMatch(/NaN|Infinity|null,"unit"/);
    }
    // One new process for each topic.
  }, 300_000);
});
