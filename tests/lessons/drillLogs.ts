// Kept logs of a drill: what the crew before did, one log played right, and one with each decision spoiled.

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { act, createRun, restoreRun, snapshotOf, step, type LogEntry, type Run } from '$sim';
import { grade, isOver, lessonById, scenarioOf, type Grade, type ItemId } from '$lessons';

interface Kept {
  readonly seed: number;
  readonly ticks: number;
  /** Of the start the acts of the crew before; else the learner's own, and those of the crew to which the rest was left. */
  readonly log: readonly LogEntry[];
}

const keptLog = (lesson: string, decision: string): Kept =>
  JSON.parse(readFileSync(new URL(`./logs/${lesson}/${decision}.json`, import.meta.url), 'utf8')) as Kept;

/** Points that a wrong decision costs at least. */
const COSTS = 15;

/** Plays the kept logs of a lesson: the right one passes, each wrong one loses its points at the items named, the first of them for this reason. */
export function describeDrill(
  id: string,
  wrong: Readonly<Record<string, { readonly items: readonly ItemId[]; readonly reason: string }>>,
): void {
  const lesson = lessonById(id)!;
  const before = keptLog(id, 'start');
  const { seed } = before;

  /** Plays the acts of a log up to its end; returns how many of them it came to. */
  const play = (run: Run, { log, ticks }: Kept): number => {
    for (let next = 0; ; step(run)) {
      for (let entry = log[next]; entry?.[0] === run.state.tick; entry = log[++next]) act(run, entry[1], entry[2]);
      if (run.state.tick >= ticks || isOver(run, lesson)) return next;
    }
  };

  const start = createRun(scenarioOf(lesson, seed));
  play(start, before);
  const snapshot = snapshotOf(start);

  const gradeOf = (decision: string): Grade => {
    const kept = keptLog(id, decision);
    expect(kept.seed).toBe(seed);
    const run = restoreRun(start.scenario, snapshot, structuredClone(start.record));
    run.log.push(...start.log);
    const done = play(run, kept);
    expect([decision, done, run.state.tick]).toEqual([decision, kept.log.length, kept.ticks]);
    return grade(run, lesson);
  };

  const right = gradeOf('right');

  test(`${id}: the right log passes with 85 points or more`, () => {
    expect(right.passed).toBe(true);
    expect(right.score).toBeGreaterThanOrEqual(85);
  });

  test.each(Object.entries(wrong))(`${id}: %s costs ${COSTS} points or more, for its reason`, (decision, said) => {
    const spoilt = gradeOf(decision);
    const lostAt = (item: ItemId): number => {
      const of = ({ items }: Grade): number => items.find((own) => own.id === item)!.points;
      return of(right) - of(spoilt);
    };
    const lost = said.items.reduce((sum, item) => sum + lostAt(item), 0);
    expect([decision, lost, lost >= COSTS]).toEqual([decision, lost, true]);
    for (const item of said.items) expect([item, lostAt(item) > 0]).toEqual([item, true]);
    expect(spoilt.items.find(({ id: item }) => item === said.items[0])!.reason.key).toBe(said.reason);
  });
}
