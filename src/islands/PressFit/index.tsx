/** What an interference fit presses, holds and takes to push together. */
import { compute, example, fields, title, words } from '../../core/topics/press-fit/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function PressFit(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
