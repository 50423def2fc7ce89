// The class in figures, and what is said beside a row of the board.
import { CATEGORY_IDS, type Board, type BoardRow, type CategoryId } from '$lessons';
import { whoWords } from '../../../app/who';
import { formatDuration, formatNumber, t } from '../../../words';

/** Categories that the exercise judges, in their order, with the points of each. */
export interface CategoryHead {
  readonly id: CategoryId;
  readonly max: number;
}

export function categoryHeads({ counted }: Board): CategoryHead[] {
  const all = counted.flatMap(({ judgement }) => judgement.grade!.categories);
  // Editions may judge differently: then the most that there was to earn.
  return CATEGORY_IDS.flatMap((id) => {
    const own = all.filter((one) => one.id === id);
    return own.length > 0 ? [{ id, max: Math.max(...own.map(({ max }) => max)) }] : [];
  });
}

/** Share of the points of each category that the class earned, 0 to 1. */
export function categoryShares(board: Board): { readonly id: CategoryId; readonly share: number }[] {
  return categoryHeads(board).map(({ id, max }) => {
    const points = board.counted.map(
      ({ judgement }) => judgement.grade!.categories.find((one) => one.id === id)?.points ?? 0,
    );
    return { id, share: points.reduce((sum, one) => sum + one, 0) / (max * points.length) };
  });
}

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, one) => sum + one, 0) / values.length;

const orUnknown = (value: number | null, words: (value: number) => string): string =>
  value === null ? t('results.sum.unknown') : words(value);

export interface Figure {
  readonly label: string;
  readonly is: string;
}

export function sumsOf({ rows, counted, passed }: Board): Figure[] {
  const scores = counted.map(({ judgement }) => judgement.grade!.score);
  const spent = counted.flatMap(({ spent_s }) => spent_s ?? []);
  const jobs = counted.map(({ judgement }) => judgement.ticks);
  return [
    { label: t('results.sum.learners'), is: formatNumber(counted.length) },
    { label: t('results.sum.passed'), is: formatNumber(passed) },
    { label: t('results.sum.mean'), is: orUnknown(mean(scores), (one) => formatNumber(one, 0)) },
    { label: t('results.sum.job'), is: orUnknown(mean(jobs), formatDuration) },
    { label: t('results.sum.spent'), is: orUnknown(mean(spent), formatDuration) },
    { label: t('results.sum.handed'), is: formatNumber(rows.length) },
  ];
}

/** What is to be known of a result beside its verdict. */
export function notesOf(row: BoardRow, board: Board, practice: boolean): string[] {
  const { latest, duplicateOf, sameRunAs, judgement } = row;
  const other = board.rows.find(({ id }) => id === sameRunAs);
  const notes: readonly (readonly [boolean, () => string])[] = [
    [latest, () => t('results.row.counts')],
    [duplicateOf !== undefined, () => t('results.row.duplicate')],
    [other !== undefined, () => t('results.row.sameRun', { who: whoWords(other!.who) })],
    [judgement.verdict === 'reproduced' && !latest && duplicateOf === undefined, () => t('results.row.earlier')],
    [judgement.ownSeed === false, () => t('results.row.otherGround')],
    [practice, () => t('results.row.practice')],
  ];
  return notes.filter(([there]) => there).map(([, words]) => words());
}
