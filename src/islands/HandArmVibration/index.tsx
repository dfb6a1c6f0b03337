/** A day’s vibration of several tools. */
import { compute, example, fields, title, words } from '../../core/topics/hand-arm-vibration/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };

export default function HandArmVibration(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} />;
}
