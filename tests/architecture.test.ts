/**
 * Arrows between layers point one way. Each import is resolved to the file it means; a refused
 * one is told with file, line, import and rule.
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { cycles } from './architecture/cycles.ts';
import { importsOf, sourceFiles, type Import } from './architecture/imports.ts';
import { layerOf, readsContent, sumEvaluator, sumPackage, topicOf } from './architecture/layers.ts';

const project = fileURLToPath(new URL('..', import.meta.url));
const files = sourceFiles(project, 'src').filter((f) => !f.endsWith('.d.ts'));
const imports = files.flatMap((file) => importsOf(project, file));
const place = (i: Import) => `${i.from}:${i.line} imports "${i.written}"`;

/** Layers whose code is sent to readers. */
const reachReaders = ['core', 'islands', 'page scripts'];

/** Why an import is refused, or nothing. */
function refusal(i: Import): string | undefined {
  const layer = layerOf(i.from);
  if (!layer) return undefined;
  const packages = i.from === sumEvaluator ? sumPackage : layer.packages;
  if (i.to === undefined) return packages.test(i.written) ? undefined : `${layer.name} may not import the package ${i.written}`;
  if (layer.name === readsContent.layer && readsContent.file.test(i.to)) return undefined;
  if (i.to.startsWith('..') || !i.to.startsWith('src/')) return `it leads out of src/, to ${i.to}`;
  const target = layerOf(i.to);
  if (target && !layer.layers.includes(target.name)) return `${layer.name} may import only ${layer.layers.join(', ')}; ${i.to} belongs to ${target.name}`;
  const topic = topicOf(i.to);
  if (topicOf(i.from) !== undefined && topic !== undefined && topic !== topicOf(i.from) && i.to !== `src/core/${topic}/index.ts`)
    return `between topics only index.ts may be imported, not ${i.to}`;
  if (i.to === sumEvaluator && i.how === 'plain' && reachReaders.includes(layer.name)) return 'the sum evaluator brings mathjs; load it with import() when someone types a sum';
  return undefined;
}

test('there is something to check', () => {
  expect(files.length).toBeGreaterThan(50);
  expect(imports.filter((i) => i.to !== undefined).length).toBeGreaterThan(100);
});

test('every file of src/ belongs to a layer', () => {
  expect(files.filter((f) => !layerOf(f))).toEqual([]);
});

test('no layer imports what it may not', () => {
  expect(imports.flatMap((i) => (refusal(i) ? [`${place(i)}: ${refusal(i)}`] : []))).toEqual([]);
});

test('no file imports itself in a ring', () => {
  // A ring of types is gone when the code runs; a ring of code decides by luck what is ready first.
  expect(cycles(imports.filter((i) => i.how !== 'type')).map((ring) => ring.map(place).join('\n  -> '))).toEqual([]);
});

test('the rules catch what they are for', () => {
  const made = (from: string, written: string, to: string | undefined, how: Import['how'] = 'plain'): Import => ({ from, line: 1, written, to, how });
  expect(refusal(made('src/core/belts/a.ts', 'preact', undefined))).toMatch(/package preact/);
  expect(refusal(made('src/core/belts/a.ts', '../fits/tables.ts', 'src/core/fits/tables.ts'))).toMatch(/only index\.ts/);
  expect(refusal(made('src/core/belts/a.ts', '../fits/index.ts', 'src/core/fits/index.ts'))).toBeUndefined();
  expect(refusal(made('src/core/belts/a.ts', '../../build/serve.ts', 'src/build/serve.ts'))).toMatch(/core may import only/);
  expect(refusal(made('src/islands/A/A.tsx', '../../../tests/x.ts', 'tests/x.ts'))).toMatch(/leads out of src/);
  expect(refusal(made('src/islands/A/A.tsx', '../../core/quantity/sum.ts', 'src/core/quantity/sum.ts'))).toMatch(/brings mathjs/);
  expect(refusal(made('src/islands/A/A.tsx', '../../core/quantity/sum.ts', 'src/core/quantity/sum.ts', 'later'))).toBeUndefined();
  expect(refusal(made('src/core/belts/a.ts', 'mathjs', undefined))).toMatch(/package mathjs/);
  expect(refusal(made('src/pages/a.astro', '../core/registry.ts', 'src/core/registry.ts'))).toMatch(/pages may import only/);
  const ring = [made('src/core/a.ts', './b.ts', 'src/core/b.ts'), made('src/core/b.ts', './c.ts', 'src/core/c.ts'), made('src/core/c.ts', './b.ts', 'src/core/b.ts')];
  expect(cycles(ring)).toEqual([[ring[1], ring[2]]]);
});
