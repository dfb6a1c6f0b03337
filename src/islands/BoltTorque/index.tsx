/** Torque of a bolt by size, class and state of its thread. */
import { compute, example, fields, title, words } from '../../core/topics/bolt-torque/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function BoltTorque(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
