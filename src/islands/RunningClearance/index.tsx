/** What fits and heat leave of a bearing's clearance. */
import { compute, example, fields, title, words } from '../../core/topics/running-clearance/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function RunningClearance(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
