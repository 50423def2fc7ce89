// Whatever is missing from a record, an item gives a share between nothing and all, a sentence with all its figures, and evidence that can be shown.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { format, ITEM_IDS, ITEMS, LESSONS, type ItemId, type RunView } from '$lessons';
import { createRecord, TRACE_COLUMNS, type Trace } from '$sim';
import { cleanView } from '../handMade';
import { cleanWell } from '../handMadeWell';
import { wellWith } from './cases';

/** What only an exercise judges. */
const OF_EXERCISES: Partial<Record<ItemId, Readonly<Record<string, number>>>> = {
  withinBudget: { full_marks: 200, none_marks: 300 },
};

/** The first figures by which a lesson judges the item. */
const BANDS = new Map(
  ITEM_IDS.map((id) => {
    const judged = LESSONS.flatMap(({ rubric }) => rubric).find(({ item }) => item === id);
    return [id, judged?.bands ?? OF_EXERCISES[id]!] as const;
  }),
);

function upTo(trace: Trace, length: number): Trace {
  const cut = createRecord().trace;
  cut.length = length;
  for (const name of TRACE_COLUMNS) cut.columns[name].set(trace.columns[name].subarray(0, length));
  return cut;
}

const WHOLE: readonly RunView[] = [
  cleanView(),
  cleanWell(),
  wellWith(
    [
      [9500, 'placeSeal', { seal: 'cement', volume_L: 20, rate_Lmin: 2 }],
      [20000, 'develop', { method: 'surge', time_s: 600 }],
      [30000, 'yieldTest', { lift: 'suction', rate1_Lmin: 14, step_s: 7200, recovery_s: 0 }],
      [8300, 'workCasing', { time_s: 60 }],
      [690, 'lift', { distance_m: 0.2, speed_ms: 0.2 }],
      [900, 'feelFluid', {}],
      [7000, 'logLayer', { from_m: 0, to_m: 4, kind: 'fineSand' }],
      [7000, 'logLayer', { from_m: 4, to_m: 12, kind: 'coarseSand' }],
      [20000, 'breakPolymer', { dose_mgL: 300, contact_s: 3600 }],
    ],
    [
      { tick: 8250, name: 'casingHung', data: {} },
      { tick: 7900, name: 'casingJoined', data: {} },
      { tick: 8000, name: 'casingJoined', data: {} },
      { tick: 8800, name: 'packPoured', data: { pack: 'pack1', volume_L: 12 } },
      { tick: 8700, name: 'packBridged', data: { fill: 'pack1', at_m: 6 } },
      { tick: 9600, name: 'sealPlaced', data: { seal: 'cement', volume_L: 20 } },
      { tick: 600, name: 'layerChanged', data: { kind: 'coarseSand', depth_m: 4 } },
      { tick: 3000, name: 'engineStopped', data: {} },
      { tick: 40000, name: 'testDone', data: { refusal: '' } },
      { tick: 50000, name: 'leftToCrew', data: {} },
    ],
  ),
];

/** A record with some of its events, acts, samples and rows, of a hole of any depth, begun by the learner or taken over. */
const records = fc
  .record({
    whole: fc.constantFrom(...WHOLE),
    keep: fc.infiniteStream(fc.boolean()),
    rows_frac: fc.double({ min: 0, max: 1, noNaN: true }),
    depth_frac: fc.double({ min: 0, max: 1.2, noNaN: true }),
    start: fc.constantFrom(0, 0, 0.3, 1),
    without: fc.subarray(['verdict', 'plan', 'book', 'handed', 'powder'] as const),
  })
  .map(({ whole, keep, rows_frac, depth_frac, start, without }): RunView => {
    const some = <T>(list: readonly T[]): T[] => list.filter(() => keep.next().value as boolean);
    const { well } = whole;
    return {
      ...whole,
      events: some(whole.events),
      log: some(whole.log),
      tray: some(whole.tray),
      trace: upTo(whole.trace, Math.floor(whole.trace.length * rows_frac)),
      depth_m: whole.depth_m * depth_frac,
      start_tick: Math.floor(whole.ticks * start),
      startDepth_m: whole.depth_m * depth_frac * start,
      powderBefore_kg: without.includes('powder') ? 0 : start,
      well: well && {
        ...well,
        verdict: without.includes('verdict') ? null : well.verdict,
        plan: without.includes('plan') ? null : well.plan,
        ownLog: without.includes('book') ? [] : well.ownLog,
        handedOver: !without.includes('handed'),
      },
    };
  });

test('every item on any record', () => {
  const reasons = new Set<string>();
  fc.assert(
    fc.property(records, (view) => {
      for (const id of ITEM_IDS) {
        const { share_frac, reason, evidence } = ITEMS[id satisfies ItemId](view, BANDS.get(id)!);
        expect([id, share_frac >= 0 && share_frac <= 1, share_frac]).toEqual([id, true, share_frac]);
        expect([id, format(reason.key, reason.data)]).toEqual([
          id,
          expect.not.stringMatching(/[{}]|NaN|undefined|Infinity/),
        ]);
        for (const { tick = 0, depth_m = 0, value = 0 } of evidence)
          expect([id, [tick, depth_m, value].every(Number.isFinite)]).toEqual([id, true]);
        reasons.add(reason.key);
      }
    }),
    { numRuns: 300, seed: 1 },
  );
  // The records reach more than one sentence of each item.
  expect(reasons.size).toBeGreaterThan(2 * ITEM_IDS.length);
});
