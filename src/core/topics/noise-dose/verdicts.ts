/** What the day means. Doses count without protectors; the limit of the EU alone counts with them. */
import type { VerdictValue } from '../../contract/result.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { Day, NoiseInputs } from './day.ts';
import { timeLeft, niosh } from './dose.ts';
import type { Protector } from './protector-values.ts';

type Data = NonNullable<VerdictValue['data']>;
const whole = (n: number) => Math.round(n);
const tenth = (n: number) => Math.round(n * 10) / 10;

function verdict(
  key: string,
  label: string,
  code: string,
  level: VerdictValue['level'],
  data: Data = {},
  main = true,
): VerdictValue {
  return { kind: 'verdict', key, label, code, level, data, main };
}

/** Verdicts on a day's dose [1] by the rules of the place. */
export function verdicts(i: NoiseInputs, day: Day, protector: Protector): VerdictValue[] {
  return [
    nioshVerdict(i, day),
    oshaVerdict(day),
    ...europe(day),
    ...(i.protector === 'none' || day.loudestWorn === undefined ? [] : [earVerdict(day.loudestWorn, protector)]),
    ...(isOver(day.loudest, 115)
      ? [verdict('ceiling', 'Ceiling', 'over-115', 'stop', { level: tenth(day.loudest) })]
      : []),
    verdict('check', 'Rules of your place', 'check-local', 'note', {}, false),
  ];
}

function nioshVerdict(i: NoiseInputs, day: Day): VerdictValue {
  const data = {
    dose: whole(day.nioshDose * 100),
    left: Math.floor(timeLeft(day.nioshDose, i.next, niosh) / 60),
    next: tenth(i.next),
  };
  if (isOver(day.nioshDose, 1)) return verdict('niosh', 'By NIOSH', 'niosh-over', 'stop', data);
  return verdict('niosh', 'By NIOSH', 'niosh-within', 'note', data);
}

function oshaVerdict(day: Day): VerdictValue {
  const data = { dose: whole(day.oshaDose * 100), limit: whole(day.oshaLimitDose * 100) };
  if (isOver(day.oshaLimitDose, 1)) return verdict('osha', 'By OSHA', 'osha-over', 'stop', data);
  if (isOver(day.oshaDose, 1)) return verdict('osha', 'By OSHA', 'osha-over-in-all', 'stop', data);
  if (!isUnder(day.oshaDose, 0.5)) return verdict('osha', 'By OSHA', 'osha-action', 'caution', data);
  return verdict('osha', 'By OSHA', 'osha-below', 'note', data);
}

function europe(day: Day): VerdictValue[] {
  if (day.level === undefined || day.levelAtEar === undefined) return [];
  const data = { bare: tenth(day.level), ear: tenth(day.levelAtEar) };
  const say = (code: string, level: VerdictValue['level']) => [
    verdict('europe', 'By EU and British law', code, level, data),
  ];
  if (isOver(day.levelAtEar, 87)) return say('eu-over-limit', 'stop');
  if (!isUnder(day.level, 85)) return say('eu-upper', 'caution');
  if (!isUnder(day.level, 80)) return say('eu-lower', 'caution');
  return say('eu-below', 'note');
}

function earVerdict(loudest: number, protector: Protector): VerdictValue {
  const ear = loudest - protector.credited;
  const data = { ear: tenth(ear), reduction: tenth(protector.credited) };
  const say = (code: string, level: VerdictValue['level']) => verdict('protectors', 'Protectors', code, level, data);
  if (!isOver(loudest, ear) || protector.reduction <= 0) return say('ear-nothing', 'stop');
  if (isOver(ear, 85)) return say('ear-loud', 'stop');
  if (isOver(ear, 80)) return say('ear-short', 'caution');
  if (isUnder(ear, 70)) return say('ear-deaf', 'caution');
  return say('ear-good', 'good');
}
