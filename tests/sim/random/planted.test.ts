// A loss of a millionth planted in any store of any run is found by the ledger.
import { expect, it } from 'vitest';
import { ledgerOf, type RunState } from '../../../sim';
import { fieldsOf, type Field } from '../run/fields';
import { playRandom } from './crew';
import { randomJob } from './jobs';

const RUNS = 12;
const TICKS = 700;
const LOSS_ratio = 1e-6;
const LIMIT = 1e-9;

/** Everything that holds water, grains or what is dissolved. */
const STORES = /^(hole|fill|pit)\..*(water_m3|solids_m3|bed_m3|deposit_m3|dissolved_kg|clumps_kg)(\[\d+\])?$/;

/** All of it that was ever there: what was there at first, and what came in. */
function everOf(state: RunState, { path }: Field): number {
  const { boundary, hole, fill } = state;
  const at = Number(/\[(\d+)\]$/.exec(path)?.[1] ?? 0);
  const row =
    path.startsWith('hole.bed') || path.startsWith('pit.')
      ? at
      : Math.floor(at / (path.startsWith('hole') ? hole.cells : fill.cells));
  if (path.includes('water_m3')) return boundary.waterStart_m3 + boundary.waterIn_m3;
  if (path.includes('clumps_kg')) return boundary.polymerStart_kg + boundary.polymerIn_kg;
  if (path.includes('dissolved_kg')) return boundary.dissolvedStart_kg[row] + boundary.dissolvedIn_kg[row];
  return boundary.solidsStart_m3[row] + boundary.solidsIn_m3[row];
}

it('a planted loss is found, whichever store it is in', { timeout: 120_000 }, () => {
  const planted = new Map<string, number>();
  const missed: string[] = [];
  for (let n = 0; n < RUNS; n++) {
    const { run } = playRandom(randomJob(n), `random ${n}`, TICKS, () => undefined);
    const worst = (): number => Math.max(...Object.values(ledgerOf(run) as object).map(Number));
    expect(worst()).toBeLessThanOrEqual(LIMIT);
    for (const field of fieldsOf(run.state).filter(({ path }) => STORES.test(path))) {
      const value = field.get() as number;
      const loss = LOSS_ratio * everOf(run.state, field);
      if (!(loss > 0) || value < loss) continue;
      field.set(value - loss);
      planted.set(field.kind, (planted.get(field.kind) ?? 0) + 1);
      if (!(worst() > LIMIT)) missed.push(`run ${n}, ${field.path}: ${loss} of ${value}`);
      field.set(value);
    }
  }
  expect(missed).toEqual([]);
  // Each kind of store held something somewhere.
  expect(planted.size).toBeGreaterThanOrEqual(12);
});
