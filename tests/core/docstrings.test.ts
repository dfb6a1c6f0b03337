/**
 * Docstrings of the core. `Example: call(arguments) -> value.` (more after a semicolon) is run against the function it
 * stands at; a number may differ by half of its last written digit. Every function others may import is described.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const core = new URL('../../src/core/', import.meta.url);
const files = readdirSync(core, { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.ts'))
  .map((f) => f.replaceAll('\\', '/'))
  .sort();

/** Rooms where every example is written as code; topics also speak in the units of the bench. */
const asCode = /^(?:calendar|chance|contract|export|materials|money|quantity|thresholds)\//;

const call = String.raw`[a-zA-Z]\w*\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)(?:\(\))?(?:\.\w+)*(?: [-+*/] [\d.e-]+)?`;
const example = new RegExp(String.raw`(Example: |; )(${call}) -> (.+?)(?= \(|\.(?:\s|$)|;|\s\*/|$)`, 'gm');

interface Example {
  readonly text: string;
  readonly wanted: string;
}

function examplesIn(source: string): Example[] {
  const lines = source.split('\n').filter((l) => /^\s*(?:\*|\/\*\*)/.test(l));
  return lines.flatMap((line) =>
    [...line.matchAll(example)].map((m) => ({ text: m[2] ?? '', wanted: (m[3] ?? '').trim() })),
  );
}

/** Half of the last digit as written: 0.4665 is good to 0.00005, 48.1e-6 to 0.05e-6. */
function halfDigit(written: string): number {
  const [, decimals = '', power = '0'] = /^-?\d+(?:\.(\d*))?(?:e(-?\d+))?$/.exec(written) ?? [];
  return 0.5000001 * 10 ** (Number(power) - decimals.length);
}

describe('examples are what the functions give', () => {
  const withExamples = files.filter((f) => examplesIn(readFileSync(new URL(f, core), 'utf8')).length > 0);
  it.each(withExamples)('%s', async (file) => {
    const scope = (await import(new URL(file, core).href)) as Record<string, unknown>;
    for (const { text, wanted } of examplesIn(readFileSync(new URL(file, core), 'utf8'))) {
      const evaluate = (code: string): unknown => runInNewContext(`(${code})`, { ...scope });
      const got = evaluate(text);
      const value = evaluate(wanted);
      if (typeof value === 'number')
        expect(Math.abs(Number(got) - value), `${text} gives ${String(got)}, says ${wanted}`).toBeLessThanOrEqual(
          halfDigit(wanted),
        );
      else expect(got, text).toEqual(value);
    }
  });

  it('there are many of them', () => {
    const all = files.flatMap((f) => examplesIn(readFileSync(new URL(f, core), 'utf8')));
    expect(all.length).toBeGreaterThanOrEqual(60);
  });

  it.each(files.filter((f) => asCode.test(f)))('%s: every example can be run', (file) => {
    const source = readFileSync(new URL(file, core), 'utf8');
    const written = source.match(/Example: /g)?.length ?? 0;
    const run = [...source.matchAll(example)].filter((m) => m[1] === 'Example: ').length;
    expect(run).toBe(written);
  });
});

/** Names of exported functions without a comment of their own. */
function undescribed(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(new URL(file, core), 'utf8'), ts.ScriptTarget.Latest, true);
  return source.statements.flatMap((s) => {
    const exported = ts.canHaveModifiers(s) && ts.getModifiers(s)?.some((m) => m.kind === ts.SyntaxKind.ExportKeyword);
    if (!exported) return [];
    const described = ts.getJSDocCommentsAndTags(s).length > 0;
    if (ts.isFunctionDeclaration(s)) return described ? [] : [s.name?.text ?? ''];
    if (!ts.isVariableStatement(s) || described) return [];
    return s.declarationList.declarations
      .filter((d) => d.initializer && (ts.isArrowFunction(d.initializer) || ts.isFunctionExpression(d.initializer)))
      .map((d) => d.name.getText());
  });
}

it('every exported function of the core is described', () => {
  expect(files.flatMap((f) => undescribed(f).map((name) => `${f} ${name}`))).toEqual([]);
});
