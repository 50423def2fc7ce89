// A drill's decisions, each with a log in which it went wrong: kept as acts, played again, and judged against the log in which all went right.

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { playLog, type LogEntry, type Run, type Senses } from '$sim';
import {
  createCrew,
  grade,
  jobFor,
  lessonById,
  playOn,
  startRun,
  type Crew,
  type Deed,
  type Grade,
  type ItemId,
  type Lesson,
  type WordKey,
} from '$lessons';
import type { CarefulMemory } from '../../lessons/crews/carefulMemory';

export type Spoil = (deed: Deed | null, senses: Senses, memory: CarefulMemory) => Deed | null;

export interface Decision {
  /** Name of the log. */
  readonly name: string;
  /** The item that loses at least a third of its weight, and the sentence shown for it. */
  readonly item: ItemId;
  readonly reason: WordKey;
  readonly spoil: Spoil;
  /** A ground of its own, where the mistake shows; it has a right log of its own too. */
  readonly seed?: number;
  /** Few points hang on it, but nobody passes without it. */
  readonly essential?: true;
}

/** Points that a wrong decision must cost. */
const COSTS = 15;

export const without =
  (...actions: readonly Deed['action'][]): Spoil =>
  (deed) =>
    deed !== null && actions.includes(deed.action) ? null : deed;

/** The crew never comes to do it. */
export const neverDoing =
  (...actions: readonly Deed['action'][]): Spoil =>
  (deed, _senses, memory) => {
    for (const action of actions) memory.patience.notBefore_s[action] = 1e9;
    return deed !== null && actions.includes(deed.action) ? null : deed;
  };

export const withPayload =
  (action: Deed['action'], change: (payload: Deed['payload'], senses: Senses) => Deed['payload']): Spoil =>
  (deed, senses) =>
    deed?.action === action ? { action, payload: { ...deed.payload, ...change(deed.payload, senses) } } : deed;

interface Kept {
  readonly seed: number;
  readonly ticks: number;
  readonly log: readonly LogEntry[];
}

const pathOf = (lesson: Lesson, name: string): string =>
  join(dirname(fileURLToPath(import.meta.url)), 'logs', lesson.id, `${name}.json`);

function spoilt(lesson: Lesson, seed: number, spoil: Spoil): Run {
  const run = startRun(lesson, seed);
  const careful = createCrew('careful', jobFor(run, lesson));
  const crew: Crew = {
    ...careful,
    decide: (senses) => spoil(careful.decide(senses), senses, careful.memory as CarefulMemory),
  };
  return playOn(run, lesson, crew);
}

/** The log as it is kept; with WRITE_LOGS set it is played by the crew and written anew. */
function played(lesson: Lesson, seed: number, name: string, spoil: Spoil): Grade {
  const path = pathOf(lesson, name);
  if (process.env.WRITE_LOGS !== undefined) {
    const { state, log } = spoilt(lesson, seed, spoil);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, `${JSON.stringify({ seed, ticks: state.tick, log })}\n`);
  }
  expect([path, existsSync(path)]).toEqual([path, true]);
  const kept = JSON.parse(readFileSync(path, 'utf8')) as Kept;
  const run = startRun(lesson, kept.seed);
  playLog(run, kept.log, run.log.length, kept.ticks);
  expect(run.log.length).toBe(kept.log.length);
  return grade(run, lesson);
}

const pointsOf = ({ items }: Grade, item: ItemId): number => items.find(({ id }) => id === item)!.points;

/** Tests of one drill: the right log passes, and each wrong one costs its points for the reason that is shown. */
export function testDecisions(id: string, seed: number, decisions: readonly Decision[]): void {
  const lesson = lessonById(id)!;
  const right = new Map<number, Grade>();
  const rightGrade = (ground = seed): Grade => {
    const known =
      right.get(ground) ?? played(lesson, ground, ground === seed ? 'right' : `right-${ground}`, (deed) => deed);
    right.set(ground, known);
    return known;
  };

  test(`${id}: the right log passes with 85 points and more`, () => {
    expect(rightGrade()).toMatchObject({ passed: true });
    expect(rightGrade().score).toBeGreaterThanOrEqual(85);
  }, 60000);

  test.each(decisions.map((decision) => [decision.name, decision] as const))(
    `${id}: %s`,
    (name, { item, reason, spoil, essential, seed: ground = seed }) => {
      const wrong = played(lesson, ground, name, spoil);
      const lost = rightGrade(ground).score - wrong.score;
      if (essential) {
        expect(wrong.passed).toBe(false);
        expect(wrong.items.filter(({ failed }) => failed).map(({ id: failed }) => failed)).toEqual([item]);
      } else expect([lost >= COSTS, lost]).toEqual([true, lost]);
      const own = lesson.rubric.find((entry) => entry.item === item)!.weight;
      expect(pointsOf(rightGrade(ground), item) - pointsOf(wrong, item)).toBeGreaterThan(own / 3);
      expect(wrong.items.find((judged) => judged.id === item)!.reason.key).toBe(reason);
    },
    60000,
  );
}
