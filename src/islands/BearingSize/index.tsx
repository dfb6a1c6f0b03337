/** Which bearing it is, from three caliper readings or the number on its ring. */
import { compute, example, fields, title, words } from '../../core/topics/bearing-size/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function BearingSize(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
