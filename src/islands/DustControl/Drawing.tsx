/** By task: the shift's dusty hours against the four of the table. By measurement: what each task adds to the average. */
import type { RawInputs } from '../../core/contract/field.ts';
import { formatNumber, formatQuantity } from '../../core/quantity/index.ts';
import { valueOf, type Answer } from '../../core/contract/result.ts';
import { eightHours } from '../../core/exposure/index.ts';
import { controlTable, fourHours, type Task } from '../../core/topics/dust-control/index.ts';
import { fitText, linear, Picture, StackBar, StackList, type DrawingProps } from '../kit/index.ts';

const [left, right] = [8, 352];
const room = right - left - 24;

const isUsa = (rule: unknown) => rule === 'us-construction' || rule === 'us-general';
const textOf = (value: unknown) => (typeof value === 'string' ? value : '');

export function Drawing(props: DrawingProps) {
  return props.inputs['way'] === 'measured' ? <Measured {...props} /> : <Hours {...props} />;
}

function verdictOf(answer: Answer) {
  return valueOf(answer, 'verdict', 'verdict');
}

function Hours({ id, answer, inputs }: DrawingProps) {
  const rows = (inputs['work'] ?? []) as readonly RawInputs[];
  const table = valueOf(answer, 'each', 'table');
  const asked = table.columns.findIndex((c) => c.key === 'factor');
  const total = valueOf(answer, 'hours', 'quantity').value;
  const factor = (k: number) => {
    const cell = table.rows[k]?.[asked];
    return typeof cell === 'number' ? `factor ${cell}` : String(cell ?? '');
  };
  const hours = (seconds: number) => `${formatNumber(seconds / 3600, 1)} h`;
  const name = (row: RawInputs) => controlTable[row['task'] as Task].short;
  const usa = isUsa(inputs['rule']);
  const stop = verdictOf(answer).level === 'stop';
  return (
    <Picture
      id={id}
      title="Dusty hours of the shift"
      description={
        `${hours(total)} of dusty work. ` +
        `${rows.map((r, k) => `${name(r)}, ${hours(Number(r['time']))}: ${factor(k)}.`).join(' ')}${usa ? ' Over 4 h in all, the higher column of the table counts for each.' : ''}${stop ? ' Do not start as it stands.' : ''}`
      }
      height={88 + rows.length * 19}
      caption={
        usa
          ? 'All tasks of the table add up. Over four hours together the higher column counts for each of them.'
          : 'All dusty work of the shift, to scale.'
      }
    >
      <StackBar
        name="Dusty work"
        figure={hours(total)}
        y={16}
        x={linear(0, Math.max(total, eightHours), left, right)}
        left={left}
        right={right}
        parts={rows.map((r, k) => ({ number: k + 1, value: Number(r['time']) }))}
        marks={usa ? [{ at: fourHours, text: '4 h' }] : []}
      />
      <StackList x={left} y={90} names={rows.map((r, k) => fitText(`${factor(k)}: ${name(r)}`, room))} />
    </Picture>
  );
}

function Measured({ id, answer, inputs, reader }: DrawingProps) {
  const rows = (inputs['spells'] ?? []) as readonly RawInputs[];
  const [counts, limit, whole] = [
    valueOf(answer, 'average', 'quantity').value,
    valueOf(answer, 'limit', 'quantity').value,
    valueOf(answer, 'whole', 'quantity').value,
  ];
  const mg = (si: number) => formatQuantity(si, ['mg/m3', 'mg/m3'], reader.system, [3, 3]);
  const parts = rows.map((r, k) => ({
    number: k + 1,
    value: (Number(r['concentration']) * Number(r['time'])) / eightHours,
  }));
  const rest = whole - parts.reduce((sum, p) => sum + p.value, 0);
  const all = rest > whole * 1e-9 ? [...parts, { number: parts.length + 1, value: rest }] : parts;
  const names = [
    ...rows.map((r) => fitText(`${textOf(r['what'])}, ${mg(Number(r['concentration']))}`, room)),
    ...(all.length > parts.length ? ['hours nobody measured'] : []),
  ];
  const usa = isUsa(inputs['rule']);
  return (
    <Picture
      id={id}
      title="What each task adds to the average"
      description={
        `The average that counts is ${mg(counts)}, the limit ${mg(limit)}. ` +
        `${names.map((n, k) => `${n} adds ${mg(all[k]?.value ?? 0)}.`).join(' ')}`
      }
      height={88 + names.length * 19}
      caption="Each part is a task’s share of the average over 8 h. The red line is the limit."
    >
      <StackBar
        name="Average over 8 h"
        figure={mg(whole)}
        y={16}
        x={linear(0, Math.max(whole, limit * 1.2), left, right)}
        left={left}
        right={right}
        parts={all}
        marks={[
          ...(usa && whole < 10 * limit ? [{ at: limit / 2, text: 'action' }] : []),
          { at: limit, text: 'limit' },
        ]}
      />
      <StackList x={left} y={90} names={names} />
    </Picture>
  );
}
