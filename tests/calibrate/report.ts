// The text of lessons/CALIBRATION.md: a table and the claims of each lesson; lessons not played again stay as they were.
import { CREWS } from '$lessons';
import type { Claim } from '../sweep/sweep';
import { BOUNDS, ofCrew, quantile } from './bounds';
import type { CrewRun } from './crewRuns';
import { FAILURES } from './failures';

export interface LessonReport {
  readonly lesson: string;
  readonly seeds: number;
  readonly madeWith: string;
  readonly runs: readonly CrewRun[];
  readonly claims: readonly Claim[];
}

const HEAD = `# Calibration

What \`npm run calibrate\` found: the crews of \`lessons/crews\` play each lesson on many grounds. Points by quartiles, runs that pass, seeds out of bounds, job hours and seconds of the machine a run.
Wanted: careful ${BOUNDS.careful} and more on ${100 * BOUNDS.careful_frac} % of the grounds and a pass on all; other's middle within ${BOUNDS.other} of careful's; steady's middle ${BOUNDS.steady.join(' to ')}; green's at most ${BOUNDS.green}, random's at most ${BOUNDS.random}.
`;

/** Begins the line of what failed; the test of the list reads it. */
export const FAILED = '- failed in some run: ';

const tenth = (value: number): string => (Math.round(value * 10) / 10).toFixed(1);

/** Seeds on which a run alone misses what is wanted of its crew's middle; at most so many are listed. */
const LISTED = 12;
function outOfBounds(run: CrewRun): boolean {
  const { crew, score, passed } = run;
  if (crew === 'careful') return score < BOUNDS.careful || !passed;
  if (crew === 'steady') return score < BOUNDS.steady[0] || score > BOUNDS.steady[1];
  if (crew === 'green') return score > BOUNDS.green;
  return crew === 'random' && score > BOUNDS.random;
}

function row(crew: string, runs: readonly CrewRun[]): string {
  const scores = runs.map(({ score }) => score);
  const quartiles = [0, 0.25, 0.5, 0.75, 1].map((share) => tenth(quantile(scores, share)));
  const out = runs.filter(outOfBounds).map(({ seed }) => seed);
  const list = out.length === 0 ? '' : `${out.slice(0, LISTED).join(' ')}${out.length > LISTED ? ' ...' : ''}`;
  const mean = (figure: (run: CrewRun) => number): string =>
    tenth(runs.reduce((sum, run) => sum + figure(run), 0) / runs.length);
  const passes = `${runs.filter(({ passed }) => passed).length}/${runs.length}`;
  return `| ${[crew, ...quartiles, passes, list, mean(({ ticks }) => ticks / 3600), mean(({ time_s }) => time_s)].join(' | ')} |`;
}

/** What failed in any of the runs, in the order of the list. */
function failedIn(runs: readonly CrewRun[]): string {
  const happened = new Set(runs.flatMap((run) => run.happened));
  return FAILURES.filter((name) => happened.has(name)).join(', ') || 'nothing';
}

function sectionOf({ lesson, seeds, madeWith, runs, claims }: LessonReport): string {
  const rows = CREWS.map((crew) => row(crew, ofCrew(runs, crew)));
  const lines = claims.map(({ text, holds }) => `- ${holds ? 'holds' : 'FAILS'}: ${text}`);
  return [
    `## ${lesson}`,
    '',
    `${seeds} seeds, ${madeWith}.`,
    '',
    '| crew | least | quarter | middle | three quarters | most | pass | seeds out of bounds | job hours | seconds |',
    '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
    ...rows,
    '',
    ...lines,
    `${FAILED}${failedIn(runs)}.`,
  ].join('\n');
}

/** In the order of `order`; sections of lessons that are no more fall away. */
export function calibrationText(previous: string, reports: readonly LessonReport[], order: readonly string[]): string {
  const kept = new Map(
    previous
      .split(/^(?=## )/m)
      .flatMap((text) => (text.startsWith('## ') ? [[text.slice(3).split('\n')[0]!.trim(), text]] : [])),
  );
  for (const report of reports) kept.set(report.lesson, sectionOf(report));
  const sections = order.flatMap((id) => (kept.has(id) ? [kept.get(id)!.trimEnd()] : []));
  return `${HEAD}\n${sections.join('\n\n')}\n`;
}
