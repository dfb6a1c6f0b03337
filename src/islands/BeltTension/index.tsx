/** Belt length, wrap and the tension window, with the checks that show it. */
import { compute, example, fields, title, words } from '../../core/topics/belt-tension/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';
import { Listen } from './listen/Listen.tsx';

const topic = { title, fields, example, compute, words };

export default function BeltTension(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} underBox={{ frequency: Listen }} />;
}
