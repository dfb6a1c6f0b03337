/** How a belt climbs in a split pulley, and how many small turns that takes. */
import { compute, example, fields, title, words } from '../../core/topics/split-pulley/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function SplitPulley(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
