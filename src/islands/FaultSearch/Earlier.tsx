/** Said of a part while its plan is of earlier answers. Once scripts run always there, so that nothing is laid out for it. */
import { faultWords as say } from '../../words/fault.ts';

export function Earlier({ live }: { readonly live: boolean }) {
  return live ? <span class="fault-earlier no-print">{say.earlier}</span> : null;
}
