/** Adds up a Vitest JSON report. A file that could not even start counts as one failure. */

export interface Count {
  readonly passed: number;
  readonly failed: number;
}

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
}

export function countTests(json: string): Count {
  const report = JSON.parse(json) as Report;
  const brokenFiles = report.testResults.filter(
    (f) => f.status === 'failed' && !f.assertionResults.some((a) => a.status === 'failed'),
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + brokenFiles.length };
}
