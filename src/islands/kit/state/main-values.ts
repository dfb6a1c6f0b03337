import type { Value } from '../../../core/contract/result.ts';

/** What is shown first. A topic that marks nothing as main shows its first value large. */
export function mainOf(values: readonly Value[]): readonly Value[] {
  const marked = values.filter((v) => v.main && v.kind !== 'table');
  return marked.length > 0 ? marked : values.filter((v) => v.kind !== 'table').slice(0, 1);
}
