/** Every calculator. A new one is one line here. */
import * as beltTension from './topics/belt-tension/index.ts';
import * as bladeSpeed from './topics/blade-speed/index.ts';
import * as limitsFits from './topics/limits-fits/index.ts';
import * as repairWorth from './topics/repair-worth/index.ts';
import * as bearingFit from './topics/bearing-fit/index.ts';
import * as bearingSize from './topics/bearing-size/index.ts';
import * as warming from './topics/warming/index.ts';
import * as partChange from './topics/part-change/index.ts';
import * as splitPulley from './topics/split-pulley/index.ts';
import * as faultOrder from './topics/fault-order/index.ts';
import * as clutchSpeed from './topics/clutch-speed/index.ts';
import * as pressFit from './topics/press-fit/index.ts';
import * as runningClearance from './topics/running-clearance/index.ts';
import * as bearingLife from './topics/bearing-life/index.ts';
import * as boltTorque from './topics/bolt-torque/index.ts';
import * as bladeRundown from './topics/blade-rundown/index.ts';
import * as fuelMix from './topics/fuel-mix/index.ts';
import * as compressionCheck from './topics/compression-check/index.ts';
import * as serviceInterval from './topics/service-interval/index.ts';
import * as dustControl from './topics/dust-control/index.ts';
import * as waterSupply from './topics/water-supply/index.ts';
import * as noiseDose from './topics/noise-dose/index.ts';
import * as handArmVibration from './topics/hand-arm-vibration/index.ts';
import * as fumeRoom from './topics/fume-room/index.ts';
import type { Topic } from './contract/topic.ts';

export const topics: Readonly<Record<string, Topic>> = {
  'belt-tension': beltTension,
  'blade-speed': bladeSpeed,
  'limits-fits': limitsFits,
  'repair-worth': repairWorth,
  'bearing-fit': bearingFit,
  'bearing-size': bearingSize,
  warming,
  'part-change': partChange,
  'split-pulley': splitPulley,
  'fault-order': faultOrder,
  'clutch-speed': clutchSpeed,
  'press-fit': pressFit,
  'running-clearance': runningClearance,
  'bearing-life': bearingLife,
  'bolt-torque': boltTorque,
  'blade-rundown': bladeRundown,
  'fuel-mix': fuelMix,
  'compression-check': compressionCheck,
  'service-interval': serviceInterval,
  'dust-control': dustControl,
  'water-supply': waterSupply,
  'noise-dose': noiseDose,
  'hand-arm-vibration': handArmVibration,
  'fume-room': fumeRoom,
};
