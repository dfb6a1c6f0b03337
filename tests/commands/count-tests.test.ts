import { expect, test } from 'vitest';
import { countTests, longestFiles, passedAtSecondTry } from '../../src/commands/support/count-tests.ts';

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

test('a test that failed first and then passed is told with what was wrong', () => {
  const lost = { failureMessages: ['TimeoutError: lost\n    at there'] };
  const testResults = [
    {
      name: '/a/tests/e2e/money.test.ts',
      assertionResults: [
        { status: 'passed', fullName: 'prints', ...lost },
        { status: 'passed', fullName: 'adds up', failureMessages: [] },
        { status: 'failed', fullName: 'saves', ...lost },
      ],
    },
  ];
  expect(passedAtSecondTry(JSON.stringify({ testResults }))).toEqual(['e2e/money.test.ts, prints: TimeoutError: lost']);
});
