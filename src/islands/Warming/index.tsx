/** How warm a housing or a bearing must be to go together without force, and how long it stays open. */
import { compute, example, fields, title, words } from '../../core/topics/warming/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function Warming(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
