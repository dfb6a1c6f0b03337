/** Ways on: the next sums of the same job, opened with the figures of this answer. */
import { carriedInputs } from '../../../core/contract/carry.ts';
import type { InputValue } from '../../../core/contract/field.ts';
import { toUnit } from '../../../core/quantity/index.ts';
import { siteLink } from '../../../browser/site-link.ts';
import { say } from '../../../words/kit.ts';
import type { ShownCarry } from '../state/props.ts';
import type { Worked } from '../state/use-calculation.ts';

interface Props {
  readonly carries: readonly ShownCarry[];
  readonly from: string;
  readonly worked: Worked;
}

export function CarryLinks({ carries, from, worked }: Props) {
  const links = carries.flatMap((carry) => {
    const inputs = carriedInputs(carry, worked.inputs, worked.answer);
    return inputs
      ? [{ carry, href: siteLink(`/calculators/${carry.to}/?${queryOf(carry, inputs, from, worked)}`) }]
      : [];
  });
  if (links.length === 0) return null;
  return (
    <p class="calc-carry">
      <b>{say.carryTo}</b>{' '}
      {links.map(({ carry, href }) => (
        <a key={carry.to + carry.what} href={href}>
          {carry.title}: {carry.what}
        </a>
      ))}
    </p>
  );
}

/** Carrying washes nothing: what rests on an example's figure arrives as nobody's. */
function queryOf(
  carry: ShownCarry,
  inputs: Readonly<Record<string, InputValue>>,
  from: string,
  worked: Worked,
): string {
  const query = new URLSearchParams({ calc: carry.to });
  const keys: string[] = [];
  for (const [key, value] of Object.entries(inputs)) {
    if (value === undefined || Array.isArray(value)) continue;
    query.set(`f.${key}`, textOf(value as string | number | boolean, carry.units[key]));
    keys.push(key);
  }
  if (worked.pencil === 0) query.set('carried', keys.join('~'));
  query.set('by', from);
  return query.toString();
}

function textOf(value: string | number | boolean, unit: ShownCarry['units'][string] | undefined): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  const shown = String(Number((unit ? toUnit(value, unit) : value).toPrecision(9)));
  return unit && unit !== '1' ? `${shown} ${unit.replace(' diff', '')}` : shown;
}
