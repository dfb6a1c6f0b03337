/** What the rules ask of dusty work, and what measured air means. */
import { compute, example, fields, title, words } from '../../core/topics/dust-control/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function DustControl(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
