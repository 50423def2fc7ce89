// Filling the ring round the casing: pack, seals, backfill; and sounding what stands there.

import { freeRoom_m3, restsIn, top_m, topCell, type AnnulusState, type Standpipe } from '../../completion/annulus';
import { fillCost_marks } from '../../completion/amounts';
import { jamCell } from '../../completion/bridging';
import { slurryDensity_kgm3 } from '../../completion/cement';
import { layDown, letFall, pieceFall_ms } from '../../completion/falling';
import { fillIndex, type FillName } from '../../completion/fills';
import { enterPack } from '../../completion/slurry';
import { GRAIN_kgm3 } from '../../hole/slip';
import { PACKS, PACK_GRAIN_kgm3, type PackName } from '../../materials/packs';
import { CEMENT, SEALS, type SealName } from '../../materials/seals';
import { DURATION_s } from '../../materials/durations';
import { disturbSeals, standpipe } from '../annulus';
import { casingInHole } from '../casingPlace';
import { closeIn } from '../closeIn';
import type { Payload } from '../check';
import { send } from '../modes';
import type { RefusalKey } from '../names';
import { NOISE } from '../noise';
import type { Run } from '../run';
import type { Task } from '../state';
import { tell } from '../tell';
import { casingRefusal } from '../wellReach';
import { refreshWell } from '../wellTick';
import type { Deed, Deeds } from './deed';
import { openBackfill } from './openBackfill';

/** A pour of less than this found no room at all, m3. */
const NO_ROOM_m3 = 1e-9;
/** The line is read to so much, m; its weight lands on one side or the other of a heap by about so much, m. ASSUMED. */
const LINE_m = 0.05;
const HEAP_m = 0.03;

const isPack = (fill: string): fill is PackName => fill in PACKS;

/** Size of the pieces that jam, mm: the coarse end of a pack, the lumps of a seal; 0: a slurry. */
const piece_mm = (fill: FillName): number => (isPack(fill) ? PACKS[fill].d85_mm : SEALS[fill as SealName].piece_mm);

/** Pieces of clay and bentonite fall like the cuttings that they are, until they swell. ASSUMED. */
function fallSpeed_ms(annulus: AnnulusState, fill: FillName): number {
  if (isPack(fill)) return pieceFall_ms(PACKS[fill].d50_mm, PACK_GRAIN_kgm3, annulus, annulus.density_kgm3);
  return pieceFall_ms(piece_mm(fill), GRAIN_kgm3, annulus, annulus.density_kgm3);
}

function offered(run: Run, fill: string): boolean {
  const { well } = run.scenario;
  return !!well && (isPack(fill) ? well.packs.includes(fill) : well.seals.includes(fill as SealName));
}

const POURS: readonly string[] = ['pourPack', 'placeSeal', 'backfill'];

function pourRefusal(run: Run, fill: string): RefusalKey | null {
  const without = casingRefusal(run);
  if (without) return without;
  if (!offered(run, fill)) return 'notOffered';
  const { annulus } = run.state.completion;
  if (annulus && freeRoom_m3(annulus, 0, standpipe(run)) < NO_ROOM_m3) return 'annulusFull';
  return run.state.tasks.some(({ action }) => POURS.includes(action)) ? 'handsBusy' : null;
}

/** Cell in which what is poured begins to fall: at the water, or on what stands above it. */
function entryCell(run: Run, annulus: AnnulusState, pipe: Standpipe): number {
  const wet = Math.min(annulus.used - 1, Math.floor(run.state.well!.level_m / annulus.dz_m));
  let i = 0;
  while (i < wet && !restsIn(annulus, i, pipe)) i++;
  return i;
}

/** Begins a pour: sets the casing, finds where the pieces will jam, if anywhere. One draw of luck. */
function beginPour(run: Run, task: Task | null, fill: FillName, volume_m3: number, rate_m3s: number): void {
  closeIn(run);
  disturbSeals(run, fill);
  const annulus = run.state.completion.annulus!;
  const pipe = standpipe(run);
  const f = fillIndex(fill);
  const chance = run.streams.luck.uniform();
  if (!task) return;
  task.word = fill;
  task.data.left_m3 = volume_m3;
  task.data.rate_m3s = rate_m3s;
  task.data.poured_m3 = 0;
  if (piece_mm(fill) === 0) return;
  annulus.fall_ms[f] = fallSpeed_ms(annulus, fill);
  // What still falls of an earlier pour will jam where it would have jammed.
  if (annulus.jamCell >= 0 && annulus.jamFill === f) return;
  const from = entryCell(run, annulus, pipe);
  const to = Math.max(from, Math.min(annulus.used, topCell(annulus)) - 1);
  annulus.jamCell = jamCell(annulus, from, to, pipe, piece_mm(fill), rate_m3s, annulus.fall_ms[f], chance);
  annulus.jamFill = f;
}

/** One second of pouring. */
function pour(run: Run, task: Task): void {
  const annulus = run.state.completion.annulus!;
  const fill = task.word as FillName;
  const f = fillIndex(fill);
  const pipe = standpipe(run);
  const wanted_m3 = Math.min(task.data.left_m3, task.data.rate_m3s);
  const entry = entryCell(run, annulus, pipe);
  let put_m3 = wanted_m3;
  if (piece_mm(fill) === 0) {
    // A slurry goes down by a pipe and rises from what stands there.
    let foot = entry;
    while (!restsIn(annulus, foot, pipe)) foot++;
    put_m3 -= layDown(annulus, f, foot, wanted_m3, pipe);
    enterPack(annulus, f, slurryDensity_kgm3(CEMENT.water_ratio), pipe);
  } else {
    put_m3 = Math.min(
      wanted_m3,
      Math.max(0, freeRoom_m3(annulus, entry, pipe) - annulus.falling_m3[f * annulus.cells + entry]),
    );
    letFall(annulus, f, entry, put_m3);
  }
  annulus.put_m3[f] += put_m3;
  task.data.left_m3 -= put_m3;
  task.data.poured_m3 += put_m3;
  if (put_m3 < NO_ROOM_m3) task.endTick = run.state.tick;
}

function ended(run: Run, task: Task): FillName {
  const fill = task.word as FillName;
  const { poured_m3 } = task.data;
  run.state.completion.poured.push({ fill, volume_m3: poured_m3 });
  run.state.stocks.wellSpent_marks += fillCost_marks(fill, poured_m3);
  refreshWell(run);
  return fill;
}

/** A seal waits from its last pour on until it may be built upon. */
function noteSeal(run: Run, seal: SealName, volume_m3: number): void {
  const { tick } = run.state;
  const { seals } = run.state.completion;
  seals.push({ seal, volume_m3, placed_tick: tick, ready_tick: tick + SEALS[seal].ready_s, told: false });
  tell(run, 'sealPlaced', { seal, volume_L: volume_m3 * 1000 });
}

const litres = (payload: Payload): number => (payload.volume_L as number) / 1000;
const rate_m3s = (payload: Payload): number => (payload.rate_Lmin as number) / 60000;

function pouring(field: string, job: 'packBegins' | 'sealBegins', rateOf: (payload: Payload) => number): Deed {
  return {
    refusal: (run, payload) => pourRefusal(run, payload[field] as string),
    time_s: (_run, payload) => Math.ceil(litres(payload) / rateOf(payload)),
    begin: (run, payload, task) => {
      beginPour(run, task, payload[field] as FillName, litres(payload), rateOf(payload));
      send(run, job);
    },
    during: pour,
    end: (run, task) => {
      const fill = ended(run, task);
      if (isPack(fill)) tell(run, 'packPoured', { pack: fill, volume_L: task.data.poured_m3 * 1000 });
      else noteSeal(run, fill as SealName, task.data.poured_m3);
    },
  };
}

/** A deed done one way in a hole without a casing, another way round one. */
function eitherWay(open: Deed, round: Deed): Deed {
  const of = (run: Run): Deed => (casingInHole(run.state) ? round : open);
  return {
    refusal: (run, payload) => of(run).refusal!(run, payload),
    time_s: (run, payload) => of(run).time_s!(run, payload),
    begin: (run, payload, task) => of(run).begin!(run, payload, task),
    during: (run, task) => of(run).during!(run, task),
    end: (run, task) => of(run).end!(run, task),
  };
}

export const annulusDeeds: Deeds = {
  pourPack: pouring('pack', 'packBegins', rate_m3s),
  placeSeal: pouring('seal', 'sealBegins', rate_m3s),
  backfill: eitherWay(
    openBackfill,
    pouring('material', 'sealBegins', () => 1 / (1000 * DURATION_s.backfill_L)),
  ),
  sound: {
    refusal: (run) => casingRefusal(run),
    begin: closeIn,
    end: (run) => {
      const { completion, noise, tick } = run.state;
      const truth_m = top_m(completion.annulus!, standpipe(run));
      const read_m = Math.max(0, truth_m + HEAP_m * noise[NOISE.sound]);
      completion.sounded = { top_m: Math.round(read_m / LINE_m) * LINE_m, tick };
      tell(run, 'sounded', { top_m: completion.sounded.top_m });
    },
  },
};
