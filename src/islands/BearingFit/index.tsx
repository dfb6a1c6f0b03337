/** How tight a bearing ring sits, cold and warm, on its shaft or in its housing. */
import { compute, example, fields, title, words } from '../../core/topics/bearing-fit/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function BearingFit(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
