// Senses tell what a crew can sense and nothing else: hidden fields may be anything, and every field has been judged.
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  act,
  buildGround,
  createRun,
  replayRun,
  sensesOf,
  step,
  type Ground,
  type Run,
  type Scenario,
} from '../../../sim';
import { playOn, playRandom } from '../random/crew';
import { randomJob } from '../random/jobs';
import { fieldsOf, type Field, type Plain } from './fields';
import { GROUND_HIDDEN, HEARD_AT_THE_BIT, HIDDEN, OWN, SENSED } from './sensed';
import { WELL_HIDDEN, WELL_SENSED } from './sensedWell';
import { copyOf, wellAt, wholeWell } from './wellMoments';

const JOBS = 16;
const TICKS = 1200;
/** Moments taken out of each job, at these ticks. */
const ALL_NAMES = { sample: 1, main: 'clay', secondary: 'silt', colour: 'grey', feel: 'sticky' };
/** A hole given up before, for short runs hardly give one up. */
const OLD_HOLE = {
  tick: 10,
  depth_m: 3,
  rodsLost: 0,
  casingLost_m: 0,
  backfilled_m3: 0,
  ownLog: [{ from_m: 0, to_m: 1, kind: 'silt' as const }],
};
const MOMENTS = [95, 333, 570, 811, 1120];

/** What a task remembers is one field, whatever its names are. A null is no field of its own. */
const kindOf = ({ kind }: Field): string =>
  kind.replace(/^tasks\[\]\.data\..*/, 'tasks[].data').replace(/^recordFields\..*/, 'recordFields.*');
const realFields = (root: object): Field[] => fieldsOf(root).filter((field) => field.get() !== null);

interface Moment {
  readonly run: Run;
  readonly byKind: ReadonlyMap<string, readonly Field[]>;
}

function momentOf(run: Run): Moment {
  const byKind = new Map<string, Field[]>();
  for (const field of realFields(run.state)) {
    const kind = kindOf(field);
    byKind.set(kind, [...(byKind.get(kind) ?? []), field]);
  }
  return { run, byKind };
}

/** Parts of each phase of a well at which it is looked at. */
const PARTS_frac = [0.03, 0.4, 0.9];

const moments: Moment[] = [];
beforeAll(() => {
  const well = wholeWell();
  const ticks = well.stretches.flatMap(({ from_tick, to_tick }) =>
    PARTS_frac.map((part) => Math.floor(from_tick + part * (to_tick - from_tick))),
  );
  for (const run of wellAt(well, [...ticks, well.run.state.tick])) {
    // Cuttings in the hole before the casing was in.
    run.state.completion.openFill_m3[0] = 0.01;
    moments.push(momentOf(run));
  }
  for (let n = 0; n < JOBS; n++) {
    playRandom(randomJob(n), `random ${n}`, TICKS, (run) => {
      // Those at which something has just happened, too.
      const { tick, recent } = run.state;
      if (!MOMENTS.includes(tick) && !(recent.length > 0 && tick % 8 === 0)) return;
      const there = copyOf(run);
      // So that some sample has all its names.
      if (there.state.samples.length > 0) act(there, 'nameSample', ALL_NAMES);
      if (there.state.oldHoles.length === 0) there.state.oldHoles.push(structuredClone(OLD_HOLE));
      moments.push(momentOf(there));
    });
  }
}, 300_000);

const sensed = (run: Run): string => JSON.stringify(sensesOf(run));

/** Changes the fields, looks, and puts all back. */
function lookedAtWith(run: Run, changes: readonly [Field, Plain][]): string {
  const before = changes.map(([field]) => field.get());
  for (const [field, value] of changes) field.set(value);
  const seen = sensed(run);
  changes.forEach(([field], i) => field.set(before[i]));
  return seen;
}

/** Another value of the same sort: `by` says how far off. There are only so many layers. */
function otherValue(field: Field, by: number, run: Run): Plain {
  const value = field.get();
  if (field.kind === 'machine.job') return 'abandoned';
  if (field.kind === 'gear.pump') return 'large';
  if (field.kind === 'machine.stem') return value === 'stuck' ? 'hanging' : 'stuck';
  if (field.kind === 'stem.layerIndex') return Math.floor(by) % run.scenario.ground.layers.length;
  if (typeof value === 'number') return value * by + (by - 1) * 0.01;
  if (typeof value === 'boolean') return !value;
  return `${String(value)}?`;
}

describe('the lists', () => {
  it('judge every field of the state once, and no other', () => {
    const found = new Set(moments.flatMap(({ byKind }) => [...byKind.keys()]));
    const judged = [...SENSED, ...OWN, ...HIDDEN, ...WELL_SENSED, ...WELL_HIDDEN];
    expect(new Set(judged).size).toBe(judged.length);
    expect([...found].filter((kind) => !judged.includes(kind)).sort()).toEqual([]);
    // A name that is no longer in any state is left over from an old one.
    expect(judged.filter((kind) => !found.has(kind))).toEqual([]);
  });

  it('judge every field of the ground once, and no other', () => {
    const grounds = Array.from({ length: JOBS }, (_, n) => randomJob(n).ground);
    const found = new Set(grounds.flatMap((ground) => realFields(ground).map(({ kind }) => kind)));
    expect([...found].sort()).toEqual([...GROUND_HIDDEN, ...HEARD_AT_THE_BIT].sort());
  });
});

describe('senses', () => {
  const factor = fc.oneof(fc.constantFrom(0, 0.5, 0.999, 1.001, 2, 1000), fc.double({ min: 0, max: 10, noNaN: true }));

  it('stay the same whatever the hidden fields hold', () => {
    const closed = [...HIDDEN, ...OWN, ...WELL_HIDDEN];
    fc.assert(
      fc.property(
        fc.nat({ max: 100_000 }),
        fc.array(fc.record({ kind: fc.constantFrom(...closed), place: fc.nat(5000), by: factor }), {
          minLength: 1,
          maxLength: 40,
        }),
        (which, wanted) => {
          const { run, byKind } = moments[which % moments.length];
          const changes = wanted.flatMap(({ kind, place, by }): [Field, Plain][] => {
            const fields = byKind.get(kind);
            if (!fields) return [];
            const field = fields[place % fields.length];
            return [[field, otherValue(field, by, run)]];
          });
          // Two changes of one field would be put back in the wrong order.
          const once = new Map(changes.map((change) => [change[0], change] as const));
          expect(lookedAtWith(run, [...once.values()])).toBe(sensed(run));
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('stay the same when all hidden fields change at once', () => {
    for (const { run, byKind } of moments)
      for (const by of [0.3, 7]) {
        const changes = [...HIDDEN, ...OWN, ...WELL_HIDDEN].flatMap((kind) =>
          (byKind.get(kind) ?? []).map((field): [Field, Plain] => [field, otherValue(field, by, run)]),
        );
        expect(lookedAtWith(run, changes)).toBe(sensed(run));
      }
  });

  it('do show every field that is listed as sensed', () => {
    const blind = [...SENSED, ...WELL_SENSED].filter(
      (kind) =>
        !moments.some(({ run, byKind }) =>
          (byKind.get(kind) ?? []).some((field) =>
            [0, 0.2, 0.7, 1.5, 5, 1000].some(
              (by) => lookedAtWith(run, [[field, otherValue(field, by, run)]]) !== sensed(run),
            ),
          ),
        ),
    );
    expect(blind).toEqual([]);
  });

  it('do not tell sand in suspension in the pit from water at the same level', () => {
    for (const { run } of moments) {
      const before = sensed(run);
      const { suction } = run.state.pit;
      const half_m3 = suction.water_m3 / 4;
      for (let k = 0; k < suction.solids_m3.length; k++) {
        suction.solids_m3[k] += half_m3;
        suction.water_m3 -= half_m3;
        expect(sensed(run)).toBe(before);
        suction.solids_m3[k] -= half_m3;
        suction.water_m3 += half_m3;
      }
    }
  });

  it('do not read what the record knows of events', () => {
    for (const { run } of moments)
      expect(sensed({ ...run, record: { ...run.record, events: [] }, log: [] })).toBe(sensed(run));
  });

  it('of the ground depend on nothing but the grain and the clay at the bit', () => {
    let heard = 0;
    for (const { run } of moments) {
      const before = sensed(run);
      const { scenario, state } = run;
      const ground = structuredClone(scenario.grounds?.[state.holeNumber - 1] ?? scenario.ground) as Ground;
      const here = `layers[${run.state.stem.layerIndex}].`;
      const other: Run = { ...run, scenario: { ...run.scenario, ground, grounds: undefined } };
      for (const field of realFields(ground)) {
        if (field.path.startsWith(here) && HEARD_AT_THE_BIT.includes(field.kind)) {
          const seen = [0.001, 1000].some(
            (by) => lookedAtWith(other, [[field, otherValue(field, by, run)]]) !== before,
          );
          if (seen) heard++;
          continue;
        }
        field.set(otherValue(field, 3, run));
      }
      expect(sensed(other)).toBe(before);
    }
    expect(heard).toBeGreaterThan(0);
  });
});

describe('what lies below the bit', () => {
  /** The same beds down to 4 m; below them one ground or another, under other heads. */
  const above = [
    { kind: 'topsoil', thickness_m: [0.5, 0.5] },
    { kind: 'fineSand', thickness_m: [1.5, 1.5] },
    { kind: 'siltySand', thickness_m: [2, 2] },
  ] as const;
  const groundOver = (kind: 'coarseGravel' | 'softClay' | 'weatheredRock'): Ground => {
    const ground = buildGround(
      { layers: [...above, { kind, thickness_m: [40, 40] }] as never, waterTable_m: [1.5, 1.5] },
      5,
    );
    return ground;
  };
  const job = (n: number, ground: Ground): Scenario => {
    const base = randomJob(n);
    // Two rods in all: the bit stays above the change of ground.
    const opening = { ...base.opening, rods: 1, rodsInAll: 2, starter_m: 0.4, maxDepth_m: 10 };
    return { ...base, ground, grounds: undefined, opening };
  };

  const BELOW_JOBS = 6;
  const BELOW_TICKS = 600;

  it('is not sensed before the bit is in it, whatever is done', { timeout: 120_000 }, () => {
    for (let n = 0; n < BELOW_JOBS; n++) {
      const seen: string[] = [];
      const first = groundOver('softClay');
      const { run } = playRandom(job(n, first), `below ${n}`, BELOW_TICKS, (one) => seen.push(sensed(one)));
      expect(run.state.hole.depth_m).toBeLessThan(4);
      for (const kind of ['coarseGravel', 'weatheredRock'] as const) {
        const ground = groundOver(kind);
        // The layers above are the same to the last bit; only what is below differs.
        ground.layers.splice(0, 3, ...structuredClone(first.layers.slice(0, 3)));
        const scenario = job(n, ground);
        const other = createRun(scenario);
        let next = 0;
        for (let tick = 0; tick < run.state.tick; tick++) {
          const entries = run.log.filter(([at]) => at === tick);
          playOn(other, entries, tick);
          step(other);
          expect(sensed(other), `job ${n}, tick ${tick}, ${kind}`).toBe(seen[tick]);
          next += entries.length;
        }
        expect(next).toBe(run.log.length);
      }
    }
  });

  it('is sensed when the bit is in it: the same crew hears another ground', () => {
    const sounds = (['coarseGravel', 'softClay'] as const).map((kind) => {
      const base = job(0, groundOver(kind));
      const scenario = { ...base, opening: { ...base.opening, rods: 4, starter_m: 4.5, primed: true, petrol_L: 5 } };
      const run = replayRun(
        scenario,
        [
          [0, 'setThrottle', { throttle_frac: 1 }],
          [0, 'setTurning', { on: true }],
          [0, 'setFeed', { feed_frac: 0.5 }],
        ],
        30,
      );
      return sensesOf(run).stem.sound;
    });
    expect(sounds).toEqual(['knock', 'sticky']);
  });
});
