/** Water, time and slurry of a wet cut. */
import { compute, example, fields, title, words } from '../../core/topics/water-supply/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function WaterSupply(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
