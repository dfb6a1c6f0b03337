/** The blade face on and edge on, and how it slows down. */
import { formatIn, formatQuantity } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Picture, readingOf, readingText, TextLines, type DrawingProps } from '../kit/index.ts';
import { SlowingDown } from './SlowingDown.tsx';
import { enlargement, Wobble } from './Wobble.tsx';

const centre = { x: 86, y: 128 };
const radius = 76;
const edge = 282;

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const get = (key: string) => valueOf(answer, key, 'quantity');
  const text = (key: string) => readingText(readingOf(get(key), get(key).value, reader));
  const input = (key: string) => Number(inputs[key]);
  const [diameter, bore, flange] = [input('diameter'), input('bore'), input('flange')];
  const scale = (2 * radius) / diameter;
  const length = (si: number) => formatQuantity(si, ['mm', 'in'], reader.system, [0, 2]);
  const fine = (si: number) => formatQuantity(si, ['mm', 'thou'], reader.system, [2, 0]);
  const read = typeof inputs['runOut'] === 'number' ? inputs['runOut'] : undefined;
  const [runOut, limit] = [read ?? get('dirtRunOut').value, get('runOutLimit').value];
  const times = enlargement(runOut, limit, scale);
  const hub = Math.min(1, flange / diameter);
  const timesText = times >= 1 ? `${times} times as large` : 'smaller than they are';
  const energy = text('energy');
  const description =
    `A ${length(diameter)} blade with a ${length(bore)} bore turns at ` +
    `${formatIn(input('rotation'), 'rpm', 0)} and holds ${energy}, as much as the saw falling from ` +
    `${text('drop')}. It stands after ${text('time')}. ` +
    `${read === undefined ? 'Dirt under the flange would make it run out' : 'It runs out'} ` +
    `${fine(runOut)} at the rim; ${fine(limit)} is allowed.`;
  return (
    <Picture
      id={id}
      title="The blade, its wobble, and how it slows down"
      description={description}
      height={432}
      caption={
        `Face to scale. From the edge, lean and limit are drawn ${timesText}: solid now, broken half a turn ` +
        'later, band the run-out allowed. ' +
        `${read === undefined ? 'The lean is the one that the dirt under the flange would make. ' : ''}At ` +
        'half that time the blade still turns at half speed, with a quarter of its energy.'
      }
    >
      <circle class="pic-steel" cx={centre.x} cy={centre.y} r={radius} />
      <circle class="pic-rim" cx={centre.x} cy={centre.y} r={radius} />
      <circle class="pic-part" cx={centre.x} cy={centre.y} r={hub * radius} />
      <circle class="pic-bore" cx={centre.x} cy={centre.y} r={Math.max(1.5, (bore / 2) * scale)} />
      <path class="pic-turn" d={turning()} />
      <TextLines
        x={8}
        y={16}
        lines={[
          ['It holds', energy],
          ['as the saw falling from', text('drop')],
        ]}
        step={18}
      />
      <TextLines
        x={centre.x}
        y={centre.y + radius + 22}
        lines={[
          ['blade', length(diameter)],
          ['bore', formatQuantity(bore, ['mm', 'in'], reader.system, [1, 2])],
        ]}
        anchor="middle"
      />
      <Wobble
        x={edge}
        y={centre.y}
        radius={radius}
        scale={scale}
        flange={hub}
        runOut={runOut}
        limit={limit}
        times={times}
        over={read !== undefined && runOut > limit}
        lines={[
          [read === undefined ? 'from dirt' : 'runs out', fine(runOut)],
          ['allowed', fine(limit)],
        ]}
      />
      <SlowingDown top={276} time={get('time').value} speedText={formatIn(input('rotation'), 'rpm', 0)} />
    </Picture>
  );
}

/** An arc with a head: the blade turns. */
function turning(): string {
  const r = radius - 11;
  const [x, y] = [centre.x + r * Math.sin(0.4), centre.y - r * Math.cos(0.4)];
  return (
    `M${(centre.x - r * Math.sin(0.4)).toFixed(1)} ${y.toFixed(1)}A${r} ${r} 0 0 1 ${x.toFixed(1)} ` +
    `${y.toFixed(1)}m-9 -7l9 7l-10.5 3.5`
  );
}
