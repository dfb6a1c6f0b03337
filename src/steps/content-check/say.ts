import type { ContentFile } from './content-file.ts';
import type { Piece } from './parse-body.ts';
import type { Problem } from './problem.ts';

/** How a rule of an article's body reports: where it stands, which field, what was found and what is wanted. */
export type Say = (node: Piece, field: string, got: string, allowed: string) => void;

/** Says it into a list. */
export const sayOf =
  (file: ContentFile, into: Problem[]): Say =>
  (node, field, got, allowed) =>
    into.push({ file: file.path, line: node.line, field, got, allowed });
