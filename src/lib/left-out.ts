/** Which pages of the knowledge this shop does not publish. */
import { shop } from './shop.ts';

const pages = new Set(shop.leaveOut);

/** @param page "calculators/split-pulley" */
export function isLeftOut(page: string): boolean {
  return pages.has(page);
}
