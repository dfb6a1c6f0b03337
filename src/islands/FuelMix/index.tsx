/** Oil for the gasoline, and a wrong can put right. */
import { compute, example, fields, title, words } from '../../core/topics/fuel-mix/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function FuelMix(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
