import { guarded } from '../../contract/guarded.ts';
import type { Result } from '../../contract/result.ts';
import { fields } from './fields.ts';
import { byMeasurement } from './measured.ts';
import { byTask } from './tasks.ts';

export const compute = guarded(fields, (i): Result => (i.way === 'measured' ? byMeasurement(i) : byTask(i)));
