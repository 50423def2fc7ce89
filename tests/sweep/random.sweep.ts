// Five thousand random runs, and wells with a string that asks for trouble: every invariant holds in each, and between them they meet all that can happen.
import { EVENT_NAMES, REFUSAL_KEYS } from '$sim';
import { LONG_EVERY, POOR_STRINGS_FROM, ticksFor } from '../sim/random/jobs';
import { added, type Counts, type Tally } from '../sim/random/tally';
import { trial } from '../sim/random/trial';
import { CAUSES } from '../../sim/hole/wall/failures';
import type { Claim, Sweep } from './sweep';

const POOR_STRINGS = 300;
const RUNS = POOR_STRINGS_FROM + POOR_STRINGS;
const RUNS_PER_TASK = 50;
const TICKS = 1200;
/** One run in LONG_EVERY goes on for hours, for what takes its time. */
const LONG_TICKS = 14_400;
const ticksOf = (n: number): number => ticksFor(n, n % LONG_EVERY === LONG_EVERY - 1 ? LONG_TICKS : TICKS);
const LEAST_TAKEN = 0.5;
const LEAST_TIMES = 20;
/** A crew that works before or after the learner: lessons have that, jobs of chance do not. */
const OF_LESSONS: readonly string[] = ['crewRelieved', 'leftToCrew'];
const BY_CHANCE = EVENT_NAMES.filter((name) => !OF_LESSONS.includes(name));
/** Faults named in the report. */
const MOST_SHOWN = 20;

interface Task {
  readonly first: number;
}
interface Result {
  readonly tally: Tally;
  readonly faults: string[];
}

const sweep: Sweep<Task, Result> = {
  title: `${POOR_STRINGS_FROM} random runs of ${TICKS / 60} job minutes, one in ${LONG_EVERY} of ${LONG_TICKS / 3600} hours, and ${POOR_STRINGS} wells with a poor string`,

  tasks: () => Array.from({ length: RUNS / RUNS_PER_TASK }, (_, index) => ({ first: index * RUNS_PER_TASK })),

  run({ first }) {
    const faults: string[] = [];
    const tallies: Tally[] = [];
    for (let n = first; n < first + RUNS_PER_TASK; n++) {
      const { tally, fault } = trial(n, { ticks: ticksOf(n), replay: n % 10 === 0, restore: n % 10 === 5 });
      if (fault) faults.push(`run ${n}, ${fault}`);
      tallies.push(tally);
    }
    return { tally: added(tallies), faults };
  },

  judge(done): Claim[] {
    const faults = done.flatMap(({ result }) => result.faults);
    const { tried, taken, events, causes } = sumOf(done);
    const rare = BY_CHANCE.filter((name) => (events[name] ?? 0) < LEAST_TIMES);
    const timesOf = (cause: string): number => causes[`wallFails.${cause}`] ?? 0;
    const rareCauses = CAUSES.filter((cause) => timesOf(cause) < LEAST_TIMES);
    return [
      {
        text:
          `in ${faults.length} of ${RUNS} runs something was unsound (wanted: none)` +
          faults
            .slice(0, MOST_SHOWN)
            .map((one) => `; ${one}`)
            .join(''),
        holds: faults.length === 0,
      },
      {
        text: `${taken} of ${tried} acts drawn by chance were done (wanted: half)`,
        holds: taken >= tried * LEAST_TAKEN,
      },
      {
        text:
          `${BY_CHANCE.length - rare.length} of ${BY_CHANCE.length} events happen ${LEAST_TIMES} times or more (wanted: all)` +
          (rare.length > 0 ? `; too rare: ${rare.map((name) => `${name} ${events[name] ?? 0}`).join(', ')}` : ''),
        holds: rare.length === 0,
      },
      {
        text:
          `${CAUSES.length - rareCauses.length} of ${CAUSES.length} causes make a wall fail ${LEAST_TIMES} times or more (wanted: all)` +
          (rareCauses.length > 0
            ? `; too rare: ${rareCauses.map((cause) => `${cause} ${timesOf(cause)}`).join(', ')}`
            : ''),
        holds: rareCauses.length === 0,
      },
    ];
  },

  notes(done): string[] {
    const sum = sumOf(done);
    const never = REFUSAL_KEYS.filter((key) => !sum.refusals[key]);
    return [
      `${(sum.ticks / 3600).toFixed(0)} job hours, ${sum.drilled_m.toFixed(0)} m drilled.`,
      `Events: ${listed(sum.events)}.`,
      `Causes: ${listed(sum.causes)}.`,
      `Refusals: ${listed(sum.refusals)}; never: ${never.join(', ') || 'none of them'}.`,
      `Modes, by runs that were in them: ${listed(sum.modes)}.`,
    ];
  },
};
export default sweep;

function sumOf(done: readonly { readonly result: Result }[]): Tally {
  return added(done.map(({ result }) => result.tally));
}

function listed(counts: Counts): string {
  return Object.entries(counts)
    .sort(([, a], [, b]) => b - a)
    .map(([name, times]) => `${name} ${times}`)
    .join(', ');
}
