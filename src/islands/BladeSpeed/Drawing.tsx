/** The blade in the slab, to scale, and its rim speed on a ladder against the marked limit. */
import { surfaceSpeed } from '../../core/topics/blade-speed/index.ts';
import { formatIn, formatQuantity, pick, toUnit, type UnitKey } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Ladder, Picture, type DrawingProps } from '../kit/index.ts';
import { SingleScene } from './SingleScene.tsx';
import { TwinScene } from './TwinScene.tsx';

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const [diameter, flange] = [Number(inputs['diameter']), Number(inputs['flange'])];
  const speed = valueOf(answer, 'speed', 'quantity').value;
  const limitRotation = valueOf(answer, 'limitRotation', 'quantity').value;
  const level = valueOf(answer, 'verdict', 'verdict').level;
  const size = (key: string) => {
    const found = answer.values.find((v) => v.key === key);
    return found?.kind === 'quantity' ? found.value : 0;
  };
  const [depth, pass] = [size('depth'), size('passDepth')];
  const twin = inputs['head'] === 'twin' && depth > 0;

  const length = (si: number) => formatQuantity(si, ['mm', 'in'], reader.system, [0, 2]);
  const limit = surfaceSpeed(diameter, limitRotation);
  const unit = pick<UnitKey>(['m/s', 'ft/min'], reader.system);
  const cuts = depth > 0 ? `${length(depth)} deep` : 'nothing';
  const how = twin
    ? `Two ${length(diameter)} blades on an arm cut ${cuts} in plunges of at most ${length(pass)}; half the blade is ${length(diameter / 2)}.`
    : `A ${length(diameter)} blade, flange ${length(flange)}, cuts ${cuts}.`;

  return (
    <Picture
      id={id}
      title="Blade in the slab and speed against the marking"
      description={`${how} Its rim runs at ${formatIn(speed, unit)}; the marked limit is ${formatIn(limit, unit)}.`}
      height={352}
    >
      {twin ? (
        <TwinScene diameter={diameter} depth={depth} pass={pass} length={length} />
      ) : (
        <SingleScene diameter={diameter} flange={flange} depth={depth} length={length} />
      )}
      <Ladder
        top={276}
        value={toUnit(speed, unit)}
        limit={toUnit(limit, unit)}
        level={level}
        valueLabel="this blade"
        valueText={formatIn(speed, unit)}
        limitLabel="marked limit"
        limitText={formatIn(limit, unit)}
      />
    </Picture>
  );
}
