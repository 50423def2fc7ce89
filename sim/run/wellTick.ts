// One second of the finished well: its water, what comes out with it, the chlorine and the mud round the screen.

import { CHLORINE } from '../fluid/substances';
import { PACK_GRAIN_kgm3 } from '../materials/packs';
import { carryWater, restLevel_m } from '../well/casingWater';
import { mudRing_ratio } from '../well/cellSkin';
import { SAND_LIMIT_gL, TURBIDITY_NTU } from '../well/drinking';
import { readIntake } from '../well/intake';
import { breakRing, rotRing } from '../well/ringChlorine';
import { carriedAt, sandByClass } from '../well/sand';
import { standingOf, type Standing } from '../well/standing';
import { drawIn } from '../well/washing';
import type { WellState } from '../well/wellState';
import { groundOf } from './ground';
import type { Run } from './run';
import { tell } from './tell';
import { TICK_s } from './work';

/** Ring and water that comes out are looked at once in so many seconds while the well is drawn from; what the ground gives, once in so many. */
const LOOK_s = 20;
const REFRESH_s = 60;
/** The water counts as cloudy again above this many times what counts as clear. ASSUMED: a jar looks plainly different. */
const CLOUDY_AGAIN_ratio = 4;
/** The polymer counts as broken when the worst ring leads this little worse than clean ground. ASSUMED. */
const BROKEN_ratio = 2;

/** The well as it stands, which there is once the casing is set. */
export function standingNow(run: Run): Standing {
  return standingOf(run.state.completion)!;
}

/** Reads again what ground and ring give: after a pouring, before a test, and now and then. */
export function refreshWell(run: Run): void {
  const { well } = run.state;
  if (!well) return;
  const standing = standingNow(run);
  const ground = groundOf(run);
  const { aquifer, intake, flow_frac } = readIntake(standing, well.ring, ground, 0, false);
  well.intake = intake;
  well.rest_m = restLevel_m(aquifer, well.bottom_m);
  well.ring.flow_frac.set(flow_frac);
  sandByClass(standing, well.ring, ground, well.sandClass_frac);
}

/** Asks for a rate in this second, m3/s (negative: poured in); stirs_ratio: how much cloudier than quiet drawing. */
export function draw(run: Run, rate_m3s: number, stirs_ratio: number): void {
  run.work.well.wanted_m3s = rate_m3s;
  run.work.well.stirs_ratio = stirs_ratio;
}

function chlorinate(run: Run, well: WellState): void {
  const { state, work } = run;
  const before_kg = well.chlorine_kg;
  const water_m3 = well.chlorineIn_m3;
  const { disinfection, ring } = well;
  if (disinfection) {
    disinfection.contact_s += TICK_s;
    disinfection.ct_mgminL += (before_kg / water_m3) * 1000 * (TICK_s / 60);
  }
  well.chlorine_kg = breakRing(ring, groundOf(run), before_kg, water_m3, well.turbidity_NTU, work.breakPace);
  // What is drawn takes its share along.
  const drawn_m3 = Math.max(0, work.well.water.drawn_m3);
  well.chlorine_kg *= Math.max(0, 1 - drawn_m3 / water_m3);
  if (well.chlorine_kg < GONE_kg) well.chlorine_kg = 0;
  state.boundary.dissolvedOut_kg[CHLORINE] += before_kg - well.chlorine_kg;
  if (well.brokenTold || !isBroken(well)) return;
  well.brokenTold = true;
  tell(run, 'polymerBroken', {});
}

/** Less chlorine than this is none. */
const GONE_kg = 1e-9;

function isBroken({ ring }: WellState): boolean {
  for (let i = 0; i < ring.count; i++)
    if (mudRing_ratio(ring.dose_ratio[i], 1, ring.whole_frac[i]) > BROKEN_ratio) return false;
  return true;
}

/** Sand and cloudiness of what comes out; drawing quietly washes the ring a little. */
function lookAtWater(run: Run, well: WellState): void {
  const standing = standingNow(run);
  const { stirs_ratio } = run.work.well;
  const carried = carriedAt(standing, well.ring, groundOf(run), well.drawn_m3s);
  well.sand_gL = carried.sand_gL;
  well.turbidity_NTU = carried.turbidity_NTU * stirs_ratio;
  const clear = well.turbidity_NTU < TURBIDITY_NTU.smallSupply && well.sand_gL < SAND_LIMIT_gL;
  if (clear && !well.clearTold) tell(run, 'wellClear', { turbidity_NTU: well.turbidity_NTU, sand_gL: well.sand_gL });
  if (clear) well.clearTold = true;
  else if (well.turbidity_NTU > CLOUDY_AGAIN_ratio * TURBIDITY_NTU.smallSupply) well.clearTold = false;
  if (stirs_ratio === QUIET && well.ground_m3s > 0) drawIn(well.ring, standing, well.ground_m3s, LOOK_s);
}

/** What came out in this second: counted, and seen in the jar. */
function bringOut(run: Run, well: WellState, drawn_m3: number): void {
  const { tick, boundary } = run.state;
  well.out_m3 += drawn_m3;
  if (tick % LOOK_s === 0 || !well.jar) lookAtWater(run, well);
  const sand_kg = well.sand_gL * drawn_m3;
  well.sand_kg += sand_kg;
  // Sand passes through the well: out of the ground and out at the top in the same second.
  for (let k = 0; k < well.sandClass_frac.length; k++) {
    const sand_m3 = (sand_kg / PACK_GRAIN_kgm3) * well.sandClass_frac[k];
    boundary.solidsIn_m3[k] += sand_m3;
    boundary.solidsOut_m3[k] += sand_m3;
  }
  well.jar ??= { tick: 0, turbidity_NTU: 0, sand_gL: 0 };
  well.jar.tick = tick;
  well.jar.turbidity_NTU = well.turbidity_NTU;
  well.jar.sand_gL = well.sand_gL;
}

/** Quiet drawing: a pump at a steady rate. */
export const QUIET = 1;

function moveWater(run: Run, well: WellState): void {
  const { state, work } = run;
  const { water, wanted_m3s } = work.well;
  if (wanted_m3s !== 0) {
    well.still = false;
    well.stirred = true;
  }
  if (state.tick % REFRESH_s === 0) refreshWell(run);
  carryWater(well, state.tick, wanted_m3s, TICK_s, water);
  const { boundary } = state;
  if (water.ground_m3 > 0) boundary.waterIn_m3 += water.ground_m3;
  else boundary.waterOut_m3 -= water.ground_m3;
  if (water.drawn_m3 > 0) boundary.waterOut_m3 += water.drawn_m3;
  else {
    boundary.waterIn_m3 -= water.drawn_m3;
    well.in_m3 -= water.drawn_m3;
  }
  if (water.drawn_m3 > 0) bringOut(run, well, water.drawn_m3);
  if (!well.still || !well.stirred) return;
  well.stirred = false;
  tell(run, 'recovered', { level_m: well.level_m });
}

/** The well's half of the light second. With nothing going on it only lets what is left of the polymer rot. */
export function tendWell(run: Run): void {
  const { well } = run.state;
  if (!well) return;
  const { work } = run;
  rotRing(well.ring, work.shares.rot_frac);
  work.well.water.drawn_m3 = 0;
  if (!well.still || work.well.wanted_m3s !== 0) moveWater(run, well);
  if (well.chlorine_kg > 0) chlorinate(run, well);
  work.well.wanted_m3s = 0;
}
