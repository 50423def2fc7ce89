// The class as JSON: the report as it is, with the name and the version of its form.
import type { ClassReport } from './report';

export const CLASS_FORMAT = 'hand-jetting-class';
/** Grows when a field changes its meaning or goes; a new field leaves it. */
export const CLASS_FORMAT_VERSION = 1;

export function classJson(report: ClassReport): string {
  const { exercise, sim } = report;
  const results = report.results.map(({ taken_ms, ...line }) => ({
    ...line,
    taken: new Date(taken_ms).toISOString(),
  }));
  return `${JSON.stringify({ format: CLASS_FORMAT, version: CLASS_FORMAT_VERSION, sim, exercise, results }, null, 2)}\n`;
}
