import { checkBlocks } from './blocks-checks.ts';
import { geometryBlocks } from './blocks-geometry.ts';
import { tensionBlocks } from './blocks-tensions.ts';

export const blocks = { ...geometryBlocks, ...tensionBlocks, ...checkBlocks };
