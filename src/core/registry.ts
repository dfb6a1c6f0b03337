/** Every calculator. A new one is one line here. */
import * as bladeSpeed from './blade-speed/index.ts';
import * as limitsFits from './limits-fits/index.ts';
import type { Topic } from './topic.ts';

export const topics: Readonly<Record<string, Topic>> = {
  'blade-speed': bladeSpeed,
  'limits-fits': limitsFits,
};
