/** Depth of cut, what a wanted depth needs, and why a twin head goes deeper than half its blade. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { BladeInputs } from './fields.ts';
import { bladeForDepth, cutDepth, cutLength, twinDepth } from './depth.ts';
import { bladeWanted, depthOfCut, lengthAtSurface, twinDepthOfCut } from './formulas.ts';

const units = ['mm', 'in'] as const;
const decimals = [0, 2] as const;

export function depthValues(i: BladeInputs, working: WorkingStep[]): Value[] {
  const pass = cutDepth(i.diameter, i.flange, i.clearance);
  working.push(step(depthOfCut, { D: i.diameter, F: i.flange, c: i.clearance }, pass));
  if (pass <= 0)
    return [{ kind: 'verdict', key: 'noDepth', label: 'Depth of cut', code: 'no-depth', level: 'caution' }];
  const length = cutLength(i.diameter, pass);
  working.push(step(lengthAtSurface, { h: pass, D: i.diameter }, length));
  const twin = i.head === 'twin';
  const depth = twin ? twinDepth(i.diameter, i.reach ?? 0, i.clearance) : pass;
  if (twin) working.push(step(twinDepthOfCut, { A: i.reach ?? 0, D: i.diameter, c: i.clearance }, depth));
  return [
    { kind: 'quantity', key: 'depth', label: 'Greatest depth of cut', value: depth, units, decimals },
    {
      kind: 'quantity',
      key: 'cutLength',
      label: 'Length of the cut at the surface, saw standing',
      value: length,
      units,
      decimals,
      note: 'At full depth the bottom of the cut is shorter by all of this: corners are not cut through.',
    },
    { kind: 'quantity', key: 'halfBlade', label: 'Half the blade', value: i.diameter / 2, units, decimals },
    ...(twin ? twinValues(depth, pass, i.diameter) : []),
    ...(i.wanted === undefined ? [] : wantedValues(i.wanted, depth, i, working)),
  ];
}

function twinValues(depth: number, pass: number, diameter: number): Value[] {
  return [
    {
      kind: 'quantity',
      key: 'passDepth',
      label: 'Deepest first plunge, before the core is broken out',
      value: pass,
      units,
      decimals,
    },
    { kind: 'count', key: 'passes', label: 'Plunges at the least', value: Math.max(1, Math.ceil(depth / pass - 1e-9)) },
    {
      kind: 'verdict',
      key: 'twinVerdict',
      label: 'Twin head',
      code: depth > diameter / 2 ? 'twin-deeper-than-half' : 'twin-short-arm',
      level: 'note',
    },
  ];
}

function wantedValues(wanted: number, depth: number, i: BladeInputs, working: WorkingStep[]): Value[] {
  if (i.head === 'twin')
    return [
      {
        kind: 'verdict',
        key: 'wantedVerdict',
        label: 'Depth wanted',
        code: depth >= wanted ? 'depth-reached' : 'depth-arm-too-short',
        level: depth >= wanted ? 'good' : 'caution',
      },
    ];
  const needed = bladeForDepth(wanted, i.flange, i.clearance);
  working.push(step(bladeWanted, { h_w: wanted, c: i.clearance, F: i.flange }, needed));
  const limit = i.guardSize;
  const refused = limit !== undefined && needed > limit * (1 + 1e-9);
  const code =
    depth >= wanted * (1 - 1e-12)
      ? 'depth-reached'
      : refused
        ? 'depth-guard-refuses'
        : limit === undefined
          ? 'depth-larger-ask-guard'
          : 'depth-larger';
  return [
    { kind: 'quantity', key: 'neededBlade', label: 'Blade for the depth wanted', value: needed, units, decimals },
    {
      kind: 'verdict',
      key: 'wantedVerdict',
      label: 'Depth wanted',
      code,
      level: code === 'depth-reached' ? 'good' : refused ? 'stop' : 'note',
      data: { needed },
    },
  ];
}
