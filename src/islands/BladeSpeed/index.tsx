/** Surface speed against the marking, and depth of cut. */
import { compute, example, fields, title, words } from '../../core/topics/blade-speed/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { engineEar } from '../listen/engine/EngineEar.tsx';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };
const underBox = { engine: engineEar('full') };

export default function BladeSpeed(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} underBox={underBox} />;
}
