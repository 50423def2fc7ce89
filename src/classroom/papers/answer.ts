// What the answer key says of one ground: what lies there, what goes wrong, and what a careful crew did with it.
import {
  crewFor,
  grade,
  openStart,
  ownEntries,
  playing,
  recordOf,
  startTick,
  type Grade,
  type Lesson,
  type RecordSheet,
} from '$lessons';
import { verdictOf, type FaultMoment, type Ground, type Run } from '$sim';
import type { BuiltWell } from '../../charts/built';
import type { Band } from '../../charts/section';
import { builtWell } from '../../screens/debrief/builtWell';

export interface AnswerFault {
  readonly fault: string;
  readonly at: FaultMoment;
}

export interface Answer {
  readonly seed: number;
  /** How deep the drawing goes, m, and the layers down to there. */
  readonly shown_m: number;
  readonly layers: readonly Band[];
  readonly water: Pick<Ground, 'waterTable_m' | 'lowestWater_m' | 'heads' | 'salinity'>;
  readonly wells: Ground['site']['wells'];
  readonly faults: readonly AnswerFault[];
  /** null: the crew could not play it. */
  readonly careful: {
    /** What went into the fluid, and when, s from where the crew began. */
    readonly added: readonly { readonly at_s: number; readonly additive: string; readonly mass_g: number }[];
    readonly grade: Grade;
    readonly record: RecordSheet;
    readonly built: BuiltWell | null;
    readonly job_s: number;
  } | null;
}

/** Job seconds played between two stops. */
const SLICE_s = 20;
/** From here on people taste it, g/L: less is left out. */
const SALTY_gL = 1;
/** So much is shown under the deepest thing, m. */
const BELOW_m = 1;

/** What lies in the ground as a fault: where the bit meets it. */
function inGround(lesson: Lesson, { layers, salinity }: Ground): AnswerFault[] {
  return lesson.faults.flatMap(({ id }): AnswerFault[] => {
    const at_m =
      id === 'cobbles'
        ? layers.find(({ kind }) => kind === 'cobbles')?.top_m
        : id === 'saltyLayer'
          ? salinity.find(({ salt_gL }) => salt_gL >= SALTY_gL)?.from_m
          : undefined;
    return at_m === undefined ? [] : [{ fault: id, at: { depth_m: at_m } }];
  });
}

function addedIn(run: Run): NonNullable<Answer['careful']>['added'] {
  const from = startTick(run);
  return ownEntries(run).flatMap(([tick, action, payload]) =>
    action === 'addAdditive'
      ? [{ at_s: tick - from, additive: payload['additive'] as string, mass_g: payload['mass_g'] as number }]
      : [],
  );
}

function answerOf(run: Run, lesson: Lesson, played: boolean): Answer {
  const { ground, seed, faults = [] } = run.scenario;
  const record = recordOf(run, { lesson: lesson.id });
  const deepest_m = played ? Math.max(run.state.hole.depth_m, record.casing?.shoe_m ?? 0) : lesson.end.depth_m;
  const shown_m = Math.min(ground.depth_m, Math.max(deepest_m, ground.lowestWater_m) + BELOW_m);
  return {
    seed,
    shown_m,
    layers: ground.layers
      .filter(({ top_m }) => top_m < shown_m)
      .map(({ kind, top_m, bottom_m }) => ({ kind, top_m, bottom_m: Math.min(bottom_m, shown_m) })),
    water: {
      waterTable_m: ground.waterTable_m,
      lowestWater_m: ground.lowestWater_m,
      heads: ground.heads.filter(({ top_m, head_m }) => top_m < shown_m && head_m !== ground.waterTable_m),
      salinity: ground.salinity.filter(
        ({ from_m, salt_gL }, i, all) => from_m < shown_m && salt_gL >= SALTY_gL && from_m !== all[i + 1]?.from_m,
      ),
    },
    wells: ground.site.wells,
    faults: [...inGround(lesson, ground), ...faults.map(({ fault, at }) => ({ fault, at }))],
    careful: played
      ? {
          added: addedIn(run),
          grade: grade(run, lesson),
          record,
          built: builtWell(run, verdictOf(run)),
          job_s: run.state.tick - startTick(run),
        }
      : null,
  };
}

/** Plays a careful crew on the ground of a number; stops now and then, so that a page stays alive. Never throws. */
export function* answering(lesson: Lesson, seed: number): Generator<null, Answer> {
  const start = openStart(lesson, seed);
  try {
    while (!start.advance(SLICE_s)) yield null;
    for (const _ of playing(start.run, lesson, crewFor(start.run, lesson, 'careful'), SLICE_s)) yield null;
    return answerOf(start.run, lesson, true);
  } catch {
    return answerOf(start.run, lesson, false);
  }
}
