// The well half of the record: casing and screen as planned and run, what was poured and sounded, levels dipped, development, test, disinfection, head works.

import {
  CASINGS,
  PVC,
  sensesOf,
  type EventName,
  type ActionName,
  type PackName,
  type Run,
  type SealName,
  type WellPlan,
  type WellSenses,
} from '$sim';
import { doneActs } from './done';
import {
  BLANK_SHEET,
  type CasingEntry,
  type DepthReading,
  type DevelopmentEntry,
  type DoseEntry,
  type FillEntry,
  type RecordSheet,
  type ScreenEntry,
  type TestEntry,
} from './sheet';

const centimetre = (depth_m: number): number => Math.round(depth_m * 100) / 100;
const millimetre = (size_m: number): number => Math.round(size_m * 10000) / 10;
const last = <T>(list: readonly T[]): T | null => list.at(-1) ?? null;

/** Depths that an event told, each with its moment. */
function readings(run: Run, event: EventName, field: string): DepthReading[] {
  return run.record.events
    .filter(({ name, data }) => name === event && typeof data[field] === 'number')
    .map(({ tick, data }) => ({ time_s: tick, depth_m: centimetre(data[field] as number) }));
}

const toldAt = (run: Run, event: EventName): number | null =>
  run.record.events.findLast(({ name }) => name === event)?.tick ?? null;

const lastAct = (run: Run, action: ActionName): number | null => last(doneActs(run, action))?.tick ?? null;

/** The pipe as the crew ran it: its lower end by the tally of the pieces, which a casing that hangs has not brought to its place. */
function casingOf(plan: WellPlan, shoe_m: number, length_m: number): CasingEntry {
  const { outside_m, wall_m } = CASINGS[plan.casing];
  return {
    kind: plan.casing,
    outside_mm: millimetre(outside_m),
    wall_mm: millimetre(wall_m),
    joint: 'solvent',
    length_m: centimetre(length_m),
    pieces: Math.ceil(length_m / PVC.piece_m - 1e-9),
    stickUp_m: centimetre(length_m - shoe_m),
    shoe_m: centimetre(shoe_m),
    cap: plan.cap,
    centralisers: plan.centralisers,
  };
}

/** The screen stands above the lower end of the pipe as it was planned, wherever that end came to stand. */
function screenOf(plan: WellPlan, shoe_m: number): ScreenEntry {
  const to_m = shoe_m - plan.sump_m;
  return {
    from_m: centimetre(to_m - (plan.screenTo_m - plan.screenFrom_m)),
    to_m: centimetre(to_m),
    sump_m: plan.sump_m,
    slotWidth_mm: plan.slotWidth_mm,
    slotRows: plan.slotRows,
    slotArc_mm: plan.slotArc_mm,
    slotSpacing_mm: plan.slotSpacing_mm,
    cloth: plan.cloth,
  };
}

interface Poured {
  readonly tick: number;
  readonly use: FillEntry['use'];
  readonly material: PackName | SealName;
  readonly volume_L: number;
}

function pouredIn(run: Run): Poured[] {
  const pours = (action: 'pourPack' | 'placeSeal' | 'backfill', use: Poured['use'], field: string): Poured[] =>
    doneActs(run, action).map(({ tick, payload }) => ({
      tick,
      use,
      material: payload[field] as PackName | SealName,
      volume_L: payload.volume_L as number,
    }));
  return [
    ...pours('pourPack', 'pack', 'pack'),
    ...pours('placeSeal', 'seal', 'seal'),
    ...pours('backfill', 'backfill', 'material'),
  ].sort((a, b) => a.tick - b.tick);
}

/**
 * Pours of one material one after the other are one fill. Its top is what was sounded last before the next fill began, its
 * bottom the top of what lay there before, or the bottom of the hole; without a sounding it is not known.
 */
export function fillsFrom(
  pours: readonly Poured[],
  soundings: readonly DepthReading[],
  bottom_m: number | null,
): FillEntry[] {
  const fills: { first: Poured; volume_L: number; lastTick: number }[] = [];
  for (const pour of pours) {
    const fill = fills.at(-1);
    if (fill && fill.first.material === pour.material && fill.first.use === pour.use) {
      fill.volume_L += pour.volume_L;
      fill.lastTick = pour.tick;
    } else fills.push({ first: pour, volume_L: pour.volume_L, lastTick: pour.tick });
  }
  const firstTick = fills.length > 0 ? fills[0].first.tick : 0;
  let below_m = soundings.findLast(({ time_s }) => time_s <= firstTick)?.depth_m ?? bottom_m;
  return fills.map(({ first, volume_L, lastTick }, i) => {
    const next = i + 1 < fills.length ? fills[i + 1].first.tick : Infinity;
    const top_m = soundings.findLast(({ time_s }) => time_s > lastTick && time_s <= next)?.depth_m ?? null;
    const fill = { use: first.use, material: first.material, volume_L, from_m: top_m, to_m: below_m };
    below_m = top_m;
    return fill;
  });
}

function developmentOf(run: Run): DevelopmentEntry[] {
  const sums = new Map<string, number>();
  for (const { payload } of doneActs(run, 'develop')) {
    const method = payload.method as string;
    sums.set(method, (sums.get(method) ?? 0) + (payload.time_s as number));
  }
  return [...sums].map(([method, time_s]) => ({ method, time_s }));
}

function doseOf(run: Run, action: 'breakPolymer' | 'disinfect'): DoseEntry | null {
  const given = last(doneActs(run, action));
  return given && { dose_mgL: given.payload.dose_mgL as number, contact_s: given.payload.contact_s as number };
}

function testOf(test: NonNullable<WellSenses['test']>): TestEntry {
  const { lift, rows, static_m, lowest_m, recovered_m, refusal } = test;
  const pumped = rows.findLast(({ rate_Lmin }) => rate_Lmin > 0);
  const drawn_m = pumped ? pumped.level_m - static_m : 0;
  return {
    lift,
    rows: rows.map((row) => ({ ...row })),
    static_m,
    lowest_m,
    recovered_m,
    perMetre_Lminm:
      refusal === null && pumped && drawn_m > 0.005 ? Math.round((10 * pumped.rate_Lmin) / drawn_m) / 10 : null,
    brokenOff: refusal,
  };
}

export type WellEntries = Pick<
  RecordSheet,
  | 'casing'
  | 'screen'
  | 'fills'
  | 'soundings'
  | 'levels'
  | 'development'
  | 'polymer'
  | 'jar'
  | 'sand'
  | 'test'
  | 'disinfection'
  | 'headWorks'
  | 'done_s'
>;

/** Nothing of it where the job ends with the hole. */
export function wellEntries(run: Run): Partial<WellEntries> {
  const { well } = sensesOf(run);
  const drilled = toldAt(run, 'drillingStopped');
  if (!well) return { done_s: { ...BLANK_SHEET.done_s, drilled } };
  const { plan, casing, water, test, headWorks } = well;
  const down = plan !== null && casing.shoe_m > 0;
  const soundings = readings(run, 'sounded', 'top_m');
  const bottom_m = drilled === null ? null : centimetre(run.state.hole.depth_m);
  return {
    casing: down ? casingOf(plan, casing.shoe_m, casing.length_m) : null,
    screen: down ? screenOf(plan, casing.shoe_m) : null,
    fills: fillsFrom(pouredIn(run), soundings, bottom_m),
    soundings,
    levels: readings(run, 'dipped', 'level_m'),
    development: developmentOf(run),
    polymer: doseOf(run, 'breakPolymer'),
    jar: water && water.jar !== 'none' ? water.jar : null,
    sand: water && water.sand,
    test: test && testOf(test),
    disinfection: doseOf(run, 'disinfect'),
    headWorks,
    done_s: {
      drilled,
      cased: down ? lastAct(run, 'runCasing') : null,
      developed: lastAct(run, 'develop'),
      tested: lastAct(run, 'yieldTest'),
      handedOver: toldAt(run, 'handedOver'),
    },
  };
}
