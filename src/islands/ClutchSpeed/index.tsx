/** When the shoes of the clutch reach the drum, against idle. */
import { compute, example, fields, title, words } from '../../core/topics/clutch-speed/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { engineEar } from '../listen/engine/EngineEar.tsx';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };
const underBox = { idle: engineEar('idle'), engages: engineEar('take-hold'), running: engineEar('full') };

export default function ClutchSpeed(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} underBox={underBox} />;
}
