/** Depth of cut, what a wanted depth needs, and why a twin head goes deeper than half its blade. */
import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { BladeInputs } from './fields.ts';
import { bladeForDepth, cutDepth, cutLength, twinDepth } from './depth.ts';
import { bladeWanted, depthOfCut, lengthAtSurface, twinDepthOfCut } from './formulas.ts';

const units = ['mm', 'in'] as const;
const decimals = [0, 2] as const;

/** Depth of cut of this blade on this head, and what a wanted depth asks for. */
export function depthValues(i: BladeInputs): Worked<Value[]> {
  const pass = cutDepth(i.diameter, i.flange, i.clearance);
  const passStep = step(depthOfCut, { D: i.diameter, F: i.flange, c: i.clearance }, pass);
  // Not the difference against 0: a last bit of 0 is no depth.
  if (!isOver((i.diameter - i.flange) / 2, i.clearance))
    return {
      value: [{ kind: 'verdict', key: 'noDepth', label: 'Depth of cut', code: 'no-depth', level: 'caution' }],
      steps: [passStep],
    };
  const length = cutLength(i.diameter, pass);
  const reach = i.head === 'twin' ? (i.reach ?? 0) : undefined;
  const depth = reach === undefined ? pass : twinDepth(i.diameter, reach, i.clearance);
  const wanted: Worked<Value[]> = i.wanted === undefined ? { value: [], steps: [] } : wantedValues(i.wanted, depth, i);
  return {
    value: [
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
      ...(reach === undefined ? [] : twinValues(depth, pass, i.diameter)),
      ...wanted.value,
    ],
    steps: [
      passStep,
      step(lengthAtSurface, { h: pass, D: i.diameter }, length),
      ...(reach === undefined ? [] : [step(twinDepthOfCut, { A: reach, D: i.diameter, c: i.clearance }, depth)]),
      ...wanted.steps,
    ],
  };
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
      code: isOver(depth, diameter / 2) ? 'twin-deeper-than-half' : 'twin-short-arm',
      level: 'note',
    },
  ];
}

function wantedValues(wanted: number, depth: number, i: BladeInputs): Worked<Value[]> {
  const reached = !isUnder(depth, wanted);
  if (i.head === 'twin')
    return {
      value: [
        {
          kind: 'verdict',
          key: 'wantedVerdict',
          label: 'Depth wanted',
          code: reached ? 'depth-reached' : 'depth-arm-too-short',
          level: reached ? 'good' : 'caution',
        },
      ],
      steps: [],
    };
  const needed = bladeForDepth(wanted, i.flange, i.clearance);
  const code = reached
    ? 'depth-reached'
    : i.guardSize === undefined
      ? 'depth-larger-ask-guard'
      : isOver(needed, i.guardSize)
        ? 'depth-guard-refuses'
        : 'depth-larger';
  const refused = code === 'depth-guard-refuses';
  return {
    value: [
      { kind: 'quantity', key: 'neededBlade', label: 'Blade for the depth wanted', value: needed, units, decimals },
      {
        kind: 'verdict',
        key: 'wantedVerdict',
        label: 'Depth wanted',
        code,
        level: reached ? 'good' : refused ? 'stop' : 'note',
        // A stop stands first, whatever the speed.
        main: refused,
        data: { needed },
      },
    ],
    steps: [step(bladeWanted, { h_w: wanted, c: i.clearance, F: i.flange }, needed)],
  };
}
