// The results of a class, brought together: which one counts for each learner, where the class lost most, who needs which drill.

import { DRILL_OF, LEARNT_frac, shownIn } from '../drills';
import { DRILL_IDS, type DrillId } from '../contents';
import { ITEM_IDS, type ItemId } from '../rubric/ids';
import type { Judgement } from './judging';
import type { Result } from './resultSchema';

/** A result that was taken in and judged. */
export interface JudgedResult {
  /** Any that no other on the board has; in the order in which they were taken in. */
  readonly id: string;
  readonly result: Result;
  readonly judgement: Judgement;
}

export interface BoardRow {
  readonly id: string;
  readonly who: string;
  readonly classCode: string | null;
  readonly attempt: number | null;
  readonly judgement: Judgement;
  /** The one that counts for this learner. */
  readonly latest: boolean;
  /** The same result was taken in before: its id. */
  readonly duplicateOf?: string;
  /** The same run was handed in before under another sign or attempt: its id. */
  readonly sameRunAs?: string;
  /** Time at the screen, as the device counted it, s. */
  readonly spent_s?: number;
  /** Share of the points of each drill's subject, 0 to 1; empty where it is not reproduced. */
  readonly shown: Partial<Record<DrillId, number>>;
  /** Drills whose subject was not shown well enough, the weakest first. */
  readonly needs: readonly DrillId[];
}

export interface Lost {
  readonly item: ItemId;
  readonly drill: DrillId;
  /** Over all learners that count. */
  readonly points: number;
  /** How many of them lost any. */
  readonly learners: number;
}

export interface Board {
  /** All, by learner, then attempt, then as they came. */
  readonly rows: readonly BoardRow[];
  /** Those that count, one for each learner. */
  readonly counted: readonly BoardRow[];
  readonly passed: number;
  /** Subjects that the exercise judges, in the order in which they are learnt. */
  readonly subjects: readonly DrillId[];
  /** Items that cost points, the dearest to the class first. */
  readonly lost: readonly Lost[];
  /** Who needs which drill, the one that most need first. */
  readonly drills: readonly { readonly drill: DrillId; readonly who: readonly string[] }[];
  /** Of those that count: time at the screen where it is known, and job time, together, s. */
  readonly spent_s: number | null;
  readonly ticks: number;
}

function weakest(shown: BoardRow['shown']): DrillId[] {
  return DRILL_IDS.filter((drill) => (shown[drill] ?? 1) < LEARNT_frac).sort((a, b) => shown[a]! - shown[b]!);
}

function rowOf({ id, result, judgement }: JudgedResult): BoardRow {
  const { who, classCode, attempt, spent_s } = result;
  const shown = judgement.grade ? shownIn(judgement.grade.items) : {};
  const spent = spent_s === undefined ? {} : { spent_s };
  return { id, who, classCode, attempt, judgement, latest: false, ...spent, shown, needs: weakest(shown) };
}

/** The same for the same run, handed in again with another time or other answers. What is not reproduced is never the same as what is. */
function runKey({ result, judgement }: JudgedResult): string {
  const { exercise, sim, practice, seed, ticks, hash, claimed, finished, log } = result;
  return [judgement.verdict, exercise, sim, practice, seed, ticks, hash, claimed.score, finished, log.length].join('/');
}

/** Told beside a row: that the result came before, or that the run did, under another sign. Only what is reproduced is one's own. */
function told(judged: readonly JudgedResult[]): ReadonlyMap<string, Pick<BoardRow, 'duplicateOf' | 'sameRunAs'>> {
  const byRun = new Map<string, JudgedResult[]>();
  const notes = new Map<string, Pick<BoardRow, 'duplicateOf' | 'sameRunAs'>>();
  for (const one of judged) {
    const { who, classCode, attempt } = one.result;
    const key = runKey(one);
    const before = byRun.get(key) ?? [];
    const same = before.find(
      ({ result }) => result.who === who && result.classCode === classCode && result.attempt === attempt,
    );
    if (same) notes.set(one.id, { duplicateOf: same.id });
    else if (before[0]) notes.set(one.id, { sameRunAs: before[0].id });
    if (!same) byRun.set(key, [...before, one]);
  }
  return notes;
}

/** Of two of one learner the one that counts: the later attempt, else the one that came to its end, else the longer, else the later taken in. */
function later(a: JudgedResult, b: JudgedResult): JudgedResult {
  const order = [
    (b.result.attempt ?? 0) - (a.result.attempt ?? 0),
    Number(b.result.finished) - Number(a.result.finished),
    b.result.ticks - a.result.ticks,
  ];
  return (order.find((difference) => difference !== 0) ?? 1) > 0 ? b : a;
}

/** The id of the result that counts for each learner: the latest attempt of those that are reproduced. */
function latestOf(judged: readonly JudgedResult[]): ReadonlySet<string> {
  const counts = new Map<string, JudgedResult>();
  for (const one of judged) {
    if (one.judgement.verdict !== 'reproduced') continue;
    const { who } = one.result;
    const known = counts.get(who);
    counts.set(who, known ? later(known, one) : one);
  }
  return new Set([...counts.values()].map(({ id }) => id));
}

const tenth = (value: number): number => Math.round(value * 10) / 10;

function lostIn(counted: readonly BoardRow[]): Lost[] {
  const items = counted.flatMap(({ judgement }) => judgement.grade?.items ?? []);
  return ITEM_IDS.map((item) => {
    const short = items.filter(({ id, points, max }) => id === item && points < max);
    const points = tenth(short.reduce((sum, { points, max }) => sum + max - points, 0));
    return { item, drill: DRILL_OF[item], points, learners: short.length };
  })
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points);
}

/** `judged`: in the order in which they were taken in. */
export function boardOf(judged: readonly JudgedResult[]): Board {
  const notes = told(judged);
  const unique = judged.filter(({ id }) => !notes.get(id)?.duplicateOf);
  const latest = latestOf(unique);
  const rows = judged
    .map((one): BoardRow => ({ ...rowOf(one), latest: latest.has(one.id), ...notes.get(one.id) }))
    .sort((a, b) => (a.who === b.who ? (a.attempt ?? 0) - (b.attempt ?? 0) : a.who < b.who ? -1 : 1));
  const counted = rows.filter((row) => row.latest);
  const spent = counted.flatMap(({ spent_s }) => spent_s ?? []);
  const drills = DRILL_IDS.map((drill) => ({
    drill,
    who: counted.filter(({ needs }) => needs.includes(drill)).map(({ who }) => who),
  }));
  return {
    rows,
    counted,
    passed: counted.filter(({ judgement }) => judgement.grade!.passed).length,
    subjects: DRILL_IDS.filter((drill) => counted.some(({ shown }) => shown[drill] !== undefined)),
    lost: lostIn(counted),
    drills: drills.filter(({ who }) => who.length > 0).sort((a, b) => b.who.length - a.who.length),
    spent_s: spent.length === 0 ? null : spent.reduce((sum, one) => sum + one, 0),
    ticks: counted.reduce((sum, { judgement }) => sum + judgement.ticks, 0),
  };
}
