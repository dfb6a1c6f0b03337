/** The guard every `compute` runs behind. */
import { askedInputs, checkInputs } from './check-inputs.ts';
import type { Field, Inputs, InputsOf } from './field.ts';
import type { Answer, Result, Value } from './result.ts';

/**
 * Puts the checks in front of a calculation and a last look behind it: inputs outside
 * their limits never reach `run`, inputs not asked for are dropped, and a result that is
 * not a finite number becomes a problem instead of a figure.
 */
export function guarded<const T extends readonly Field[]>(
  fields: T,
  run: (inputs: InputsOf<T>) => Result,
): (inputs: Inputs) => Result {
  return (inputs) => {
    const asked = askedInputs(fields, inputs);
    const problems = checkInputs(fields, asked);
    if (problems.length > 0) return { ok: false, problems };
    const result = run(asked as InputsOf<T>);
    if (!result.ok) return result;
    const bad = firstNotFinite(result);
    return bad ? { ok: false, problems: [{ field: '', code: 'no-number', data: { value: bad } }] } : result;
  };
}

function firstNotFinite(answer: Answer): string | undefined {
  const value = answer.values.find((v) => numbersIn(v).some(tooBig));
  if (value) return value.key;
  return answer.working.find((s) => [...s.put, s.gave].some((p) => tooBig(p.value)))?.formula;
}

/** No number at all, or one that would stop being one in a smaller unit. */
function tooBig(n: number): boolean {
  return !(Math.abs(n) < 1e250);
}

function numbersIn(value: Value): number[] {
  switch (value.kind) {
    case 'quantity':
    case 'number':
    case 'count':
    case 'money':
      return [value.value, value.low ?? 0, value.high ?? 0];
    case 'table':
      return value.rows.flat().filter((c): c is number => typeof c === 'number');
    case 'verdict':
      return Object.values(value.data ?? {}).filter((c): c is number => typeof c === 'number');
    case 'text':
      return [];
  }
}
