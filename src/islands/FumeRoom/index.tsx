/** How fast an engine fills a room with carbon monoxide. */
import { compute, example, fields, title, words } from '../../core/topics/fume-room/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function FumeRoom(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
