// The driller's record of a run, put together from what its crew wrote, named, read and did; never from the true ground.

import { costOf, SIM_VERSION, type AdditiveName, type Run } from '$sim';
import { doneActs } from './done';
import { groundEntries } from './groundEntries';
import { BLANK_SHEET, type RecordSheet } from './sheet';
import { wellEntries } from './wellEntries';

export interface AboutRecord {
  readonly lesson: string;
  readonly who?: string;
  /** Day on which the run was begun, ISO 8601. */
  readonly begun?: string;
}

/** What the crew put into the fluid, in the order in which it was first used. */
function flushOf(run: Run): { additive: AdditiveName; mass_kg: number }[] {
  const sums = new Map<AdditiveName, number>();
  for (const { payload } of doneActs(run, 'addAdditive')) {
    const additive = payload.additive as AdditiveName;
    sums.set(additive, (sums.get(additive) ?? 0) + (payload.mass_g as number) / 1000);
  }
  return [...sums].map(([additive, mass_kg]) => ({ additive, mass_kg: Math.round(mass_kg * 100) / 100 }));
}

function holeOf(run: Run): NonNullable<RecordSheet['hole']> {
  const { state, kit } = run;
  return {
    depth_m: Math.round(state.hole.depth_m * 100) / 100,
    bit_mm: Math.round(kit.bit_m * 1000),
    rods: Math.ceil(state.hole.depth_m / kit.rodLength_m - 1e-6),
    rodLength_m: kit.rodLength_m,
    crew: kit.crew,
    water_L: Math.round(state.stocks.waterUsed_L),
    flush: flushOf(run),
    givenUp_m: state.oldHoles.map(({ depth_m }) => Math.round(depth_m * 10) / 10),
  };
}

/** The record as it stands now. */
export function recordOf(run: Run, about: AboutRecord): RecordSheet {
  const { state } = run;
  return {
    ...BLANK_SHEET,
    simulated: true,
    sim: SIM_VERSION,
    lesson: about.lesson,
    seed: run.scenario.seed,
    who: about.who ?? '',
    begun: about.begun ?? null,
    written: { ...state.recordFields },
    time_s: state.tick,
    cost_marks: Math.round(costOf(run) * 10) / 10,
    hole: holeOf(run),
    ...groundEntries(run),
    ...wellEntries(run),
    notes: state.notes.map(({ tick, text }) => ({ time_s: tick, text })),
  };
}
