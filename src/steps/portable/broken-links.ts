/** What a build says of links that lead nowhere. */
import { stopBuild } from '../support/stop-build.ts';
import type { LinkProblem } from './links.ts';

const brokenLinks = 'BrokenLinks';

export class BrokenLinks extends Error {
  constructor(problems: readonly LinkProblem[]) {
    super(
      `${problems.length} broken link${problems.length === 1 ? '' : 's'}:\n${problems.map((p) => `  ${p.file} -> ${p.link}  (${p.why})`).join('\n')}`,
    );
    this.name = brokenLinks;
  }
}

export function stopAtBrokenLinks(reason: unknown): never {
  // From a thread it comes as a plain error of the same name.
  if (!(reason instanceof Error) || reason.name !== brokenLinks) throw reason;
  stopBuild(
    'The site has links that lead nowhere; it was not built.',
    'Mend the links listed above. The site built before stands as it was.',
    reason.message,
  );
}
