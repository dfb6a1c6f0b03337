import { expect, test } from 'vitest';
import { countTests, longestFiles } from '../../src/commands/support/count-tests.ts';

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

test('the files that took longest are named with their seconds, the longest first', () => {
  const took = (name: string, seconds: number) => ({ name, startTime: 5000, endTime: 5000 + seconds * 1000 });
  const testResults = [took('/a b/tests/x/short.test.ts', 1), took('C:\\almanac\\tests\\long.test.ts', 61.4)];
  const json = JSON.stringify({ testResults });
  expect(longestFiles(json)).toEqual(['long.test.ts 61 s', 'x/short.test.ts 1 s']);
  expect(longestFiles(json, 1)).toHaveLength(1);
});
