/** A day’s noise against both rules of dose. */
import { compute, example, fields, title, words } from '../../core/topics/noise-dose/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function NoiseDose(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
