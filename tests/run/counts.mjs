// Reads how many tests passed and failed from the reports that the two test runners leave.
import { existsSync, readFileSync } from 'node:fs';

/** @typedef {{passed: number, failed: number, skipped: number}} Counts */

/**
 * A file that could not be loaded holds no failed test but counts as one failure, and so does a missing report: a
 * runner that died has passed nothing.
 * @param {string} path
 * @returns {Counts}
 */
export function unitCounts(path) {
  const report = readReport(path);
  if (!report) return { passed: 0, failed: 1, skipped: 0 };
  const unloaded = report.testResults.filter(
    (/** @type {{status: string, assertionResults: unknown[]}} */ file) =>
      file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/**
 * @param {string} path
 * @returns {Counts}
 */
export function browserCounts(path) {
  const report = readReport(path);
  if (!report) return { passed: 0, failed: 1, skipped: 0 };
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length, skipped };
}

/** @param {string} path */
function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null;
}
