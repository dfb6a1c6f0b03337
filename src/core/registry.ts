/** Every calculator. A new one is one line here. */
import * as beltTension from './belt-tension/index.ts';
import * as bladeSpeed from './blade-speed/index.ts';
import * as limitsFits from './limits-fits/index.ts';
import * as repairWorth from './repair-worth/index.ts';
import * as bearingFit from './bearing-fit/index.ts';
import * as bearingSize from './bearing-size/index.ts';
import * as warming from './warming/index.ts';
import * as partChange from './part-change/index.ts';
import * as splitPulley from './split-pulley/index.ts';
import * as faultOrder from './fault-order/index.ts';
import * as clutchSpeed from './clutch-speed/index.ts';
import * as pressFit from './press-fit/index.ts';
import * as runningClearance from './running-clearance/index.ts';
import * as bearingLife from './bearing-life/index.ts';
import * as boltTorque from './bolt-torque/index.ts';
import * as bladeRundown from './blade-rundown/index.ts';
import * as fuelMix from './fuel-mix/index.ts';
import * as compressionCheck from './compression-check/index.ts';
import * as serviceInterval from './service-interval/index.ts';
import type { Topic } from './topic.ts';

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
};
