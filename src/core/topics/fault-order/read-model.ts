import type { InputsOf } from '../../contract/field.ts';
import { isOver } from '../../thresholds/index.ts';
import type { Problem } from '../../contract/result.ts';
import type { fields } from './fields.ts';
import type { Check, FaultModel, OrderOptions, Seen, Tell } from './model.ts';

export type OrderInputs = InputsOf<typeof fields>;

export interface ModelRead {
  readonly model: FaultModel;
  readonly seen: readonly Seen[];
  readonly options: OrderOptions;
}

/** Rows as a model: names are the ids, and rows of the same check become one check with several tells. */
export function readModel(inputs: OrderInputs): ModelRead {
  const whole = inputs.complete ? inputs.suspects.reduce((sum, s) => sum + s.likelihood, 0) || 1 : 1;
  const checks = new Map<string, Check & { tells: Tell[] }>();
  const seen = new Map<string, Seen>();
  for (const row of inputs.checks) {
    const check = checks.get(row.name) ?? {
      id: row.name,
      name: row.name,
      minutes: row.minutes,
      cost: row.cost,
      stripDown: row.stripDown,
      tells: [],
    };
    check.tells.push({ suspect: row.suspect, ifFaulty: row.ifFaulty, ifSound: row.ifSound });
    checks.set(row.name, check);
    if (row.answer !== 'open') seen.set(row.name, { check: row.name, shows: row.answer === 'shows' });
  }
  return {
    model: {
      suspects: inputs.suspects.map((s) => ({
        id: s.name,
        name: s.name,
        likelihood: s.likelihood / whole,
        fixMinutes: s.fixMinutes,
      })),
      checks: [...checks.values()],
      stripDowns: inputs.stripDowns.map((d) => ({ id: d.name, minutes: d.minutes })),
    },
    seen: [...seen.values()],
    options: {
      sure: inputs.sure,
      confirmLast: inputs.confirmLast,
      fallbackMinutes: inputs.fallbackMinutes,
      minuteCost: inputs.labourRate / 60,
    },
  };
}

/** Names that must be there, or must not be there twice. */
export function modelProblems(inputs: OrderInputs): Problem[] {
  const problems: Problem[] = [];
  const suspects = inputs.suspects.map((s) => s.name);
  const downs = inputs.stripDowns.map((d) => d.name);
  const twice = (names: readonly string[], rows: string) =>
    names.forEach(
      (name, k) =>
        names.indexOf(name) < k &&
        problems.push({ field: `${rows}.${k + 1}.name`, code: 'named-twice', data: { name } }),
    );
  twice(suspects, 'suspects');
  twice(downs, 'stripDowns');
  inputs.checks.forEach((row, k) => {
    const at = (column: string) => `checks.${k + 1}.${column}`;
    if (!suspects.includes(row.suspect))
      problems.push({
        field: at('suspect'),
        code: 'no-such-suspect',
        data: { name: row.suspect, allowed: suspects.join(', ') },
      });
    if (row.stripDown !== undefined && !downs.includes(row.stripDown))
      problems.push({
        field: at('stripDown'),
        code: 'no-such-strip-down',
        data: { name: row.stripDown, allowed: downs.join(', ') },
      });
    if (inputs.checks.slice(0, k).some((other) => other.name === row.name && other.suspect === row.suspect))
      problems.push({ field: at('suspect'), code: 'told-twice', data: { name: row.suspect, check: row.name } });
    const first = inputs.checks.slice(0, k).find((other) => other.name === row.name);
    if (
      first &&
      (first.minutes !== row.minutes ||
        first.cost !== row.cost ||
        first.stripDown !== row.stripDown ||
        first.answer !== row.answer)
    )
      problems.push({ field: at('name'), code: 'check-differs', data: { check: row.name } });
  });
  const total = inputs.suspects.reduce((sum, s) => sum + s.likelihood, 0);
  if (total <= 0) problems.push({ field: 'suspects', code: 'nobody-likely' });
  if (!inputs.complete && isOver(total, 1))
    problems.push({ field: 'suspects', code: 'more-than-all', data: { got: Math.round(total * 1000) / 10 } });
  return problems;
}
