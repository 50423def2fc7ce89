// Ten thousand altered exercises and results: each is refused with a sentence that says what and where, or used; nothing throws, nothing is run.
import { alteredFile } from './altered';
import { looked } from './looked';
import type { Claim, Sweep } from './sweep';

const FILES = 10_000;
const PER_TASK = 250;
/** Faults named in the report. */
const MOST_SHOWN = 20;

interface Task {
  readonly first: number;
}
interface Result {
  readonly faults: string[];
  readonly came: Record<string, number>;
  readonly ways: Record<string, number>;
}

const sweep: Sweep<Task, Result> = {
  title: `${FILES} altered exercises and results`,

  tasks: () => Array.from({ length: FILES / PER_TASK }, (_, i) => ({ first: i * PER_TASK })),

  run({ first }) {
    const faults: string[] = [];
    const came: Record<string, number> = {};
    const ways: Record<string, number> = {};
    for (let n = first; n < first + PER_TASK; n++) {
      const altered = alteredFile(n);
      const one = looked(altered);
      came[one.came] = (came[one.came] ?? 0) + 1;
      ways[altered.how] = (ways[altered.how] ?? 0) + 1;
      if (one.fault) faults.push(`file ${n}, ${altered.how}: ${one.fault}`);
    }
    return { faults, came, ways };
  },

  judge(done): Claim[] {
    const faults = done.flatMap(({ result }) => result.faults);
    const ways = Object.keys(summed(done.map(({ result }) => result.ways)));
    return [
      {
        text:
          `${faults.length} of ${FILES} throw, run a script, or are refused without a sentence that says what is wrong (wanted: none)` +
          faults
            .slice(0, MOST_SHOWN)
            .map((one) => `; ${one}`)
            .join(''),
        holds: faults.length === 0,
      },
      { text: `${ways.length} ways to alter a file were tried (wanted: 40)`, holds: ways.length >= 40 },
    ];
  },

  notes: (done) => [`What came of them: ${listed(summed(done.map(({ result }) => result.came)))}.`],
};
export default sweep;

function summed(counts: readonly Record<string, number>[]): Record<string, number> {
  const sum: Record<string, number> = {};
  for (const one of counts) for (const [name, count] of Object.entries(one)) sum[name] = (sum[name] ?? 0) + count;
  return sum;
}

const listed = (counts: Record<string, number>): string =>
  Object.entries(counts)
    .sort(([, a], [, b]) => b - a)
    .map(([name, count]) => `${name} ${count}`)
    .join(', ');
