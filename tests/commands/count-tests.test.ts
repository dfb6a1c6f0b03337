import { expect, test } from 'vitest';
import { countTests } from '../../src/commands/support/count-tests.ts';

test('passed and failed tests are counted, and a file that could not start is one failure', () => {
  const report = {
    numPassedTests: 7,
    numFailedTests: 2,
    testResults: [
      { status: 'passed', assertionResults: [{ status: 'passed' }] },
      { status: 'failed', assertionResults: [{ status: 'failed' }, { status: 'failed' }] },
      { status: 'failed', assertionResults: [] },
    ],
  };
  expect(countTests(JSON.stringify(report))).toEqual({ passed: 7, failed: 3 });
});
