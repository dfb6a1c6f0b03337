/** Limits of a tolerance zone, the fit of two, and the usual bearing seats of that size. */
import { compute, example, fields, title, words } from '../../core/topics/limits-fits/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function LimitsFits(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
