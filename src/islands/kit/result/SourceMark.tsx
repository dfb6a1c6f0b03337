/** A small mark that leads to where a figure comes from, and says so when nobody has checked it. */
import type { ShownSource } from '../state/props.ts';
import { siteLink } from '../../../browser/site-link.ts';
import { howSeen, say } from '../../../words/kit.ts';

export function SourceMark({ id, source }: { readonly id: string; readonly source: ShownSource | undefined }) {
  // A test holds every topic to its list; a reader at the bench must not lose the answer over a missing mark.
  if (!source) return null;
  const full = `${source.title}${source.where ? `, ${source.where}` : ''} (${howSeen[source.how]})`;
  return (
    <span class="source-mark">
      {' '}
      [
      <a href={siteLink(`/sources/#${id}`)} title={full}>
        {source.title.split(/[,:(]/)[0]?.trim()}
      </a>
      {source.how === 'memory' && <em class="unchecked">, {say.unchecked}</em>}]
    </span>
  );
}
