/** The can with gasoline and oil to scale, and beside it the small measure with the part that is poured in, larger. */
import { formatNumber, pick, toUnit, unitLabel } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Picture, readingOf, readingText, TextLines, type DrawingProps } from '../kit/index.ts';
import { Jug, type Layer } from './Jug.tsx';

const bottom = 232;
const tall = 178;

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const find = (key: string) => {
    const value = answer.values.find((v) => v.key === key);
    return value?.kind === 'quantity' ? value : undefined;
  };
  const text = (key: string) => {
    const value = find(key);
    return value ? readingText(readingOf(value, value.value, reader)) : '';
  };
  const [addFuel, addOil] = [find('addFuel')?.value ?? 0, find('addOil')?.value ?? 0];
  const mixed = find('addOil') !== undefined;
  const [fuelKey, oilKey] = mixed ? ['fuelNow', 'oilNow'] : ['fuel', 'oil'];
  const [fuel, oil] = [valueOf(answer, fuelKey, 'quantity').value, valueOf(answer, oilKey, 'quantity').value];
  const ratio = formatNumber(Number(inputs['ratio']));
  const large = pick(['L', 'gal'] as const, reader.system);
  const small = pick(['mL', 'fl oz'] as const, reader.system);
  const can: Layer[] = [
    { key: 'fuel', volume: toUnit(fuel, large), look: 'fuel' },
    { key: 'oil', volume: toUnit(oil, large), look: 'oil' },
    { key: 'add-fuel', volume: toUnit(addFuel, large), look: 'add-fuel' },
    { key: 'add-oil', volume: toUnit(addOil, large), look: 'add-oil' },
  ];
  const poured = mixed ? addOil : oil;
  const times = poured > 0 ? (fuel + oil + addFuel + addOil) / poured : 0;
  const description = mixed
    ? `A can with ${text(fuelKey)} of gasoline and ${text(oilKey)} of oil. ` +
      `For ${ratio} to 1 add ${addOil > 0 ? `${text('addOil')} of oil` : addFuel > 0 ? `${text('addFuel')} of gasoline` : 'nothing'}.`
    : `A can with ${text(fuelKey)} of gasoline and ${text(oilKey)} of oil, ${ratio} to 1. ` +
      `The oil is 1 part in ${formatNumber(times, 0)} of the mix.`;
  const beside =
    mixed && addOil === 0
      ? addFuel > 0
        ? [['add gasoline', text('addFuel')] as const, 'until the can stands', 'at the broken line']
        : ['nothing to add']
      : [[mixed ? 'add oil' : 'oil', poured > 0 ? text(mixed ? 'addOil' : oilKey) : ''] as const];
  return (
    <Picture
      id={id}
      title={mixed ? 'What is in the can and what goes in' : 'Gasoline and oil to scale'}
      description={description}
      height={262}
      caption={
        poured > 0
          ? 'Both to scale, each with its own rule: the oil measure on the right is drawn larger than the can. ' +
            'Oil floats on the gasoline here only to be seen; shake the can.'
          : 'To scale. Broken outline: what goes in.'
      }
    >
      <TextLines
        x={8}
        y={18}
        lines={[
          ['gasoline', text(fuelKey)],
          ['oil', text(oilKey)],
        ]}
      />
      <Jug x={58} bottom={bottom} tall={tall} wide={96} layers={can} unit={unitLabel(large)} />
      {poured > 0 ? (
        <Jug
          x={246}
          bottom={bottom}
          tall={tall}
          wide={56}
          layers={[{ key: 'poured', volume: toUnit(poured, small), look: mixed ? 'add-oil' : 'oil' }]}
          unit={unitLabel(small)}
        />
      ) : null}
      <TextLines x={196} y={18} lines={beside} />
    </Picture>
  );
}
