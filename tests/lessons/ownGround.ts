// Whole holes on ground of one's choice: the practice open-hole with its own layers, and how fast a crew gets on in it.

import { act, createRun, sensesOf, step, type Run, type SoilKind } from '$sim';
import { createCrew, isOver, jobOf, practiceFor, scenarioOf, type Lesson } from '$lessons';

export interface Layer {
  kind: SoilKind;
  thickness_m: [number, number];
}

export const layer = (kind: SoilKind, least_m: number, most_m = least_m): Layer => ({
  kind,
  thickness_m: [least_m, most_m],
});

export function practiceOn(layers: readonly Layer[], depth_m: number, waterTable_m: number): Lesson {
  const practice = practiceFor('open-hole', { depth_m, setting: 'delta' })!;
  return {
    ...practice,
    ground: { by: 'recipe', recipes: [{ layers: [...layers], waterTable_m: [waterTable_m, waterTable_m] }] },
  };
}

/** What a crew got done in one kind of soil. */
export interface Advance {
  readonly run: Run;
  /** Metres drilled in it, and the seconds for them: all seconds with turning and feed on. */
  readonly drilled_m: number;
  readonly fed_s: number;
}

/** Plays to the end, or for so many seconds, and counts the seconds of feeding below a depth. */
export function advance(practice: Lesson, crewName: string, from_m = 0, most_s = 43200, seed = 1): Advance {
  const run = createRun(scenarioOf(practice, seed));
  const crew = createCrew(crewName, jobOf(practice));
  let drilled_m = 0;
  let fed_s = 0;
  while (!isOver(run, practice) && run.state.tick < most_s) {
    const deed = crew.decide(sensesOf(run));
    if (deed !== null) act(run, deed.action, deed.payload);
    const { stem, hole } = run.state;
    const before_m = hole.depth_m;
    const counts = before_m >= from_m && stem.turning && stem.feed_frac > 0 && before_m - stem.bit_m < 0.01;
    if (!isOver(run, practice)) step(run);
    if (!counts) continue;
    fed_s++;
    drilled_m += hole.depth_m - before_m;
  }
  return { run, drilled_m, fed_s };
}

export const countOf = (run: Run, name: string): number =>
  run.record.events.filter((event) => event.name === name).length;
