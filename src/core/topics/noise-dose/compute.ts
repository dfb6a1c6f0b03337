import { guarded } from '../../contract/guarded.ts';
import type { Result } from '../../contract/result.ts';
import { dayOf } from './day.ts';
import { fields } from './fields.ts';
import { helperPart } from './helper.ts';
import { dosePart, leftPart } from './dose-values.ts';
import { protectorOf, protectorPart } from './protector-values.ts';
import { verdicts } from './verdicts.ts';

export const compute = guarded(fields, (i): Result => {
  const total = i.periods.reduce((sum, p) => sum + p.time, 0);
  if (total > 86400)
    return {
      ok: false,
      problems: [{ field: 'periods', code: 'over-a-day', data: { hours: Math.round(total / 3600) } }],
    };
  if (total <= 0) return { ok: false, problems: [{ field: 'periods', code: 'no-time' }] };
  const protector = protectorOf(i);
  const day = dayOf(i, protector.credited);
  const parts = [dosePart(day), leftPart(i, day), protectorPart(i, day, protector), helperPart(i, day)];
  return {
    ok: true,
    values: [...verdicts(i, day, protector), ...parts.flatMap((p) => p.values)],
    working: parts.flatMap((p) => p.steps),
    cautions: [{ hazard: 'noise', level: 'warning' }],
  };
});
