/** The fills a cut takes, the last one as full as it must be, and below them what has to be carried away. */
import { formatNumber } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { linear, Picture, readingOf, readingText, StackBar, StackList, type DrawingProps } from '../kit/index.ts';

const [left, right] = [8, 352];
/** As many vessels as stand in one row; more are said in figures. */
const most = 10;
const vessel = { wide: 26, tall: 58, gap: 9, bottom: 92 };

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const get = (key: string) => valueOf(answer, key, 'quantity');
  const text = (key: string) => readingText(readingOf(get(key), get(key).value, reader));
  const found = answer.values.find((v) => v.key === 'fills');
  const fills = found?.kind === 'count' ? found.value : undefined;
  const tank = Number(inputs['tank'] ?? 0);
  const [water, stone] = [get('water').value, get('stone').value];
  const shown = fills === undefined ? 0 : Math.min(fills, most);
  const name = inputs['supply'] === 'bottle' ? 'bottles' : 'tanks';
  const head =
    fills === undefined
      ? `Water from the hose: ${text('water')} in ${text('time')}`
      : `${formatNumber(fills)} ${name} for ${text('water')}, one every ${text('fillLasts')}`;
  const top = fills === undefined ? 46 : 128;
  return (
    <Picture
      id={id}
      title="Water to bring, slurry to take away"
      description={
        `${head}. With ${text('stone')} of stone that makes ${text('slurry')} of slurry; ` +
        `${text('collect')} of it must be taken up and carried away.`
      }
      height={top + 84}
      caption={
        'Slurry to scale: water and stone of this ' +
        `cut.${fills !== undefined && fills > most ? ` The first ${most} of ${formatNumber(fills)} ${name} are drawn.` : ''}`
      }
    >
      <text class="pic-text" x={left} y={16}>
        {head}
      </text>
      {Array.from({ length: shown }, (_, k) => {
        const share = tank > 0 ? Math.min(1, Math.max(0, water / tank - k)) : 0;
        const x = left + k * (vessel.wide + vessel.gap);
        const full = share * (vessel.tall - 4);
        return (
          <g key={k}>
            <rect
              class="pic-water"
              x={x}
              y={(vessel.bottom - full).toFixed(1)}
              width={vessel.wide}
              height={full.toFixed(1)}
            />
            <path
              class="pic-vessel"
              d={
                `M${x + 8} ${vessel.bottom - vessel.tall - 8}v6L${x} ` +
                `${vessel.bottom - vessel.tall + 4}V${vessel.bottom}h${vessel.wide}V${vessel.bottom - vessel.tall + 4}L${x + vessel.wide - 8} ` +
                `${vessel.bottom - vessel.tall - 2}v-6z`
              }
            />
          </g>
        );
      })}
      <StackBar
        name="Slurry"
        figure={text('slurry')}
        y={top}
        x={linear(0, Math.max(water + stone, 1e-12), left, right)}
        left={left}
        right={right}
        parts={[
          { number: 1, value: water },
          { number: 2, value: stone },
        ]}
      />
      <StackList x={left} y={top + 52} names={[`water, ${text('water')}`, `stone ground out, ${text('stone')}`]} />
    </Picture>
  );
}
