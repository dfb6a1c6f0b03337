/** The zone asked for against the line of nominal size, with the other part's beside it; below, the usual bearing seats of that size. */
import { formatIn, formatNumber, pick, toUnit, type UnitKey } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { linear, niceSteps, Picture, quantityReading, spreadOut, type DrawingProps } from '../kit/index.ts';
import { Seats, type Block } from './Seats.tsx';

const plot = { top: 32, bottom: 138, left: 44, right: 356 };

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const n = (key: string) => valueOf(answer, key, 'quantity').value;
  const size = Number(inputs['size']);
  const unit: UnitKey = pick(['µm', 'thou'], reader.system);
  const sizeText = formatIn(size, pick(['mm', 'in'] as const, reader.system));
  const name = valueOf(answer, 'zoneName', 'text').value;
  const own: Block = { name, upper: n('upper'), lower: n('lower') };
  const pair = answer.values.find((v) => v.key === 'fitName');
  const mateName = pair?.kind === 'text' ? pair.value.split('/').find((z) => z !== name) : undefined;
  const mate: Block | undefined =
    mateName === undefined ? undefined : { name: mateName, upper: n('mateUpper'), lower: n('mateLower') };
  const hole = /^[A-Z]/.test(name);
  const seats = valueOf(answer, 'seats', 'table').rows.map(([zone, upper, lower]): Block => ({
    name: String(zone),
    upper: Number(upper),
    lower: Number(lower),
  }));

  const blocks = mate ? [own, mate] : [own];
  const all = [0, ...blocks.flatMap((b) => [b.upper, b.lower])];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const y = linear(low, high, plot.bottom, plot.top);
  const signed = (si: number) => `${si > 5e-8 ? '+' : ''}${quantityReading(si, unit).figure}`;
  const places = mate
    ? [
        { block: own, x: 112, words: 107, end: true },
        { block: mate, x: 210, words: 285, end: false },
      ]
    : [{ block: own, x: 160, words: 155, end: true }];
  const top = plot.bottom + (mate ? 90 : 66);
  const interference = mate && valueOf(answer, 'interference', 'quantity');
  const fitText = interference
    ? `interference ${signed(interference.low ?? 0)} to ${signed(interference.high ?? 0)} ${unit}`
    : '';
  const description =
    `From ${sizeText}: ${blocks.map((b) => `${b.name} ${signed(b.lower)} to ${signed(b.upper)} ${unit}`).join(', ')}.${fitText && ` Together: ${fitText}; below zero is clearance.`} ` +
    `Usual ${hole ? 'housing' : 'shaft'} seats: ` +
    `${seats.map((s) => `${s.name} ${signed(s.lower)} to ${signed(s.upper)}`).join(', ')}.`;

  return (
    <Picture
      id={id}
      title={`${sizeText} ${name} and the usual bearing seats`}
      description={description}
      height={top + 142}
      {...(mate
        ? {
            caption: inView(mate, seats)
              ? `The band behind the seats is ${mate.name}.`
              : `${mate.name} lies off the scale of the seats.`,
          }
        : {})}
    >
      <text class="pic-text" x={4} y={15}>
        {unit} from {sizeText}
      </text>
      {niceSteps(toUnit(low, unit), toUnit(high, unit), 4).map((s) => (
        <g key={s}>
          <path class="pic-grid" d={`M${plot.left} ${y(s / toUnit(1, unit)).toFixed(1)}H${plot.right}`} />
          <text class="pic-tick" x={plot.left - 5} y={y(s / toUnit(1, unit)) + 4} text-anchor="end">
            {s > 0 ? '+' : ''}
            {formatNumber(s)}
          </text>
        </g>
      ))}
      <path class="pic-limit" d={`M${plot.left} ${y(0).toFixed(1)}H${plot.right}`} />
      {places.map(({ block, x, words, end }, i) => {
        const [a = 0, b = 0] = spreadOut([y(block.upper) + 4, y(block.lower) + 4], 16, plot.top + 2, plot.bottom + 6);
        const anchor = end ? 'end' : 'start';
        return (
          <g key={block.name}>
            <rect
              class={i === 0 ? 'pic-zone-a' : 'pic-zone-b'}
              x={x}
              y={Math.min(y(block.upper), plot.bottom - 2).toFixed(1)}
              width={70}
              height={Math.max(2, y(block.lower) - y(block.upper)).toFixed(1)}
            />
            <text class="pic-figure pic-halo" x={words} y={a} text-anchor={anchor}>
              {signed(block.upper)}
            </text>
            <text class="pic-figure pic-halo" x={words} y={b} text-anchor={anchor}>
              {signed(block.lower)}
            </text>
            <text class="pic-text" x={x + 35} y={plot.bottom + 22} text-anchor="middle">
              {/^[A-Z]/.test(block.name) ? 'hole' : 'shaft'} {block.name}
            </text>
          </g>
        );
      })}
      {fitText && (
        <text class="pic-text" x={200} y={plot.bottom + 44} text-anchor="middle">
          {fitText}
        </text>
      )}
      {seats.length > 0 && (
        <Seats top={top} height={100} seats={seats} chosen={name} mate={mate} hole={hole} unit={unit} />
      )}
    </Picture>
  );
}

function inView(mate: Block, seats: readonly Block[]): boolean {
  return (
    mate.lower < Math.max(0, ...seats.map((s) => s.upper)) && mate.upper > Math.min(0, ...seats.map((s) => s.lower))
  );
}
