import type { IslandProps } from '../state/props.ts';
import type { Worked } from '../state/use-calculation.ts';

/** What a sheet or a file is made from. Only shown while the page is alive and has an answer. */
export interface TakeAwayProps {
  readonly page: IslandProps;
  readonly worked: Worked;
  /** True while the boxes have moved on from the answer: nothing may be printed or saved then. */
  readonly stale: boolean;
}
