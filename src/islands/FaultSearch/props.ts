/** What a complaint page hands over: the model the core plans with, and the words for people. */
import type { FaultModel } from '../../core/topics/fault-order/index.ts';

export interface CheckWords {
  /** How the check is done. */
  readonly how: string;
}

export interface SuspectWords {
  readonly why: string;
  /** Page that tells how to put it right. */
  readonly fix?: { readonly path: string; readonly title: string } | undefined;
}

export interface FaultSearchProps {
  /** File name of the complaint; names what is kept on this device. */
  readonly id: string;
  readonly model: FaultModel;
  readonly checks: Readonly<Record<string, CheckWords>>;
  readonly suspects: Readonly<Record<string, SuspectWords>>;
}
