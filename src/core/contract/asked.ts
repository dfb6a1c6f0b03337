/** Which boxes a form asks for at this moment, judged on what they hold as text. */
import { inOrderOfNeed, isAsked } from './check-inputs.ts';
import type { Field, RawInputs, RawValue } from './field.ts';

/** Fields asked for, in their own order; one left undefined is taken to hold its default. */
export function askedFields(fields: readonly Field[], raw: RawInputs): readonly Field[] {
  const held: Record<string, unknown> = {};
  for (const f of inOrderOfNeed(fields)) {
    if (isAsked(f, held)) held[f.key] = valueHeld(f, raw[f.key]);
  }
  return fields.filter((f) => f.key in held);
}

/** What a condition sees: yes and no as truth, everything else as it stands. */
export function valueHeld(field: Field, raw: RawValue): unknown {
  const given = raw ?? ('default' in field ? field.default : undefined);
  if (field.kind !== 'yes-no') return given;
  if (given === true || given === 'yes' || given === 'true') return true;
  return given === false || given === 'no' || given === 'false' ? false : undefined;
}
