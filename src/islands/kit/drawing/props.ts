import type { Inputs } from '../../../core/contract/field.ts';
import type { Answer } from '../../../core/contract/result.ts';
import type { Reader } from '../state/reading.ts';

/** What a drawing is made from: the same SI inputs and answer the figures beside it come from. */
export interface DrawingProps {
  /** Begins the ids of the picture's title and description. */
  readonly id: string;
  readonly answer: Answer;
  readonly inputs: Inputs;
  readonly reader: Reader;
}
