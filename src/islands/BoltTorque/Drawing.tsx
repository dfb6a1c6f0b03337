/** The torque for the same pull in every state of the thread, with what stretches the bolt struck out; below it the pull against the proof load. */
import { conditionOf, conditions, type ThreadState } from '../../core/topics/bolt-torque/index.ts';
import { formatIn, pick, toUnit } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import {
  Axis,
  barHeight,
  barTop,
  linear,
  niceSteps,
  Picture,
  quantityReading,
  RangeRow,
  readingText,
  type DrawingProps,
} from '../kit/index.ts';

const [left, right, first, rowHigh] = [6, 354, 46, 36];

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const [torque, pull, proof] = [
    valueOf(answer, 'torque', 'quantity'),
    valueOf(answer, 'preload', 'quantity'),
    valueOf(answer, 'proofLoad', 'quantity'),
  ];
  const unit = pick(torque.units, reader.system);
  const figure = (si: number) => formatIn(si, unit, undefined, 2);
  const kilo = pick(pull.units, reader.system);
  // What the joint is drawn to, which a casting may keep below the share asked for.
  const share = pull.value / proof.value;
  const state = inputs['state'] as ThreadState;
  const own = typeof inputs['ownFactor'] === 'number';
  const torques = valueOf(answer, 'states', 'table').rows.map((row) => Number(row[2]));
  const listed = conditions.map((c, i) => ({
    name: c.label,
    torque: torques[i] ?? 0,
    scatter: c.scatter,
    chosen: !own && c.value === state,
  }));
  const rows = own
    ? [{ name: 'With your own K', torque: torque.value, scatter: conditionOf(state).scatter, chosen: true }, ...listed]
    : listed;
  const most = 1.3 * Math.max(...rows.map((r) => r.torque));
  const x = linear(0, most, left, right);
  const set = x(torque.value);
  const bottom = first + rows.length * rowHigh - 8;
  const setText = figure(torque.value);
  const half = (setText.length + 10) * 3.8;

  const [low, high] = [pull.low ?? pull.value, pull.high ?? pull.value];
  const pullTop = bottom + 60;
  const mostPull = 1.12 * Math.max(high, proof.value);
  const px = linear(0, mostPull, left, right);
  const force = (si: number) => quantityReading(si, kilo, kilo === 'kN' ? 1 : 0);
  const proofText = readingText(force(proof.value));
  const proofHalf = (proofText.length + 11) * 3.7;
  const description =
    `Torque for the same pull: ${rows.map((r) => `${r.name.toLowerCase()} ${figure(r.torque)}`).join(', ')}. ` +
    `At ${setText} the bolt pulls ${force(low).figure} to ${readingText(force(high))}; ` +
    `its proof load is ${proofText}.`;

  return (
    <Picture
      id={id}
      title="Torque by state of the thread, and the bolt's pull against its proof load"
      description={description}
      height={pullTop + 56}
      caption="Struck out: with friction at its lowest, that torque takes this thread past its proof load."
    >
      <text class="pic-text" x={Math.min(right - half, Math.max(left + half, set))} y={16} text-anchor="middle">
        wrench at <tspan class="pic-figure">{setText}</tspan>
      </text>
      {rows.map((r, i) => {
        const y = first + i * rowHigh;
        const stretches = r.torque / (share * (1 + r.scatter));
        return (
          <RangeRow
            key={r.name}
            name={r.name}
            figures={figure(r.torque)}
            y={y}
            x={x}
            low={0}
            high={r.torque}
            left={left}
            right={right}
            level={r.chosen ? 'note' : 'plain'}
            chosen={r.chosen}
          >
            {stretches < most && (
              <rect
                class="pic-forbidden"
                x={x(stretches).toFixed(1)}
                y={y + barTop}
                width={(right - x(stretches)).toFixed(1)}
                height={barHeight}
              />
            )}
          </RangeRow>
        );
      })}
      <Setting x={set} rows={rows.length} />
      <Axis
        x={(n) => x(n / toUnit(1, unit))}
        steps={niceSteps(0, toUnit(most, unit), 6)}
        y={bottom}
        left={left}
        right={right}
      />
      <text class="pic-text" x={Math.min(right - proofHalf, px(proof.value))} y={pullTop - 16} text-anchor="middle">
        proof load <tspan class="pic-figure">{proofText}</tspan>
      </text>
      <RangeRow
        name="pull on the bolt"
        figures={`${force(low).figure} to ${readingText(force(high))}`}
        y={pullTop + 4}
        x={px}
        low={low}
        mid={pull.value}
        high={high}
        left={left}
        right={right}
        level={high > proof.value ? 'caution' : 'good'}
      >
        <rect
          class="pic-forbidden"
          x={px(proof.value).toFixed(1)}
          y={pullTop + 4 + barTop}
          width={(right - px(proof.value)).toFixed(1)}
          height={barHeight}
        />
      </RangeRow>
      <path class="pic-limit" d={`M${px(proof.value).toFixed(1)} ${pullTop + 8}V${pullTop + 26}`} />
      <Axis
        x={(n) => px(n / toUnit(1, kilo))}
        steps={niceSteps(0, toUnit(mostPull, kilo), 6)}
        y={pullTop + 28}
        left={left}
        right={right}
      />
    </Picture>
  );
}

/** The wrench's setting runs through every bar but not through the words above them. */
function Setting({ x, rows }: { readonly x: number; readonly rows: number }) {
  const at = x.toFixed(1);
  const crossings = Array.from(
    { length: rows },
    (_, i) => `M${at} ${first + i * rowHigh + barTop - 3}v${barHeight + 6}`,
  ).join('');
  return <path class="pic-limit" d={`M${at} 21v8${crossings}`} />;
}
