/** Changes to a text by position, so everything untouched stays byte for byte as Astro wrote it. */

export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export function applyEdits(source: string, edits: readonly Edit[]): string {
  const ordered = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  let out = '';
  let at = 0;
  for (const edit of ordered) {
    if (edit.start < at)
      throw new Error(`Two changes overlap at position ${edit.start}: "${source.slice(edit.start, edit.start + 40)}"`);
    out += source.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return out + source.slice(at);
}
