// One second of the circuit: the flow that pump and hole agree on, drawn from the pit, down the stem, up the annulus, back into the pit.

import { rheologyOf } from '../fluid/rheology';
import { SOAKED } from '../fluid/substances';
import { fluidLevel_m } from '../hole/hole';
import { emptyParcel, moveShare, parcelVolume_m3 } from '../hole/parcel';
import { pushThroughStem, readStem, type StemReading } from '../hole/stemFill';
import { readHole, sweepHole } from '../hole/sweep';
import { solveFlow } from '../hydraulics/flow';
import { AIR_BREAKS_frac, SEAL_LEAK_frac, headLeft_ratio } from '../hydraulics/wear';
import type { LineFluid } from '../hydraulics/pipe';
import { CLASS_COUNT } from '../materials/sizes';
import { drawThroughStrainer, levelOut, pourInto } from '../pit/exchange';
import { levelBelowRim_m, readChamber } from '../pit/level';
import { settlePit } from '../pit/settle';
import { airDrawn_frac, blockStrainer, strainerCovered } from '../pit/strainer';
import { countIn, countOut } from './boundary';
import { catchShare } from './catch';
import type { Run } from './run';
import { stemLength_m, stemPlace } from './stem';
import { tell } from './tell';
import { settlePoured } from './topUp';
import { TICK_s } from './work';

function lineFluidInto(run: Run, out: LineFluid, reading: StemReading): void {
  const { rheology } = run.work;
  rheologyOf(rheology, reading, run.kit.temperature_C);
  out.density_kgm3 = reading.density_kgm3;
  out.K_Pasn = rheology.K_Pasn;
  out.n_ratio = rheology.n_ratio;
}

/** Reads the fluid in pit, stem and hole and solves the flow for this second. */
export function solveCirculation(run: Run): void {
  const { state, work } = run;
  const { pump, stem, hole, fill, pit } = state;
  const place = stemPlace(run);
  readHole(hole, place.bit_m, place.rodOutside_m, run.kit.temperature_C, work.hole);
  if (pump.throttle_frac <= 0 || !pump.primed) {
    pump.flow_m3s = 0;
    pump.gulping = false;
    work.flowResult.nozzleVelocity_ms = 0;
    work.flowResult.wallRate_1s = 0;
    return;
  }
  const input = work.flowInput;
  readChamber(pit.suction, work.chamberReading);
  lineFluidInto(run, input.hose, work.chamberReading);
  readStem(fill, work.stemReading);
  lineFluidInto(run, input.stem, work.stemReading);
  input.annulus.density_kgm3 = work.hole.density_kgm3;
  input.annulus.K_Pasn = work.hole.K_Pasn;
  input.annulus.n_ratio = work.hole.n_ratio;
  input.throttle_frac = pump.throttle_frac;
  input.stemLength_m = stemLength_m(run);
  input.bit_m = stem.bit_m;
  input.holeDiameter_m = work.hole.diameter_m;
  input.pitLevel_m = levelBelowRim_m(pit.suction);
  input.mouthLevel_m = fluidLevel_m(hole, stemPlace(run));
  input.blockage_frac = pit.blockage_frac;
  const whirled_frac = airDrawn_frac(pit, pump.flow_m3s, run.kit.nominalFlow_m3s);
  const air_frac = whirled_frac + (pump.sealBurnt ? SEAL_LEAK_frac : 0);
  input.headLeft_ratio = headLeft_ratio(pump.worn_frac, air_frac);
  input.lost_frac = state.faults.hoseLost_frac;
  pump.flow_m3s = solveFlow(input, pump.flow_m3s, work.flowResult);
  pump.gulping = work.flowResult.starved || whirled_frac > 0;
  if (air_frac > AIR_BREAKS_frac || !strainerCovered(pit)) losePrime(run);
}

function losePrime(run: Run): void {
  run.state.pump.primed = false;
  run.state.pump.flow_m3s = 0;
  tell(run, 'primeLost', { cause: 'air' });
}

/** What leaves by the torn hose is lost on the ground; the rest stays in work.drawn. */
function spray(run: Run): void {
  const { faults, boundary } = run.state;
  const { spilled, drawn } = run.work;
  emptyParcel(spilled);
  moveShare(drawn, faults.hoseLost_frac, spilled);
  countOut(boundary, spilled);
}

/** Draws from the pit and pushes through the stem; what leaves the nozzles is in work.atBit. */
export function pumpDown(run: Run): void {
  const { state, work } = run;
  emptyParcel(work.drawn);
  emptyParcel(work.atBit);
  const wanted_m3 = state.pump.flow_m3s * TICK_s;
  if (wanted_m3 <= 0) return;
  const drawn_m3 = drawThroughStrainer(state.pit, wanted_m3, work.drawn);
  if (drawn_m3 < wanted_m3 * 0.999) {
    losePrime(run);
    if (drawn_m3 <= 0) return;
  }
  blockStrainer(state.pit, state.pump.flow_m3s, run.kit.strainerArea_m2, TICK_s);
  if (state.faults.hoseLost_frac > 0) spray(run);
  pushThroughStem(state.fill, work.drawn, work.atBit);
  // Grains that went round through the pit count as cut where they enter again: their first origin is lost.
  for (let k = 0; k < CLASS_COUNT; k++) work.atBit.moment_m4[k] = work.atBit.solids_m3[k] * state.stem.bit_m;
}

/** Half the shear rate at the wall of the annulus stirs the grains; a hole at rest keeps a little. */
const STILL_SHEAR_1s = 0.05;

/** Carries the hole one second on; what comes over the sill goes into the settling chamber, less what a hand catches. */
export function comeUp(run: Run): void {
  const { state, work } = run;
  const input = work.sweep;
  const place = stemPlace(run);
  input.bit_m = place.bit_m;
  input.rodOutside_m = place.rodOutside_m;
  input.ambient_1s =
    state.pump.flow_m3s > 0 ? Math.max(STILL_SHEAR_1s, 0.5 * work.flowResult.wallRate_1s) : STILL_SHEAR_1s;
  emptyParcel(work.mouth);
  sweepHole(state.hole, work.hole, input, work.mouth);
  settlePoured(run);
  countIn(state.boundary, work.hole.came);
  countOut(state.boundary, work.hole.left);
  state.wall.lost_m3 += parcelVolume_m3(work.hole.left);
  state.wall.lostPolymer_kg += work.hole.left.dissolved_kg[SOAKED];
  state.wall.came_m3 += work.hole.came.water_m3;
  catchShare(run);
  pourInto(state.pit.settling, work.mouth);
  settlePit(state.pit, work.pit, run.kit.temperature_C, TICK_s);
  levelOut(state.pit, work.pit);
}
