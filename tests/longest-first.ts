/**
 * Vitest begins with the largest files, as it knows no times on a fresh machine. The pages judged one by one are the
 * shortest files and take longest: begun last, they leave the other workers with nothing to do.
 */
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const longest = ['accessible-phone', 'accessible-laptop', 'every-way'];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const at = longest.findIndex((name) => moduleId.includes(`/e2e/${name}.`));
      return at < 0 ? longest.length : at;
    };
    return (await super.sort(files)).toSorted((a, b) => rank(a) - rank(b));
  }
}
