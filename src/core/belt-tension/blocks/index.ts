import { checkBlocks } from './checks.ts';
import { geometryBlocks } from './geometry.ts';
import { tensionBlocks } from './tensions.ts';

export const blocks = { ...geometryBlocks, ...tensionBlocks, ...checkBlocks };
