// A well is the same from a snapshot of any phase, its last bits count, and a planted loss is found.
import { describe, expect, it } from 'vitest';
import { CHLORINE } from '../../../sim/fluid/substances';
import { createStream, hashRun, ledgerOf, type Run } from '../../../sim';
import { playOn } from '../random/crew';
import { changedLeast, fieldsOf, type Field } from './fields';
import { copyOf, wellAt, wholeWell } from './wellMoments';

const LIMIT = 1e-9;
const LOSS_ratio = 1e-6;
const STORES: readonly string[] = [
  'completion.annulus.fill_m3[]',
  'completion.annulus.falling_m3[]',
  'well.chlorine_kg',
  'well.water_m3',
];
/** Places tried of one long list: they share one path of the code. */
const TRIED_OF_LIST = 12;

const well = wholeWell();
const stream = createStream('moments of a well');
/** One moment of each phase, drawn by chance. */
const chosen = well.stretches.map(({ from_tick, to_tick }) =>
  Math.floor(from_tick + stream.uniform() * (to_tick - from_tick)),
);
const there = wellAt(well, chosen);
const wanted = hashRun(well.run);

function fewOfEachKind(fields: readonly Field[]): Field[] {
  const counts = new Map<string, number>();
  for (const { kind } of fields) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const seen = new Map<string, number>();
  return fields.filter(({ kind }) => {
    const nth = seen.get(kind) ?? 0;
    seen.set(kind, nth + 1);
    return nth % Math.max(1, Math.floor(counts.get(kind)! / TRIED_OF_LIST)) === 0;
  });
}

describe('a well', () => {
  it('has been handed over after every phase', () => {
    expect(well.run.state.machine.job).toBe('handedOver');
    expect(there.map(({ state }) => state.machine.job)).toEqual([
      'pullingOut',
      'casing',
      'packing',
      'sealing',
      'developing',
      'testing',
      'testing',
    ]);
  });

  it.each(well.stretches.map(({ phase }, n) => [phase, n] as const))(
    'from a snapshot taken while %s ends alike',
    (_phase, n) => {
      const later = copyOf(there[n]!);
      // What was done in the tick itself is in the snapshot.
      const rest = well.log.filter(([tick]) => tick > chosen[n]!);
      playOn(later, rest, well.run.state.tick);
      expect(hashRun(later)).toBe(wanted);
    },
  );

  it.each(well.stretches.map(({ phase }, n) => [phase, n] as const))(
    'the last bit of every field of completion and well counts while %s',
    (_phase, n) => {
      const run = there[n]!;
      const before = hashRun(run);
      const list = fewOfEachKind(
        fieldsOf(run.state).filter(({ kind }) => kind.startsWith('completion.') || kind.startsWith('well')),
      );
      const missed = list.filter((field) => {
        const value = field.get();
        field.set(changedLeast(value));
        const same = hashRun(run) === before;
        field.set(value);
        return same;
      });
      expect(missed.map(({ path }) => path)).toEqual([]);
      expect(list.length).toBeGreaterThan(n < 2 ? 30 : 150);
      expect(hashRun(run)).toBe(before);
    },
  );
});

describe('the books of a well', () => {
  const worst = (run: Run): number => Math.max(...Object.values(ledgerOf(run)).map(Number));

  /** All of it that was ever there. */
  function everOf({ state }: Run, { kind, path }: Field): number {
    const { boundary, completion } = state;
    if (kind === 'well.water_m3') return boundary.waterStart_m3 + boundary.waterIn_m3;
    if (kind === 'well.chlorine_kg') return boundary.dissolvedStart_kg[CHLORINE]! + boundary.dissolvedIn_kg[CHLORINE]!;
    const at = Number(/\[(\d+)\]$/.exec(path)![1]);
    return completion.annulus!.put_m3[Math.floor(at / completion.annulus!.cells)]!;
  }

  it('balance in every phase, and a millionth lost of water, fill or chlorine is found', () => {
    const planted = new Set<string>();
    const missed: string[] = [];
    for (const run of there) {
      expect(worst(run)).toBeLessThanOrEqual(LIMIT);
      const stores = fieldsOf(run.state).filter(({ kind }) => STORES.includes(kind));
      for (const field of stores) {
        const value = field.get() as number;
        const loss = LOSS_ratio * everOf(run, field);
        if (!(loss > 0) || value < loss) continue;
        field.set(value - loss);
        planted.add(field.kind);
        if (!(worst(run) > LIMIT)) missed.push(`${run.state.tick} ${field.path}`);
        field.set(value);
      }
    }
    expect(missed).toEqual([]);
    expect([...planted].sort()).toEqual([...STORES].sort());
  });
});
