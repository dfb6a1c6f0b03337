/** The day's time beside the dose it makes: minutes of a saw are most of it. Both doses on one scale, with the whole of a day marked. */
import type { RawInputs } from '../../core/contract/field.ts';
import { formatNumber } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { allowedTime, niosh, osha } from '../../core/topics/noise-dose/index.ts';
import { fitText, linear, Picture, StackBar, StackList, type DrawingProps } from '../kit/index.ts';

const [left, right] = [8, 352];

interface Row {
  readonly what: string;
  readonly level: number;
  readonly time: number;
}

export function Drawing({ id, answer, inputs }: DrawingProps) {
  const rows = ((inputs['periods'] ?? []) as readonly RawInputs[] as unknown as readonly Row[]).filter(
    (r) => r.time > 0,
  );
  const [n, o] = [valueOf(answer, 'nioshDose', 'quantity').value, valueOf(answer, 'oshaDose', 'quantity').value];
  const total = rows.reduce((sum, r) => sum + r.time, 0);
  const most = Math.max(1, n, o);
  const dose = linear(0, most, left, right);
  const per = (share: number) => `${formatNumber(share * 100, 0)} %`;
  const hours = (seconds: number) => `${formatNumber(seconds / 3600, 1)} h`;
  const part = (value: (r: Row) => number) => rows.map((r, k) => ({ number: k + 1, value: value(r) }));
  const mark = [{ at: 1, text: '100 %' }];
  const names = rows.map((r) => fitText(`${r.what}, ${formatNumber(r.level)} dB(A)`, right - left - 24));
  const description =
    `${hours(total)} of work make ${per(n)} of NIOSH’s daily dose and ${per(o)} of OSHA’s, on bare ` +
    `ears. ${rows.map((r) => `${r.what}: ${hours(r.time)}, ${per(r.time / allowedTime(r.level, niosh))} of NIOSH’s, ${per(r.time / allowedTime(r.level, osha))} of OSHA’s.`).join(' ')}`;
  return (
    <Picture
      id={id}
      title="The day’s time, and the dose it makes"
      description={description}
      height={206 + names.length * 19}
      caption="Both doses on one scale, bare ears. The red line is the whole of a day’s dose."
    >
      <StackBar
        name="Time"
        figure={hours(total)}
        y={16}
        x={linear(0, total, left, right)}
        left={left}
        right={right}
        parts={part((r) => r.time)}
      />
      <StackBar
        name="NIOSH dose (3 dB)"
        figure={per(n)}
        y={70}
        x={dose}
        left={left}
        right={right}
        parts={part((r) => r.time / allowedTime(r.level, niosh))}
        marks={mark}
      />
      <StackBar
        name="OSHA dose (5 dB)"
        figure={per(o)}
        y={140}
        x={dose}
        left={left}
        right={right}
        parts={part((r) => r.time / allowedTime(r.level, osha))}
        marks={mark}
      />
      <StackList x={left} y={212} names={names} />
    </Picture>
  );
}
