/** The bearing cut through its axis, and each caliper reading against the standard sizes round it. */
import { bearings } from '../../core/topics/bearing-size/index.ts';
import { formatIn, formatQuantity, pick } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Picture, type DrawingProps } from '../kit/index.ts';
import { Section } from './Section.tsx';
import { Strip } from './Strip.tsx';

type Size = 'bore' | 'outside' | 'width';

const sizes: readonly Size[] = ['bore', 'outside', 'width'];
const distinct = (key: Size) => [...new Set(bearings.map((b) => b[key]))].sort((a, b) => a - b);
const standard = { bore: distinct('bore'), outside: distinct('outside'), width: distinct('width') };

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const text = (si: number) => formatQuantity(si, ['mm', 'in'], reader.system);
  if (inputs['known'] === 'designation') {
    const [bore, outside, width] = ['nominalBore', 'nominalOutside', 'nominalWidth'].map(
      (key) => valueOf(answer, key, 'quantity').value,
    ) as [number, number, number];
    const name = valueOf(answer, 'designation', 'text').value;
    const fresh = (key: string) => {
      const found = answer.values.find((v) => v.key === key);
      return found?.kind === 'quantity' && found.low !== undefined
        ? `new, ${limit(found.low, reader.system)} to ${limit(found.value * 2 - found.low, reader.system)}`
        : '';
    };
    const lines = [
      { name: `bore ${text(bore)}`, more: fresh('boreLimits') },
      { name: `outside ${text(outside)}`, more: fresh('outsideLimits') },
      { name: `width ${text(width)}`, more: '' },
    ];
    return (
      <Picture
        id={id}
        title={`Bearing ${name} to scale`}
        description={`${name}: ${lines.map((l) => `${l.name}${l.more && `, ${l.more}`}`).join('; ')}.`}
        height={236}
      >
        <Section bore={bore} outside={outside} width={width} guess={false} />
        {lines.map((l, i) => (
          <g key={l.name}>
            <text class="pic-text" x={172} y={64 + i * 50}>
              {l.name}
            </text>
            {l.more && (
              <text class="pic-text pic-quiet" x={172} y={83 + i * 50}>
                {l.more}
              </text>
            )}
          </g>
        ))}
      </Picture>
    );
  }
  const read = Object.fromEntries(sizes.map((s) => [s, Number(inputs[s])])) as Record<Size, number>;
  const [name = '', ...best] = valueOf(answer, 'candidates', 'table').rows[0] ?? [];
  const nominal = Object.fromEntries(sizes.map((s, i) => [s, Number(best[i])])) as Record<Size, number>;
  const fits = valueOf(answer, 'match', 'verdict').code !== 'none-fits';
  const drawn = fits ? nominal : read;
  const description =
    `${fits ? `Bearing ${name} to scale` : `No bearing fits; nearest is ${name}`}. ` +
    `${sizes.map((s) => `${s} read ${text(read[s])}, standard ${text(nominal[s])}`).join('; ')}.`;
  return (
    <Picture
      id={id}
      title="The readings against the nearest standard sizes"
      description={description}
      height={240}
      caption={`Dark triangle: your reading, and beside its name how far it is from ${name}${fits ? '' : ', the nearest'}.`}
    >
      <Section {...drawn} guess={!fits} />
      {sizes.map((s, i) => (
        <Strip
          key={s}
          name={s}
          top={22 + i * 74}
          read={read[s]}
          nominal={nominal[s]}
          standard={standard[s]}
          allow={Number(inputs['allow'])}
          reader={reader}
        />
      ))}
    </Picture>
  );
}

function limit(si: number, system: DrawingProps['reader']['system']): string {
  return formatIn(si, pick(['mm', 'in'] as const, system), pick([3, 4] as const, system)).split('\u00a0')[0] ?? '';
}
