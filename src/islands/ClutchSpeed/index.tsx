/** When the shoes of the clutch reach the drum, against idle. */
import { compute, example, fields, title, words } from '../../core/topics/clutch-speed/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function ClutchSpeed(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
