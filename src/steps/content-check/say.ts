import type { BodyNode } from './parse-body.ts';

/** How a rule of an article's body reports: where it stands, which field, what was found and what is wanted. */
export type Say = (node: BodyNode, field: string, got: string, allowed: string) => void;
