import type { WorkingStep } from '../../contract/formula.ts';
import type { Caution, Result } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { checkValues } from './check-values.ts';
import { consequenceValues } from './consequence-values.ts';
import { driveValues, settingValues } from './drive-values.ts';
import { solveDrive } from './drive.ts';
import { fields } from './fields.ts';
import { readingValues } from './reading.ts';
import { solveSetting } from './setting.ts';

const cautions: readonly Caution[] = [{ hazard: 'moving-belt', level: 'danger' }];

export const compute = guarded(fields, (inputs): Result => {
  const working: WorkingStep[] = [];
  const drive = solveDrive(inputs, working);
  if ('code' in drive) return { ok: false, problems: [drive] };
  const setting = solveSetting(inputs, drive, working);
  const checks = checkValues(inputs, drive, setting, working);
  const reading = readingValues(inputs, drive, setting, working);
  if ('code' in reading) return { ok: false, problems: [reading] };
  const values = [
    ...reading,
    ...settingValues(inputs, setting),
    ...checks,
    ...driveValues(inputs, drive),
    ...consequenceValues(inputs, drive, setting, working),
  ];
  const tooTight = reading.some((v) => v.kind === 'verdict' && v.code === 'belt-too-tight');
  return {
    ok: true,
    values,
    working,
    cautions: tooTight ? [{ hazard: 'belt-over-tension', level: 'notice' }, ...cautions] : cautions,
  };
});
