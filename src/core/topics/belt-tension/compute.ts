import type { Caution, Result, Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { checkValues } from './checks.ts';
import { beltValues, consequenceValues } from './consequences.ts';
import { driveValues, solveDrive } from './drive.ts';
import { fields } from './fields.ts';
import { readingValues } from './reading.ts';
import { setValues } from './set.ts';
import { settingValues, solveSetting } from './setting.ts';

const cautions: readonly Caution[] = [{ hazard: 'moving-belt', level: 'warning' }];

export const compute = guarded(fields, (inputs): Result => {
  const drive = solveDrive(inputs);
  if ('code' in drive) return { ok: false, problems: [drive] };
  const setting = solveSetting(inputs, drive.value);
  const reading = readingValues(inputs, drive.value, setting.value);
  if ('code' in reading) return { ok: false, problems: [reading] };
  const set = setValues(inputs, drive.value, setting.value);
  if ('code' in set) return { ok: false, problems: [set] };
  const belt = beltValues(inputs, drive.value, setting.value);
  const checks = checkValues(inputs, drive.value, setting.value);
  const consequences = consequenceValues(inputs, drive.value, setting.value);
  // Where no tension is right, none is told: measured figures stay, advice on setting and good words on grip go.
  const unfit =
    belt.value.some((v) => v.kind === 'verdict' && v.code === 'belt-overloaded') ||
    set.value.some((v) => v.kind === 'verdict' && v.code === 'set-mixed');
  const tooTight = reading.value.some((v) => v.kind === 'verdict' && v.code === 'belt-too-tight');
  return {
    ok: true,
    values: [
      // That the belt cannot be this drive's belt is read before any tension for it.
      ...belt.value.filter((v) => v.kind === 'verdict'),
      ...(unfit ? set.value.filter((v) => v.kind === 'verdict') : []),
      ...reading.value.filter((v) => !unfit || v.kind !== 'verdict' || v.level === 'stop'),
      ...set.value.filter((v) => !unfit || v.kind !== 'verdict'),
      ...[...settingValues(inputs, setting.value), ...checks.value].map((v) => (unfit ? aside(v) : v)),
      ...driveValues(inputs, drive.value),
      ...belt.value.filter((v) => v.kind !== 'verdict'),
      ...consequences.value.filter((v) => !unfit || v.kind !== 'verdict' || v.level !== 'good'),
    ],
    working: [drive, setting, belt, checks, reading, set, consequences].flatMap((part) => part.steps),
    cautions: tooTight ? [{ hazard: 'belt-over-tension', level: 'notice' }, ...cautions] : cautions,
  };
});

/** A figure that heads nothing. */
function aside(v: Value): Value {
  return v.kind === 'quantity' && v.main === true ? { ...v, main: false } : v;
}
