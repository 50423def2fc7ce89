// The class as a table for spreadsheets: RFC 4180, one row for each result (README.md here says what the columns mean).
import { CATEGORY_IDS, csvCell, type CategoryId } from '$lessons';
import type { ClassReport, ResultLine } from './report';

type Cell = string | number | null;
type Column = readonly [name: string, cell: (line: ResultLine) => Cell];

/** Marks the text as UTF-8: without it spreadsheets read letters beyond English as those of another page of code. */
const MARK = '\ufeff';

const yes = (value: boolean | null): Cell => (value === null ? null : value ? 'yes' : 'no');
const pointsOf = (points: readonly { readonly id: string; readonly points: number }[], id: string): Cell =>
  points.find((one) => one.id === id)?.points ?? null;

const HEAD: readonly Column[] = [
  ['class', (line) => line.classCode],
  ['learner', (line) => line.who],
  ['attempt', (line) => line.attempt],
  ['counts', (line) => yes(line.counts)],
  ['repeats', (line) => yes(line.repeats)],
  ['same_run', (line) => yes(line.sameRun)],
  ['practice', (line) => yes(line.practice)],
  ['verdict', (line) => line.verdict],
  ['why', (line) => line.why || null],
  ['score', (line) => line.score],
  ['passed', (line) => yes(line.passed)],
  ['finished', (line) => yes(line.finished)],
  ['outcome', (line) => line.outcome?.replace(/^outcome\./, '') ?? null],
];

const FOOT: readonly Column[] = [
  ['job_s', (line) => line.job_s],
  ['spent_s', (line) => line.spent_s],
  ['ground', (line) => line.ground],
  ['own_ground', (line) => yes(line.ownGround)],
  ['taken', (line) => new Date(line.taken_ms).toISOString()],
  ['file', (line) => line.from || null],
];

function columnsOf({ exercise, sim }: ClassReport): Column[] {
  const { judged } = exercise;
  const sum = (id: CategoryId): number => judged.reduce((all, one) => (one.category === id ? all + one.max : all), 0);
  const categories = CATEGORY_IDS.filter((id) => judged.some((one) => one.category === id));
  return [
    ...HEAD,
    ...categories.flatMap((id): Column[] => [
      [`${id}`, (line) => pointsOf(line.categories, id)],
      [`${id}_max`, () => sum(id)],
    ]),
    ...judged.map(({ id }): Column => [`item_${id}`, (line) => pointsOf(line.items, id)]),
    ...FOOT,
    ['exercise', () => exercise.id],
    ['edition', () => exercise.edition],
    ['title', () => exercise.title],
    ['model', () => sim],
  ];
}

/** The whole table, head first. */
export function classCsv(report: ClassReport): string {
  const columns = columnsOf(report);
  const rows = report.results.map((line) => columns.map(([, cell]) => csvCell(cell(line))).join(','));
  return `${MARK}${[columns.map(([name]) => name).join(','), ...rows, ''].join('\r\n')}`;
}
