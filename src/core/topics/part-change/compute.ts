import { isOver, isUnder } from '../../thresholds/index.ts';
import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { failure, gamma, meanLife, meanRemainingLife, survival, type Life } from '../../chance/index.ts';
import type { Result, Value, VerdictValue } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { ageToChange, costOfChangingNow, costOfLeaving, costOfMending, wearToReplace } from './costs.ts';
import { fields } from './fields.ts';
import {
  changeNow,
  leave,
  mendFailed,
  newLasts,
  oldLasts,
  reopening,
  replaceFailed,
  scaleFromMean,
} from './formulas.ts';

type PartInputs = InputsOf<typeof fields>;

const cent = (x: number) => Math.round(x * 100) / 100;

export const compute = guarded(fields, (inputs): Result => {
  const { life, steps } = readLife(inputs);
  const reopen = (inputs.reopenMinutes / 60) * inputs.labourRate + inputs.stopCost;
  const next = neighbour(inputs, life, reopen);
  const mending = inputs.mend ? mendOrReplace(inputs, life, reopen) : { values: [], steps: [] };
  return {
    ok: true,
    values: [...next.values, ...mending.values, ...shapeNote(life)],
    working: [
      ...steps,
      step(reopening, { k: inputs.reopenMinutes, w: inputs.labourRate, s: inputs.stopCost }, reopen),
      ...next.steps,
      ...mending.steps,
    ],
    cautions: [{ hazard: 'unexpected-start', level: 'danger' }],
  };
});

/** Values with the lines of working behind them. */
interface Shown {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

function readLife(inputs: PartInputs): { readonly life: Life; readonly steps: readonly WorkingStep[] } {
  const b = inputs.shape;
  if (inputs.lifeAs === 'scale') return { life: { shape: b, scale: inputs.scale ?? 1 }, steps: [] };
  const m = inputs.mean ?? 1;
  const eta = m / gamma(1 + 1 / b);
  return { life: { shape: b, scale: eta }, steps: [step(scaleFromMean, { m, b }, eta)] };
}

function neighbour(inputs: PartInputs, life: Life, reopen: number): Shown {
  const { partCost: c, age: T, horizon: H } = inputs;
  const { shape: b, scale: eta } = life;
  const [fresh, worn] = [survival(life, H), survival(life, H, T)];
  const now = costOfChangingNow(c, reopen, life, H);
  const later = costOfLeaving(c, reopen, life, H, T);
  const steps = [
    step(newLasts, { H, eta, b }, fresh),
    step(oldLasts, { T, H, eta, b }, worn),
    step(changeNow, { c, S_n: fresh, o: reopen }, now),
    step(leave, { S_o: worn, c, o: reopen }, later),
  ];
  const share = (key: string, label: string, value: number): Value => ({
    kind: 'quantity',
    key,
    label,
    value,
    units: ['%', '%'],
    decimals: [0, 0],
  });
  const flip = ageToChange(c, reopen, life, H);
  const values: Value[] = [
    verdictOf(now, later, life, H),
    {
      kind: 'money',
      key: 'costNow',
      label: 'Changing it now costs',
      value: cent(now),
      main: true,
      note: 'With the chance that the new one fails too.',
    },
    {
      kind: 'money',
      key: 'costLeave',
      label: 'Leaving it costs',
      value: cent(later),
      main: true,
      note: 'The chance of opening the machine again, times what that costs.',
    },
    share('oldFails', 'Chance that it fails before then', failure(life, H, T)),
    share('newFails', 'Chance that a new one fails before then', failure(life, H)),
    {
      kind: 'quantity',
      key: 'remaining',
      label: 'Mean life still in it',
      value: meanRemainingLife(life, T),
      units: ['h', 'h'],
      decimals: [0, 0],
    },
    ...(flip === undefined
      ? [
          {
            kind: 'verdict',
            key: 'ageToChange',
            label: 'Age from which changing pays',
            code: isOver(life.shape, 1) ? 'no-age-pays' : 'does-not-wear',
            level: 'note',
          } as const,
        ]
      : [
          {
            kind: 'quantity',
            key: 'ageToChange',
            label: 'Age from which changing pays',
            value: flip,
            units: ['h', 'h'],
            decimals: [0, 0],
          } as const,
        ]),
    ageTable(c, reopen, life, H, now),
  ];
  return { values, steps };
}

/** Closer than this share of the dearer way, and a guessed life can't tell one from the other. Our choice. */
const close = 0.1;

/**
 * Change it or leave it, by the two costs [currency]. The sum counts one failure at most: past the mean life of a new
 * part it counts too few, and there is no advice.
 */
function verdictOf(now: number, later: number, life: Life, horizon: number): VerdictValue {
  const verdict = (code: string, level: VerdictValue['level'], data: VerdictValue['data']): VerdictValue => ({
    kind: 'verdict',
    key: 'verdict',
    label: 'While it is open',
    code,
    level,
    data,
    main: true,
  });
  const lives = livesAhead(life, horizon);
  if (isOver(lives, 1)) return verdict('looks-too-far', 'caution', { lives: Math.round(lives * 10) / 10 });
  const between = { between: cent(Math.abs(later - now)) };
  if (!isOver(Math.abs(later - now), close * Math.max(later, now))) return verdict('about-even', 'note', between);
  return isOver(later, now) ? verdict('change-now', 'caution', between) : verdict('leave-it', 'good', between);
}

/** How many mean lives of a new part the time looked ahead is [1]. */
function livesAhead(life: Life, horizon: number): number {
  return horizon / meanLife(life);
}

/** Both costs at ages in steps of a quarter of the scale: what a drawing needs. */
function ageTable(c: number, reopen: number, life: Life, H: number, now: number): Value {
  const ages = Array.from({ length: 9 }, (_, k) => (k / 4) * life.scale);
  return {
    kind: 'table',
    key: 'ageTable',
    label: 'Both costs against the age of the part',
    columns: [
      { key: 'age', label: 'Hours run', units: ['h', 'h'], decimals: 0 },
      { key: 'leave', label: 'Leave it', money: true },
      { key: 'now', label: 'Change it now', money: true },
    ],
    rows: ages.map((age) => [age, cent(costOfLeaving(c, reopen, life, H, age)), cent(now)]),
  };
}

function mendOrReplace(inputs: PartInputs, life: Life, reopen: number): Shown {
  const [c_r, c_f, p, H] = [inputs.replaceCost ?? 0, inputs.mendCost ?? 0, inputs.mendWear ?? 1, inputs.horizon];
  const replaced = costOfChangingNow(c_r, reopen, life, H);
  const mended = costOfMending(c_f, c_r, reopen, life, H, p);
  const steps = [
    step(replaceFailed, { c_r, S_n: survival(life, H), o: reopen }, replaced),
    step(mendFailed, { c_f, p, H, eta: life.scale, b: life.shape, c_r, o: reopen }, mended),
  ];
  const flip = wearToReplace(c_f, c_r, reopen, life, H);
  const verdict: VerdictValue = {
    kind: 'verdict',
    key: 'mendVerdict',
    label: 'Mend or replace',
    code: isOver(replaced, mended) ? 'mend-it' : 'replace-it',
    level: 'note',
    data: { between: cent(Math.abs(replaced - mended)) },
    main: true,
  };
  const values: Value[] = [
    ...(isOver(livesAhead(life, H), 1) ? [] : [verdict]),
    { kind: 'money', key: 'costReplace', label: 'Replacing costs', value: cent(replaced) },
    { kind: 'money', key: 'costMend', label: 'Mending costs', value: cent(mended) },
    ...(flip === undefined
      ? []
      : [
          {
            kind: 'number',
            key: 'wearToReplace',
            label: 'Replace if it would wear this many times as fast',
            value: flip,
            decimals: 2,
          } as const,
        ]),
  ];
  return { values, steps };
}

function shapeNote(life: Life): Value[] {
  if (isOver(life.shape, 1)) return [];
  return [
    {
      kind: 'verdict',
      key: 'shapeNote',
      label: 'Wear',
      code: isUnder(life.shape, 1) ? 'fails-early' : 'fails-by-chance',
      level: 'note',
    },
  ];
}
