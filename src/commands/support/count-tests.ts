/** What a Vitest JSON report says. A file that could not even start counts as one failure. */

export interface Count {
  readonly passed: number;
  readonly failed: number;
}

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    /** When the first test of the file began and the last one ended [ms]. */
    readonly startTime: number;
    readonly endTime: number;
    readonly assertionResults: readonly {
      readonly status: string;
      readonly fullName: string;
      /** Of every try. */
      readonly failureMessages?: readonly string[];
    }[];
  }[];
}

export function countTests(json: string): Count {
  const report = JSON.parse(json) as Report;
  const brokenFiles = report.testResults.filter(
    (f) => f.status === 'failed' && !f.assertionResults.some((a) => a.status === 'failed'),
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + brokenFiles.length };
}

const inTests = (file: string): string => file.replace(/^.*\btests[\\/]/, '');

/**
 * Tests that failed once and then passed, with what was wrong at first: a browser that lost a frame, or a fault that
 * shows itself once in a while and wants to be found.
 */
export function passedAtSecondTry(json: string): string[] {
  const { testResults } = JSON.parse(json) as Report;
  return testResults.flatMap(({ name, assertionResults }) =>
    assertionResults.flatMap(({ status, fullName, failureMessages = [] }) =>
      status === 'passed' && failureMessages.length > 0
        ? [`${inTests(name)}, ${fullName}: ${(failureMessages[0] ?? '').split('\n')[0]}`]
        : [],
    ),
  );
}

/** The files that took longest, so that nobody has to guess where the minutes go: "e2e/customer.test.ts 61 s". */
export function longestFiles(json: string, most = 8): string[] {
  const { testResults } = JSON.parse(json) as Report;
  return testResults
    .map((f) => ({ name: inTests(f.name), seconds: (f.endTime - f.startTime) / 1000 }))
    .toSorted((a, b) => b.seconds - a.seconds)
    .slice(0, most)
    .map((f) => `${f.name} ${Math.round(f.seconds)} s`);
}
