/** When a service is due, for one machine or the yard, and whether a part should be replaced by the clock. */
import { compute, example, fields, title, words } from '../../core/topics/service-interval/index.ts';
import { Workbench, type IslandProps } from '../kit/index.ts';
import { DueDesk } from './DueDesk.tsx';
import { Drawing } from './Drawing.tsx';
import { toToday } from './to-today.ts';

const topic = { title, fields, example, compute, words };

export default function ServiceInterval(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} takeAway={DueDesk} toToday={toToday} />;
}
