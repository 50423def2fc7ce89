// Counting what random runs have met: events, causes, refusals, modes of the machine.
import type { Run } from '../../../sim';

export type Counts = Record<string, number>;

export interface Tally {
  tried: number;
  taken: number;
  ticks: number;
  /** Drilled below the starter hole, m, all runs together. */
  drilled_m: number;
  readonly events: Counts;
  /** Causes by event, such as primeLost.air. */
  readonly causes: Counts;
  readonly refusals: Counts;
  /** Modes that a run was in at the end of a second at least once, by region. */
  readonly modes: Counts;
}

export function createTally(): Tally {
  return { tried: 0, taken: 0, ticks: 0, drilled_m: 0, events: {}, causes: {}, refusals: {}, modes: {} };
}

const count = (counts: Counts, name: string, by = 1): void => {
  counts[name] = (counts[name] ?? 0) + by;
};

export function countEvents(tally: Tally, run: Run): void {
  for (const { name, data } of run.record.events) {
    count(tally.events, name);
    if (typeof data.cause === 'string') count(tally.causes, `${name}.${data.cause}`);
    if (name === 'refused' && typeof data.reason === 'string') count(tally.refusals, data.reason);
  }
}

export function countModes(tally: Tally, modes: ReadonlySet<string>): void {
  for (const mode of modes) count(tally.modes, mode);
}

export function noteModes(modes: Set<string>, run: Run): void {
  for (const [region, mode] of Object.entries(run.state.machine)) modes.add(`${region}.${mode}`);
}

export function added(tallies: readonly Tally[]): Tally {
  const sum = createTally();
  for (const one of tallies) {
    sum.tried += one.tried;
    sum.taken += one.taken;
    sum.ticks += one.ticks;
    sum.drilled_m += one.drilled_m;
    for (const part of ['events', 'causes', 'refusals', 'modes'] as const)
      for (const [name, times] of Object.entries(one[part])) count(sum[part], name, times);
  }
  return sum;
}
