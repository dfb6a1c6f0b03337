/** A compression reading against a healthy one, with the height taken out. */
import { compute, example, fields, title, words } from '../../core/topics/compression-check/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function CompressionCheck(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
