/** When a service is due, for one machine or the whole yard, and whether a part should be replaced by the clock. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  atMeter,
  dutyInterval,
  daysForHours,
  hoursByUse,
  turnAtMeter,
  whicheverFirst,
  type AtMeter,
  type Duty,
  type Due,
} from './due.ts';
export { sortedList, dueLine, type DueLine, type ServiceInputs } from './read-list.ts';
export { meterLines, stateOf, type MeterLine, type MeterState } from './by-meter.ts';
export { leastFailures, partOf, type Part } from './by-the-clock.ts';
export { dueEvents } from './calendar-events.ts';
export {
  bandOf,
  bestAge,
  bestAgeOfRange,
  costRate,
  flatBand,
  overhaulPeriod,
  rangeLaw,
  rateUnder,
  weibullLaw,
  type Costs,
  type LifeLaw,
} from './replacement-age.ts';
export { greaseInterval, temperatureFactor } from './grease.ts';

export const title = 'Service interval';
export const formulas = Object.values(all);
export const sources = [
  'arithmetic',
  'common-practice',
  'duty-scaling',
  'army-tm-service-intervals',
  'army-tm-cartridge-life',
  'weibull-conditional',
  'barlow-age-replacement',
  'days-from-civil',
  'iso-281-weibull',
  'lieblein-zelen-1956',
  'relubrication-formula',
  'likelihood-ratio-range',
  'uniform-law',
];
export const hazards = ['unexpected-start'];

const factors = ['dustyFactor', 'heavyFactor', 'waterFactor', 'loadFactor'];
/** What the dates hang on. */
const list = ['start', 'tasks', 'reading', 'near', ...factors, 'least'];
/** What the life of the part under its duty hangs on. */
const life = ['replace', 'lifeFrom', 'shape', 'scale', 'records', 'lifeMin', 'lifeMax', 'partDust'];
const clock = [...life, 'dustyFactor', 'heavyFactor', 'planned', 'failure'];
export const decides = { meter: [...list, 'ahead'], verdict: list, clock };
export const parts: readonly Part[] = [
  { gives: ['factors'], from: factors },
  { gives: ['list', 'dueDate', 'dueDays', 'interval', 'hoursLeft', 'dueBy'], from: list },
  { gives: ['meterList'], from: [...list, 'ahead'] },
  { gives: ['bestAge', 'bestRate', 'saves', 'failsFirst', 'costCurve', 'runToFailure', 'shape', 'scale'], from: clock },
  { gives: ['askedRate', 'askedFails'], from: [...clock, 'askedAge'] },
];
export const example = {
  start: '2026-03-02',
  tasks: [
    {
      machine: 'Cut-off saw no. 1',
      task: 'Check the belt, clean its grooves',
      base: '10 h',
      dust: 'dusty',
      perDay: '2 h',
      daysPerWeek: 5,
      since: '3 h',
    },
    {
      machine: 'Cut-off saw no. 1',
      task: 'Look in the cylinder',
      base: '100 h',
      dust: 'dusty',
      perDay: '2 h',
      daysPerWeek: 5,
      since: '20 h',
    },
    {
      machine: 'Floor saw',
      task: 'Oil and oil filter',
      base: '100 h',
      limit: '91 day',
      dust: 'dusty',
      perDay: '1.5 h',
      daysPerWeek: 4,
      last: '2026-01-12',
      since: '18 h',
    },
  ],
};
