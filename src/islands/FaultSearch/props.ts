/** What a complaint page hands over: the model the core plans with, and the words for people. */
import type { FaultModel, Plan, PlannedCheck } from '../../core/topics/fault-order/index.ts';
import type { CautionLevel } from '../../core/contract/result.ts';

export interface CheckWords {
  /** State the machine must be in first. */
  readonly conditions?: string | undefined;
  /** How the check is done. */
  readonly how: string;
  /** Its own cautions, by id. */
  readonly hazards: readonly string[];
  /** Kinds of machine it is for; all, when left out. */
  readonly kinds?: readonly string[] | undefined;
}

export interface SuspectWords {
  readonly why: string;
  /** Page that tells how to put it right. */
  readonly fix?: { readonly path: string; readonly title: string } | undefined;
  readonly kinds?: readonly string[] | undefined;
}

export interface ShownCaution {
  readonly level: CautionLevel;
  readonly title: string;
  readonly say: string;
  /** The one order that matters most. */
  readonly first: string;
  readonly do: readonly string[];
}

/** What the page shows of a plan. It travels inside the HTML, so it holds no more. */
export interface ShownPlan extends Pick<
  Plan,
  'belief' | 'found' | 'next' | 'stop' | 'answered' | 'method' | 'expectedMinutes'
> {
  readonly ranking: readonly Pick<PlannedCheck, 'id' | 'minutes'>[];
  readonly path: readonly Pick<PlannedCheck, 'id' | 'minutes'>[];
}

export interface FaultSearchProps {
  /** File name of the complaint; names what is kept on this device. */
  readonly id: string;
  readonly title: string;
  readonly model: FaultModel;
  /** Made from the model with the page. */
  readonly atRest: ShownPlan;
  readonly checks: Readonly<Record<string, CheckWords>>;
  readonly suspects: Readonly<Record<string, SuspectWords>>;
  readonly cautions: Readonly<Record<string, ShownCaution>>;
  /** Cautions of the page that no check claims for itself. */
  readonly general: readonly string[];
  /** What taking the machine down fully takes [min]. */
  readonly wayOutMinutes: number;
  /** Kind of each machine of the site, by id. */
  readonly kinds: Readonly<Record<string, string>>;
}
