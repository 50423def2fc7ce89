// How long dirty water is under way to the screen: down the ring round the casing, down through the ground, sideways from a latrine.
import { annulus_m2, gap_m } from '../completion/quantities';
import { layerAt } from '../ground/lookup';
import { PACKS } from '../materials/packs';
import { cosOf } from '../numeric/angle';
import { closesIn } from './cellSkin';
import { groundPath_s, OPEN_RING_MS, ringLeak, type RingCells } from './leak';
import { DAY_s } from '../numeric/units';
import { RISK_DAYS, safeDistance_m, travelRisk } from './latrine';
import { latrinePath_s, TABLE_SLOPE } from './latrinePath';
import type { RingFill, Standing } from './standing';
import { alongBeds_ms, shared_m } from './transmissivity';
import { LONGEST_d, type Verdict } from './verdict';
import type { VerdictReading } from './verdictReading';
import type { YieldRead } from './yieldVerdict';

/** Pores of a seal, and of caved ground, that water moves in. ASSUMED. */
const SEAL_PORES_frac = 0.5;
const CAVED_PORES_frac = 0.45;
/** K of a slit beside the casing into which no piece of the seal could fall. ASSUMED: loose debris. */
const SLIT_MS = 1e-4;
/** Share of a cell that must be seal for it to count as sealed. */
const SEALED_frac = 0.5;
/** Looser than this is no seal, whatever it was: the loose end of clay cuttings (handbooks, from memory). */
const SOUND_MS = 1e-6;
/** Looks round the casing, over half of it. */
const LOOKS = 12;

/** Share of the ring's section, by area, where the gap is under the size of a piece: none falls in there. gap e from the middle: g(1 - e cos). */
export function unfilled_frac(middle_m: number, offMiddle_frac: number, piece_m: number): number {
  let narrow = 0;
  let all = 0;
  for (let i = 0; i < LOOKS; i++) {
    const cosine = i < LOOKS / 2 ? cosOf((90 * (2 * i + 1)) / LOOKS) : -cosOf((90 * (2 * (LOOKS - 1 - i) + 1)) / LOOKS);
    const here_m = middle_m * (1 - offMiddle_frac * cosine);
    all += here_m;
    if (here_m < piece_m) narrow += here_m;
  }
  return all > 0 ? narrow / all : 0;
}

/** K of a cell of the ring for water going down: its fills above each other, beside them the slit that no piece reached. */
export function ringDown_ms(standing: Standing, i: number, caved_ms: number, stands: boolean): number {
  const fill = standing.fill[i];
  const { pack_frac, pack, clogged_frac, seal_frac, seal_ms, ground_frac } = fill;
  const void_frac = Math.max(0, 1 - pack_frac - seal_frac - ground_frac);
  let resistance_s = 0;
  if (pack && pack_frac > 0) resistance_s += pack_frac / (PACKS[pack].K_ms * Math.max(1e-6, 1 - clogged_frac));
  if (seal_frac > 0) resistance_s += seal_frac / seal_ms;
  if (ground_frac > 0) resistance_s += ground_frac / caved_ms;
  // What nothing was put into has closed with the ground where that does not stand.
  resistance_s += void_frac / (stands ? OPEN_RING_MS : caved_ms);
  const down_ms = 1 / resistance_s;
  const middle_m = gap_m(standing.hole_m[i], standing.pipe.outside_m);
  const slit = unfilled_frac(middle_m, standing.offMiddle_frac[i], fill.piece_mm / 1000);
  return (1 - slit) * down_ms + slit * Math.max(down_ms, SLIT_MS);
}

function pores(fill: RingFill): number {
  const pack_frac = fill.pack ? fill.pack_frac : 0;
  const packPores = fill.pack ? PACKS[fill.pack].porosity_frac : 0;
  const rest = Math.max(0, 1 - pack_frac - fill.seal_frac - fill.ground_frac);
  return pack_frac * packPores + fill.seal_frac * SEAL_PORES_frac + fill.ground_frac * CAVED_PORES_frac + rest;
}

/** The ring from the ground level to the top of the screen. Caved ground lets water through as the layer beside it, at least as sand does. */
export function ringCellsOf({ standing, ground }: VerdictReading): RingCells {
  const { dz_m, screenFrom_m, pipe } = standing;
  // A casing that hung high up may have its screen above the ground.
  const count = Math.max(0, Math.min(standing.cells, Math.ceil(screenFrom_m / dz_m - 1e-9)));
  const cells: RingCells = {
    count,
    height_m: new Float64Array(count),
    area_m2: new Float64Array(count),
    K_ms: new Float64Array(count),
    porosity_frac: new Float64Array(count),
  };
  for (let i = 0; i < count; i++) {
    const top_m = i * dz_m;
    const layer = layerAt(ground, top_m + dz_m / 2);
    cells.height_m[i] = Math.min(dz_m, screenFrom_m - top_m);
    // Clay that has closed on the casing leaves a hair's breadth.
    cells.area_m2[i] = Math.max(HAIR_M2, annulus_m2(standing.hole_m[i], pipe.outside_m));
    cells.K_ms[i] = ringDown_ms(standing, i, Math.max(layer.K_ms, LOOSE_MS), !closesIn(layer));
    cells.porosity_frac[i] = pores(standing.fill[i]);
  }
  return cells;
}

/** Section of a ring that the ground has closed, m2, and K of ground that fell into it, at least. ASSUMED: a hair's breadth; loose sand, 1e-4. */
const HAIR_M2 = 1e-5;
const LOOSE_MS = 1e-4;

const days = (time_s: number): number => Math.min(LONGEST_d, time_s / DAY_s);

/** The seal as it lies: first and last sealed cell, metres of seal between them, least gap. */
function sealLies({
  standing,
}: VerdictReading): Pick<Verdict['leak'], 'sealFrom_m' | 'sealTo_m' | 'sealedLength_m' | 'minGap_mm'> {
  let from = -1;
  let to = -1;
  let length_m = 0;
  let gap = Infinity;
  for (let i = 0; i < standing.cells; i++) {
    const { seal_frac, seal_ms } = standing.fill[i];
    if (seal_ms > SOUND_MS) continue;
    if (seal_frac > 0) length_m += seal_frac * standing.dz_m;
    if (seal_frac < SEALED_frac) continue;
    if (from < 0) from = i;
    to = i;
    const narrowest = gap_m(standing.hole_m[i], standing.pipe.outside_m) * (1 - standing.offMiddle_frac[i]);
    gap = Math.min(gap, Math.max(0, narrowest));
  }
  return {
    sealFrom_m: from < 0 ? 0 : from * standing.dz_m,
    sealTo_m: from < 0 ? 0 : (to + 1) * standing.dz_m,
    sealedLength_m: length_m,
    minGap_mm: from < 0 ? 0 : gap * 1000,
  };
}

/** Distance to the nearest latrine, and the time from it in daily use in the driest month. */
function latrineOf(
  reading: VerdictReading,
  { read }: YieldRead,
  drawdown_m: number,
): { distance_m: number; time_s: number; safe_m: number } {
  const { ground, spot, standing } = reading;
  const { screenFrom_m, screenTo_m } = standing;
  const K_ms = alongBeds_ms(ground.layers, screenFrom_m, screenTo_m);
  let pores_m = 0;
  for (const layer of ground.layers) pores_m += layer.porosity_frac * shared_m(layer, screenFrom_m, screenTo_m);
  const safe_m = safeDistance_m(pores_m / (screenTo_m - screenFrom_m), K_ms, TABLE_SLOPE, RISK_DAYS[1] * DAY_s);
  let distance_m = Infinity;
  let pitBottom_m = 0;
  for (const place of ground.contamination) {
    if (place.source !== 'latrine' || !spot) continue;
    const east_m = place.east_m - spot.east_m;
    const north_m = place.north_m - spot.north_m;
    const away_m = Math.max(LEAST_m, Math.sqrt(east_m * east_m + north_m * north_m));
    if (away_m >= distance_m) continue;
    distance_m = away_m;
    pitBottom_m = place.bottom_m;
  }
  if (distance_m === Infinity) return { distance_m: LONGEST_m, time_s: Infinity, safe_m };
  const legs = {
    pitBottom_m,
    level_m: read.aquifer.level_m,
    screenTop_m: screenFrom_m,
    screenBottom_m: screenTo_m,
    distance_m,
    drawdown_m,
  };
  return { distance_m, time_s: latrinePath_s(ground.layers, legs), safe_m };
}

/** A latrine is never nearer than this, m. */
const LEAST_m = 0.5;
/** Told for the distance where there is no latrine, m. */
const LONGEST_m = 1000;

/** All ways that dirt may take. Water stands over the mouth as high as the highest flood, else the gradient is 1. */
export function leakVerdict(reading: VerdictReading, dry: YieldRead, drawdown_m: number): Verdict['leak'] {
  const { ground, standing, spot } = reading;
  const pond_m = Math.max(0, ground.site.floodLine_m - (spot?.rise_m ?? 0));
  const latrine = latrineOf(reading, dry, drawdown_m);
  return {
    annulus_d: days(ringLeak(ringCellsOf(reading), pond_m).time_s),
    ground_d: days(groundPath_s(ground.layers, 0, standing.screenFrom_m, pond_m)),
    latrine_d: days(latrine.time_s),
    latrine_m: latrine.distance_m,
    latrineRisk: travelRisk(latrine.time_s),
    safe_m: latrine.safe_m,
    ...sealLies(reading),
  };
}
