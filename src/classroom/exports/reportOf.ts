// The class as it stands on the board, as the exports write it.
import {
  CATEGORY_OF,
  exerciseHash,
  lessonOfExercise,
  type Board,
  type BoardRow,
  type Exercise,
  type Judgement,
  type Result,
} from '$lessons';
import { SIM_VERSION } from '$sim';
import type { ClassReport, ResultLine } from './report';

/** A result on the board: with when it came, and in which file. */
export interface Handed {
  readonly id: string;
  readonly result: Result;
  readonly taken_ms: number;
  readonly from: string;
}

/** Says a sentence in the reader's language. */
type Say = (key: string, data: NonNullable<Judgement['problem']>['data']) => string;

function lineOf(row: BoardRow, { result, taken_ms, from }: Handed, say: Say): ResultLine {
  const { verdict, problem, grade, outcome, ticks, ownSeed } = row.judgement;
  return {
    who: row.who,
    classCode: row.classCode,
    attempt: row.attempt,
    practice: result.practice,
    counts: row.latest,
    repeats: row.duplicateOf !== undefined,
    sameRun: row.sameRunAs !== undefined,
    verdict,
    why: problem ? say(problem.key, problem.data) : '',
    ground: result.seed,
    ownGround: ownSeed,
    finished: grade ? result.finished : null,
    score: grade?.score ?? null,
    passed: grade?.passed ?? null,
    outcome: outcome?.key ?? null,
    categories: grade?.categories ?? [],
    items: grade?.items.map(({ id, points, max }) => ({ id, points, max })) ?? [],
    job_s: grade ? ticks : null,
    spent_s: row.spent_s ?? null,
    taken_ms,
    from,
  };
}

export function reportOf(exercise: Exercise, board: Board, handed: readonly Handed[], say: Say): ClassReport {
  const { id, edition, title, lesson, pass_points } = exercise;
  const byId = new Map(handed.map((one) => [one.id, one]));
  return {
    exercise: {
      id,
      edition,
      hash: exerciseHash(exercise),
      title,
      lesson,
      pass_points,
      judged: lessonOfExercise(exercise).rubric.map(({ item, weight }) => ({
        id: item,
        category: CATEGORY_OF[item],
        max: weight,
      })),
    },
    sim: SIM_VERSION,
    results: board.rows.flatMap((row) => {
      const one = byId.get(row.id);
      return one ? [lineOf(row, one, say)] : [];
    }),
  };
}
