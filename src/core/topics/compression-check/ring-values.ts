/** The ring gap against the bore: too tight, usual, or wider than wear explains. */
import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { fields } from './fields.ts';
import * as f from './formulas.ts';
import { boreWearMost, gapButts, ringGapShare, widestGap } from './ring-gap.ts';

const length = ['mm', 'in'] as const;

/** What the gap says: values and verdict; none where it was not measured. */
export function ringValues(i: InputsOf<typeof fields>): Worked<Value[]> {
  if (!i.ring) return { value: [], steps: [] };
  const [bore, gap] = [i.bore ?? 0, i.gap ?? 0];
  const [least, most, widest] = [ringGapShare.least * bore, ringGapShare.most * bore, widestGap(bore)];
  const [code, level] = isUnder(gap, gapButts * bore)
    ? (['gap-butts', 'caution'] as const)
    : isUnder(gap, least)
      ? (['gap-tight', 'note'] as const)
      : !isOver(gap, most)
        ? (['gap-usual', 'good'] as const)
        : isOver(gap, widest)
          ? (['gap-too-wide', 'caution'] as const)
          : (['gap-wide', 'note'] as const);
  const value = (key: string, label: string, si: number): Value => ({
    kind: 'quantity',
    key,
    label,
    value: si,
    units: length,
    decimals: [2, 4],
  });
  return {
    value: [
      {
        kind: 'verdict',
        key: 'ringVerdict',
        label: 'Ring gap',
        code,
        level,
        data: { least, most, widest },
        source: 'common-practice',
      },
      value('gapLeast', 'Usual gap, least', least),
      value('gapMost', 'Usual gap, most', most),
      value('gapWidest', 'Widest that wear of the bore explains', widest),
    ],
    steps: [
      step(f.gapLeast, { D: bore }, least),
      step(f.gapMost, { D: bore }, most),
      step(f.gapWidest, { D: bore, w: boreWearMost }, widest),
    ],
  };
}
