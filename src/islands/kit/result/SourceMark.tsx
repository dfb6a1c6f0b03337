/** A small mark that leads to where a figure comes from, and says so when nobody has checked it. */
import type { ShownSource } from '../props.ts';
import { siteLink } from '../site-link.ts';
import { howSeen, say } from '../words.ts';

export function SourceMark({ id, source }: { readonly id: string; readonly source: ShownSource | undefined }) {
  if (!source) throw new Error(`The topic names the source "${id}" in a result but not in its list of sources.`);
  const full = `${source.title}${source.where ? `, ${source.where}` : ''} (${howSeen[source.how]})`;
  return (
    <span class="source-mark"> [<a href={siteLink(`/sources/#${id}`)} title={full}>{source.title.split(/[,:(]/)[0]?.trim()}</a>{source.how === 'memory' && <em class="unchecked">, {say.unchecked}</em>}]</span>
  );
}
