import { step, type WorkingStep } from '../../contract/formula.ts';
import type { NumberValue, QuantityValue, Value } from '../../contract/result.ts';
import { eightHours } from '../../exposure/index.ts';
import type { Day, NoiseInputs } from './day.ts';
import {
  allowedTime,
  niosh,
  nioshAverage,
  noisePoints,
  osha,
  oshaAverage,
  timeLeft,
  timeLeftToLevel,
  type Rule,
} from './dose.ts';
import * as f from './formulas.ts';

export interface Part {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

const share = (key: string, label: string, value: number, main = false, source?: string): QuantityValue => ({
  kind: 'quantity',
  key,
  label,
  value,
  units: ['%', '%'],
  decimals: [0, 0],
  main,
  ...(source === undefined ? {} : { source }),
});
const decibel = (key: string, label: string, value: number | undefined): NumberValue[] =>
  value === undefined ? [] : [{ kind: 'number', key, label, value, decimals: 1 }];
const minutes = (key: string, label: string, value: number, main = false): QuantityValue => ({
  kind: 'quantity',
  key,
  label,
  value,
  units: ['min', 'min'],
  decimals: [0, 0],
  main,
});

/** Doses and averages, with nothing on the ears: that is how the laws count them. */
export function dosePart(day: Day): Part {
  const table: Value = {
    kind: 'table',
    key: 'each',
    label: 'Each part of the day',
    columns: [
      { key: 'what', label: 'What' },
      { key: 'level', label: 'dB(A)', decimals: 1 },
      { key: 'time', label: 'Time', units: ['min', 'min'], decimals: 0 },
      { key: 'osha', label: 'OSHA dose', units: ['%', '%'], decimals: 1 },
      { key: 'niosh', label: 'NIOSH dose', units: ['%', '%'], decimals: 1 },
      { key: 'ear', label: 'At the ear, dB(A)', decimals: 1 },
    ],
    rows: day.bare.map((p, k) => [
      day.names[k] ?? '',
      p.level,
      p.time,
      p.time / allowedTime(p.level, osha),
      p.time / allowedTime(p.level, niosh),
      day.atEar[k]?.level ?? p.level,
    ]),
  };
  const values: Value[] = [
    share('nioshDose', 'NIOSH dose, bare ears', day.nioshDose, true),
    share('oshaDose', 'OSHA dose, bare ears', day.oshaDose, true),
    share(
      'oshaLimitDose',
      'OSHA dose for the limit: levels from 90 dB(A) up',
      day.oshaLimitDose,
      false,
      'middendorf-1983',
    ),
    ...(day.oshaTableDose === undefined
      ? []
      : [share('oshaTableDose', 'OSHA dose by its printed table, levels rounded up', day.oshaTableDose)]),
    ...decibel('oshaTwa', 'OSHA average over 8 h, dB(A)', oshaAverage(day.oshaDose)),
    ...decibel('nioshTwa', 'NIOSH average over 8 h, dB(A)', nioshAverage(day.nioshDose)),
    ...decibel('lex', 'Daily level, EU and Great Britain, dB(A)', day.level),
    ...(day.level === undefined
      ? []
      : [
          {
            kind: 'number',
            key: 'points',
            label: 'Points, Great Britain (100 at 85 dB(A))',
            value: noisePoints(day.level),
            decimals: 0,
          } as const,
        ]),
    table,
  ];
  return { values, steps: [...doseSteps(day, 'osha'), ...doseSteps(day, 'niosh'), ...levelSteps(day)] };
}

function doseSteps(day: Day, which: 'osha' | 'niosh'): WorkingStep[] {
  const rule: Rule = which === 'osha' ? osha : niosh;
  const [time, dose, average] =
    which === 'osha' ? [f.oshaTime, f.oshaDose, f.oshaTwa] : [f.nioshTime, f.nioshDose, f.nioshTwa];
  const [T, D] = which === 'osha' ? ['T_o', 'D_o'] : ['T_n', 'D_n'];
  let before = 0;
  const steps = day.bare
    .filter((p) => p.level >= rule.threshold)
    .flatMap((p) => {
      const allowed = allowedTime(p.level, rule);
      const after = before + p.time / allowed;
      const two = [
        step(time, { T_8: eightHours, L: p.level }, allowed),
        step(dose, { D_0: before, C: p.time, [T]: allowed }, after),
      ];
      before = after;
      return two;
    });
  const mean = which === 'osha' ? oshaAverage(before) : nioshAverage(before);
  return mean === undefined ? steps : [...steps, step(average, { [D]: before }, mean)];
}

function levelSteps(day: Day): WorkingStep[] {
  let before = 0;
  const steps = day.bare.map((p) => {
    const after = before + (p.time / eightHours) * 10 ** (p.level / 10);
    const one = step(f.dayEnergy, { E_0: before, C: p.time, T_8: eightHours, L: p.level }, after);
    before = after;
    return one;
  });
  return day.level === undefined ? steps : [...steps, step(f.daily, { E: before }, day.level)];
}

/** Minutes left today at what comes next, bare ears. */
export function leftPart(i: NoiseInputs, day: Day): Part {
  const [o, n] = [timeLeft(day.oshaDose, i.next, osha), timeLeft(day.nioshDose, i.next, niosh)];
  const values = [
    minutes('nioshLeft', 'Left today by NIOSH, bare ears', n, true),
    minutes('oshaLeft', 'Left today by OSHA, bare ears', o),
    minutes('upperLeft', 'Left to 85 dB(A), EU and Great Britain', timeLeftToLevel(day.energy, i.next, 85)),
    minutes('limitLeft', 'Left to 87 dB(A), bare ears', timeLeftToLevel(day.energy, i.next, 87)),
  ];
  const inside = (t: number) => t > 0 && t < 86400;
  return {
    values,
    steps: [
      ...(inside(o) ? [step(f.oshaLeft, { D_o: day.oshaDose, T_o: allowedTime(i.next, osha) }, o)] : []),
      ...(inside(n) ? [step(f.nioshLeft, { D_n: day.nioshDose, T_n: allowedTime(i.next, niosh) }, n)] : []),
    ],
  };
}
