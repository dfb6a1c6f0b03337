import { shopBlocks } from './blocks-shop.ts';
import { timeBlocks } from './blocks-time.ts';
import { worthBlocks } from './blocks-worth.ts';

export const blocks = { ...timeBlocks, ...worthBlocks, ...shopBlocks };
