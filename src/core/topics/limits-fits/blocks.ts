import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import type { Problem } from '../../contract/result.ts';
import { deltaAt, toleranceAt } from './deviation.ts';
import { sizeField, zonePattern } from './fields.ts';
import { fitOf } from './fit.ts';
import { explainLimits, limitsAt } from './limits.ts';
import { whyRefused } from './refusal.ts';
import { endOfFirstRange, largestSize, stepEnds, stepIndex } from './steps.ts';
import { grades } from './tables/it-grades.ts';
import { isGrade, type Grade } from './zone.ts';

const micro = ['µm', 'thou'] as const;
const zone = { key: 'zone', label: 'Tolerance zone', kind: 'text', ...zonePattern } as const;
const grade = {
  key: 'grade',
  label: 'Tolerance grade',
  kind: 'text',
  pattern: '(?:IT)?\\s*\\d{1,2}',
  patternSays: 'a grade, like 7 or IT7',
  maxLength: 5,
} as const;
const keys = { size: 'size', zone: 'zone' };

type SizeAndGrade = { readonly end: number; readonly name: Grade } | { readonly problem: Problem };

function sizeAndGrade(size: number, typed: string): SizeAndGrade {
  const end = stepEnds[stepIndex(size)];
  const name = typed.replace(/^IT\s*/i, '').trim();
  if (end === undefined)
    return { problem: { field: 'size', code: 'size-outside', data: { got: size, max: largestSize } } };
  if (!isGrade(name))
    return {
      problem: {
        field: 'grade',
        code: 'grade-undefined',
        data: { got: typed, nearest: grades.map((g) => `IT${g}`).join(', ') },
      },
    };
  return { end, name };
}

export const blocks = {
  limits: block({
    what: 'limit deviations of a zone at a size',
    source: 'iso-286-1',
    fields: defineFields([sizeField, zone]),
    gives: {
      upper: { label: 'Upper limit deviation', units: micro },
      lower: { label: 'Lower limit deviation', units: micro },
    },
    run: (i) => {
      const limits = limitsAt(i.size, i.zone);
      if (limits) return { upper: limits.upper, lower: limits.lower };
      return {
        problem: whyRefused(i.size, i.zone, keys) ?? { field: 'zone', code: 'not-a-zone', data: { got: i.zone } },
      };
    },
  }),
  'it-grade': block({
    what: 'standard tolerance of a grade at a size',
    source: 'iso-286-1',
    fields: defineFields([sizeField, grade]),
    gives: { tolerance: { label: 'Standard tolerance', units: micro } },
    run: (i) => {
      const at = sizeAndGrade(i.size, i.grade);
      if ('problem' in at) return { problem: at.problem };
      const tolerance = toleranceAt(at.end, at.name);
      if (tolerance !== undefined) return { tolerance: tolerance / 1e6 };
      return {
        problem: {
          field: 'grade',
          code: 'grade-undefined',
          data: { got: i.grade, nearest: at.end > endOfFirstRange ? 'IT1 to IT18' : 'IT01 to IT13' },
        },
      };
    },
  }),
  delta: block({
    what: 'delta added to holes K to ZC at a size and grade (none above 500 mm)',
    source: 'iso-286-1',
    fields: defineFields([sizeField, grade]),
    gives: { delta: { label: 'Delta', units: micro } },
    run: (i) => {
      const at = sizeAndGrade(i.size, i.grade);
      if ('problem' in at) return { problem: at.problem };
      const delta = deltaAt(at.end, at.name);
      return delta === undefined
        ? { problem: { field: 'grade', code: 'grade-undefined', data: { got: i.grade, nearest: 'IT3 to IT8' } } }
        : { delta: delta / 1e6 };
    },
  }),
  'fundamental-deviation': block({
    what: 'the limit of a zone nearest the nominal size',
    source: 'iso-286-1',
    fields: defineFields([sizeField, zone]),
    gives: { deviation: { label: 'Fundamental deviation', units: micro }, limit: { label: 'Which limit it is' } },
    run: (i) => {
      const found = explainLimits(i.size, i.zone);
      if (found) return { deviation: found.deviation.value / 1e6, limit: found.deviation.limit };
      return {
        problem: whyRefused(i.size, i.zone, keys) ?? { field: 'zone', code: 'not-a-zone', data: { got: i.zone } },
      };
    },
  }),
  fit: block({
    what: 'interference or clearance of a hole and a shaft',
    source: 'iso-286-1',
    fields: defineFields([
      sizeField,
      { ...zone, key: 'hole', label: 'Zone of the hole' },
      { ...zone, key: 'shaft', label: 'Zone of the shaft' },
    ]),
    gives: {
      most: { label: 'Most interference', units: micro },
      mean: { label: 'Mean interference', units: micro },
      least: { label: 'Least interference (below zero: clearance)', units: micro },
    },
    run: (i) => {
      const [hole, shaft] = [explainLimits(i.size, i.hole), explainLimits(i.size, i.shaft)];
      if (!hole)
        return {
          problem: whyRefused(i.size, i.hole, { size: 'size', zone: 'hole' }) ?? {
            field: 'hole',
            code: 'not-a-zone',
            data: { got: i.hole },
          },
        };
      if (!shaft)
        return {
          problem: whyRefused(i.size, i.shaft, { size: 'size', zone: 'shaft' }) ?? {
            field: 'shaft',
            code: 'not-a-zone',
            data: { got: i.shaft },
          },
        };
      if (!hole.zone.hole || shaft.zone.hole)
        return {
          problem: {
            field: hole.zone.hole ? 'shaft' : 'hole',
            code: 'two-of-a-kind',
            data: { kind: hole.zone.hole ? 'hole' : 'shaft' },
          },
        };
      return { ...fitOf(hole.limits, shaft.limits) };
    },
  }),
};
