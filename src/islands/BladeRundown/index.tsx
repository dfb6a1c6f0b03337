/** What a turning blade holds, how long it turns on, how true it runs. */
import { compute, example, fields, title, words } from '../../core/topics/blade-rundown/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function BladeRundown(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
