/** Hours a bearing lasts by load and speed, clean and in slurry. */
import { compute, example, fields, title, words } from '../../core/topics/bearing-life/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function BearingLife(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
