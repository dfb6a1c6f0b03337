/**
 * Arrows between layers point one way. Each import is resolved to the file it means; a refused
 * one is told with file, line, import and rule.
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { cycles } from './architecture/cycles.ts';
import { importsOf, sourceFiles, type Import } from './architecture/imports.ts';
import {
  addressRule,
  coreFloors,
  floorOf,
  goesByAddressRule,
  layerOf,
  namesBrowserSources,
  readsContent,
  readsProject,
  roomOf,
  sumEvaluator,
  sumPackage,
} from './architecture/layers.ts';

const project = fileURLToPath(new URL('..', import.meta.url));
const files = sourceFiles(project, 'src').filter((f) => !f.endsWith('.d.ts'));
const imports = files.flatMap((file) => importsOf(project, file));
const place = (i: Import) => `${i.from}:${i.line} imports "${i.written}"`;

/** Layers whose code is sent to readers. */
const reachReaders = ['core', 'islands', 'browser'];

/** Why an import is refused, or nothing. */
function refusal(i: Import): string | undefined {
  const layer = layerOf(i.from);
  if (!layer) return undefined;
  const packages = i.from === sumEvaluator ? sumPackage : layer.packages;
  if (i.to === undefined)
    return packages.test(i.written) ? undefined : `${layer.name} may not import the package ${i.written}`;
  if (addressRule.test(i.to) && goesByAddressRule.includes(layer.name)) return undefined;
  if (i.how === 'path' && i.from === namesBrowserSources) return undefined;
  if (i.how === 'path' && readsProject.includes(layer.name) && !i.to.startsWith('src')) return undefined;
  if (layer.name === readsContent.layer && readsContent.file.test(i.to)) return undefined;
  if (i.to.startsWith('..') || !i.to.startsWith('src/')) return `it leads out of src/, to ${i.to}`;
  const target = layerOf(i.to);
  if (target && !layer.layers.includes(target.name))
    return `${layer.name} may import only ${layer.layers.join(', ')}; ${i.to} belongs to ${target.name}`;
  const room = roomOf(i.to);
  if (roomOf(i.from) !== undefined && room !== undefined && room !== roomOf(i.from) && i.to !== `${room}/index.ts`)
    return `between rooms of the core only index.ts may be imported, not ${i.to}`;
  if (layer.name === 'core' && target?.name === 'core' && floorOf(i.to) > floorOf(i.from))
    return `in the core nothing imports a higher floor, and ${coreFloors[floorOf(i.to)]} stands above ${coreFloors[floorOf(i.from)]}`;
  if (i.to === sumEvaluator && i.how === 'plain' && reachReaders.includes(layer.name))
    return 'the sum evaluator brings mathjs; load it with import() when someone types a sum';
  return undefined;
}

test('there is something to check', () => {
  expect(files.length).toBeGreaterThan(50);
  expect(imports.filter((i) => i.to !== undefined).length).toBeGreaterThan(100);
  expect(imports.filter((i) => i.how === 'path' && i.from === namesBrowserSources).length).toBeGreaterThan(5);
});

test('every file of src/ belongs to a layer', () => {
  expect(files.filter((f) => !layerOf(f))).toEqual([]);
});

test('no layer imports what it may not', () => {
  expect(imports.flatMap((i) => (refusal(i) ? [`${place(i)}: ${refusal(i)}`] : []))).toEqual([]);
});

test('no file imports itself in a ring', () => {
  // A ring of code decides by luck what is ready first; in a ring of types neither file can be read without the other.
  expect(cycles(imports).map((ring) => ring.map(place).join('\n  -> '))).toEqual([]);
});

test('no folder imports itself in a ring', () => {
  // Types count here: a folder that needs its neighbor's words to say its own is no room of its own.
  const folder = (file: string) => file.replace(/\/[^/]*$/, '');
  // A folder that is only read through (the pages, to learn their names) is no room anybody enters.
  const between = imports.flatMap((i) =>
    i.to === undefined || (i.how === 'path' && !/\.\w+$/.test(i.to)) || folder(i.from) === folder(i.to)
      ? []
      : [{ ...i, from: folder(i.from), to: folder(i.to), written: `${i.from} -> ${i.to}` }],
  );
  expect(cycles(between).map((ring) => ring.map((i) => i.written).join('\n  then '))).toEqual([]);
});

test('the rules catch what they are for', () => {
  const made = (from: string, written: string, to: string | undefined, how: Import['how'] = 'plain'): Import => ({
    from,
    line: 1,
    written,
    to,
    how,
  });
  expect(refusal(made('src/core/topics/belts/a.ts', 'preact', undefined))).toMatch(/package preact/);
  expect(refusal(made('src/core/topics/belts/a.ts', '../fits/tables.ts', 'src/core/topics/fits/tables.ts'))).toMatch(
    /only index\.ts/,
  );
  expect(
    refusal(made('src/core/topics/belts/a.ts', '../fits/index.ts', 'src/core/topics/fits/index.ts')),
  ).toBeUndefined();
  expect(refusal(made('src/core/topics/belts/a.ts', '../../metals/steel.ts', 'src/core/metals/steel.ts'))).toMatch(
    /only index\.ts/,
  );
  expect(refusal(made('src/core/metals/index.ts', '../topics/fits/index.ts', 'src/core/topics/fits/index.ts'))).toMatch(
    /topics stands above shared subjects/,
  );
  expect(refusal(made('src/core/quantity/a.ts', '../contract/field.ts', 'src/core/contract/field.ts'))).toMatch(
    /contract stands above quantity/,
  );
  expect(
    refusal(made('src/core/topics/belts/a.ts', '../../../steps/support/files.ts', 'src/steps/support/files.ts')),
  ).toMatch(/core may import only/);
  expect(refusal(made('src/islands/A/A.tsx', '../../../tests/x.ts', 'tests/x.ts'))).toMatch(/leads out of src/);
  expect(refusal(made('src/islands/A/A.tsx', '../../core/quantity/sum.ts', 'src/core/quantity/sum.ts'))).toMatch(
    /brings mathjs/,
  );
  expect(
    refusal(made('src/islands/A/A.tsx', '../../core/quantity/sum.ts', 'src/core/quantity/sum.ts', 'later')),
  ).toBeUndefined();
  expect(refusal(made('src/core/topics/belts/a.ts', 'mathjs', undefined))).toMatch(/package mathjs/);
  expect(refusal(made('src/pages/a.astro', '../core/registry.ts', 'src/core/registry.ts'))).toMatch(
    /pages may import only/,
  );
  const hidden = made('src/steps/worker/a.ts', '../../browser/worker/save.ts', 'src/browser/worker/save.ts', 'path');
  expect(refusal(hidden)).toMatch(/steps may import only/);
  expect(refusal({ ...hidden, from: namesBrowserSources })).toBeUndefined();
  expect(refusal(made('src/islands/a.ts', '../../content/x.yaml', 'content/x.yaml', 'path'))).toMatch(
    /leads out of src/,
  );
  const ring = [
    made('src/core/a.ts', './b.ts', 'src/core/b.ts'),
    made('src/core/b.ts', './c.ts', 'src/core/c.ts'),
    made('src/core/c.ts', './b.ts', 'src/core/b.ts'),
  ];
  expect(cycles(ring)).toEqual([[ring[1], ring[2]]]);
});
