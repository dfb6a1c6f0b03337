/** Bearing fit: a ring on its shaft or in its housing, from limits or from the micrometer. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { recommend, type Advice, type HousingKind, type Load, type Situation, type Turning } from './recommend.ts';
export {
  isFor,
  measuredInterference,
  ringFit,
  seatForm,
  type Reading,
  type RingFit,
  type RingSpan,
  type Seat,
  type SeatForm,
} from './seat.ts';
export { evenness, isCoarse, judgeSeat, standingOf, type Judgement, type Measured, type Standing } from './judge.ts';

export const title = 'Bearing fit';
export const formulas = Object.values(all);
export const sources = [
  'iso-286-1',
  'iso-492',
  'iso-492-memory',
  'abma-7',
  'abma-7-memory',
  'arithmetic',
  'boresi-schmidt',
  'callister-expansion',
  'materials-memory',
  'bearing-steel-expansion',
  'army-tm-bearing-heating',
  'sealed-bearing-heat',
  'housing-heating',
  'common-practice',
];
export const hazards = ['heating-housings', 'heating-bearings', 'magnesium', 'press-force', 'hot-parts'];

const situation = ['seat', 'size', 'turning', 'load', 'housing', 'slides'] as const;
const zone = [...situation, 'zone'] as const;
const fit = [...zone, 'ringClass', 'basis', 'readings', 'ring'] as const;
const judged = [...fit, 'gauge'] as const;
export const decides = {
  seatVerdict: judged,
  needs: [...judged, 'material'],
  seatAdvised: judged,
  form: judged,
  gaugeVerdict: judged,
  fitKind: fit,
  clearance: judged,
  choice: [...zone, 'ringClass'],
  warmVerdict: [...judged, 'material', 'sealed', 'room', 'gap'],
  reason: situation,
  split: zone,
  footnote: ['seat'],
  light: [...situation, 'ringClass', 'material', 'runningRise'],
};
export const parts: readonly Part[] = [
  { gives: ['advisedZone'], from: situation },
  { gives: ['seatZone', 'seatUpper', 'seatLower', 'seatLargest', 'seatSmallest'], from: zone },
  { gives: ['ringUpper', 'ringLower', 'ringLargest', 'ringSmallest', 'seats'], from: [...zone, 'ringClass'] },
  { gives: ['interference', 'measured', 'taper', 'outOfRound'], from: fit },
  { gives: ['warmZone'], from: [...situation, 'ringClass', 'material', 'runningRise'] },
  { gives: ['warmInterference'], from: [...fit, 'material', 'runningRise'] },
  { gives: ['warmTemperature', 'warmRise'], from: [...judged, 'material', 'sealed', 'room', 'gap'] },
];

const interference = {
  least: { value: 'interference', end: 'low' },
  most: { value: 'interference', end: 'high' },
} as const;
const [onShaft, inHousing] = [
  { field: 'seat', is: ['shaft'] },
  { field: 'seat', is: ['housing'] },
];
export const carries: readonly Carry[] = [
  {
    to: 'warming',
    what: 'the housing fit',
    when: inHousing,
    given: 'warmTemperature',
    with: {
      part: { is: 'housing' },
      diameter: { field: 'size' },
      interference: interference.most,
      housingMaterial: { field: 'material' },
      room: { field: 'room' },
      gap: { field: 'gap' },
    },
  },
  {
    to: 'warming',
    what: 'the shaft fit',
    when: onShaft,
    given: 'warmTemperature',
    with: {
      part: { is: 'ring' },
      diameter: { field: 'size' },
      interference: interference.most,
      sealed: { field: 'sealed' },
      room: { field: 'room' },
      gap: { field: 'gap' },
    },
  },
  {
    to: 'press-fit',
    what: 'the housing fit',
    when: inHousing,
    given: 'warmTemperature',
    with: {
      diameter: { field: 'size' },
      ...interference,
      hub: { field: 'material' },
      shaft: { is: 'bearing-steel' },
    },
  },
  {
    to: 'press-fit',
    what: 'the shaft fit',
    when: onShaft,
    given: 'warmTemperature',
    with: { diameter: { field: 'size' }, ...interference, hub: { is: 'bearing-steel' }, shaft: { is: 'carbon-steel' } },
  },
  {
    to: 'running-clearance',
    what: 'the housing fit',
    when: inHousing,
    with: {
      outside: { field: 'size' },
      housingLeast: interference.least,
      housingMost: interference.most,
      housingMaterial: { field: 'material' },
    },
  },
  {
    to: 'running-clearance',
    what: 'the shaft fit',
    when: onShaft,
    with: { bore: { field: 'size' }, shaftLeast: interference.least, shaftMost: interference.most },
  },
];
// The size hangs on which seat is asked about, and stays the reader's to type.
export const plate = { material: 'housingMaterial' };
export const example = {
  seat: 'housing',
  size: '52 mm',
  zone: 'N7',
  ringClass: 'Normal',
  basis: 'limits',
  material: 'aluminium-die-cast',
};
