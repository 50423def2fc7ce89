// One second at the bit: how fast it goes down, what it cuts, what it asks of the drive and the rope.

import { ballingAfter } from '../drilling/balling';
import { drillInto, type BitResult } from '../drilling/bit';
import { DRIVE_COOL_C, DRIVE_HOT_C, driveAfter_C, driveHeat_W } from '../drilling/drive';
import { gripInto } from '../drilling/grip';
import { grip_N, pull_N } from '../drilling/pull';
import { reamInto } from '../drilling/ream';
import { bedTorque_Nm, gripTorque_Nm } from '../drilling/torque';
import { layerAt, saturationAt } from '../ground/lookup';
import { cutGround } from '../hole/cut';
import { bedHeight_m } from '../hole/hole';
import { emptyParcel } from '../hole/parcel';
import { FINE_CLASS_COUNT } from '../materials/sizes';
import { countIn } from './boundary';
import { stemFlow_m3s } from './flowing';
import { groundOf } from './ground';
import type { Run } from './run';
import { buriedNow_m, onBottom, stemLength_m, stemPlace } from './stem';
import { tell } from './tell';
import { TICK_s } from './work';

/** A layer boundary counts as met when the bit is this far in, m: the rim of a cell never flickers. */
const INTO_LAYER_m = 1e-6;

/** Water with this much salt counts as brackish, g/L. From memory: the usual limit of fresh water in hydrogeology texts (1000 mg/L dissolved). */
const BRACKISH_gL = 1;

/** A crew takes ground for refusing after this many seconds without a bite, and tells another spot from the last beyond this, m. ASSUMED. */
const REFUSED_AFTER_s = 10;
const OTHER_SPOT_m = 0.1;

/** Told once per spot: the bit stands on ground that it cannot cut with the weight on it. */
function watchRefusal(run: Run, refused: boolean): void {
  const { stem, hole } = run.state;
  stem.refused_s = refused ? stem.refused_s + TICK_s : 0;
  if (stem.refused_s < REFUSED_AFTER_s) return;
  if (stem.refusedAt_m >= 0 && Math.abs(hole.depth_m - stem.refusedAt_m) < OTHER_SPOT_m) return;
  stem.refusedAt_m = hole.depth_m;
  tell(run, 'bitRefused', { depth_m: hole.depth_m, weight_N: run.work.bitResult.weightOnBit_N });
}

/** The motor warms with what it gives; too hot, it trips and must cool. */
function heatDrive(run: Run): void {
  const { stem } = run.state;
  const { kit } = run;
  const heat_W = stem.turning ? driveHeat_W(kit.drivePower_W, stem.torque_Nm / kit.stallTorque_Nm) : 0;
  stem.drive_C = driveAfter_C(stem.drive_C, kit.temperature_C, heat_W, stem.turning && !stem.stalled, TICK_s);
  if (!stem.driveTripped && stem.drive_C >= DRIVE_HOT_C) {
    stem.driveTripped = true;
    stem.turning = false;
    stem.stalled = false;
    tell(run, 'driveHot', { drive_C: stem.drive_C });
  } else if (stem.driveTripped && stem.drive_C < DRIVE_COOL_C) {
    stem.driveTripped = false;
    tell(run, 'driveCool', {});
  }
}

/** The wings ride on steel: the bit turns and goes no deeper. */
function rideOn(result: BitResult): void {
  if (result.stalled) return;
  result.rate_ms = 0;
  result.refused = true;
}

/** Salt in the water of the ground that is being cut. The little in fresh water is not followed. */
function saltMet_gL({ state, work }: Run): number {
  const { hole } = state;
  const salt_gL = work.wallGround.salt_gL[Math.min(hole.cells - 1, Math.floor(hole.depth_m / hole.dz_m))];
  return salt_gL >= BRACKISH_gL ? salt_gL : 0;
}

function meetLayer(run: Run): void {
  const { state } = run;
  const ground = groundOf(run);
  const layer = layerAt(ground, state.hole.depth_m + INTO_LAYER_m);
  const index = ground.layers.indexOf(layer);
  if (index === state.stem.layerIndex) return;
  state.stem.layerIndex = index;
  tell(run, 'layerChanged', { kind: layer.kind, depth_m: state.hole.depth_m });
}

/** Drills when the bit stands on the bottom, turns and is fed. Returns what came in from the ground in work.cut. */
export function drill(run: Run): void {
  const { state, work, kit } = run;
  const { stem, hole } = state;
  const ground = groundOf(run);
  emptyParcel(work.cut);
  const length_m = stemLength_m(run);
  const bed_m = buriedNow_m(run);
  const standing = onBottom(state);
  const cutting =
    standing && stem.turning && stem.feed_frac > 0 && state.machine.stem !== 'stuck' && stem.motion_m === 0;
  let cutClay_m3s = 0;
  const { grip } = work;
  gripInto(grip, hole, stemPlace(run), kit.bit_m, work.wallGround.su_kPa);
  const gripped_N = grip_N(kit.bit_m, grip.length_m, grip.su_kPa);
  const grip_Nm = gripTorque_Nm(gripped_N, kit.bit_m);
  stem.torque_Nm = stem.turning ? bedTorque_Nm(bed_m) + grip_Nm : 0;
  stem.stalled = stem.turning && stem.torque_Nm >= kit.stallTorque_Nm;
  if (cutting) {
    meetLayer(run);
    const layer = ground.layers[stem.layerIndex];
    const input = work.bitInput;
    input.feed_frac = stem.feed_frac;
    input.stemLength_m = length_m;
    input.turning = stem.turning;
    input.E_MPa = layer.E_MPa;
    input.su_kPa = layer.su_kPa;
    input.tauC_Pa = layer.tauC_Pa;
    input.grip_Nm = grip_Nm;
    input.balling_frac = stem.balling_frac;
    input.bed_m = Math.max(bed_m, bedHeight_m(hole, stemPlace(run)));
    input.load_frac = work.hole.bottomLoad_frac;
    input.flow_m3s = stemFlow_m3s(state);
    input.density_kgm3 = work.hole.density_kgm3;
    input.nozzleVelocity_ms = work.flowResult.nozzleVelocity_ms;
    drillInto(work.bitResult, input);
    if (state.faults.tool) rideOn(work.bitResult);
    stem.torque_Nm = work.bitResult.torque_Nm;
    stem.stalled = work.bitResult.stalled;
    const room_m = Math.max(0, Math.min(length_m, hole.cells * hole.dz_m, ground.depth_m) - hole.depth_m);
    const advance_m = Math.min(work.bitResult.rate_ms * TICK_s, hole.dz_m, room_m);
    if (advance_m > 0) {
      const { cutGround: soil } = work;
      soil.porosity_frac = layer.porosity_frac;
      soil.saturation_frac = saturationAt(ground, hole.depth_m);
      soil.fractions = layer.fractions;
      soil.salt_gL = saltMet_gL(run);
      cutGround(hole, advance_m, kit.bit_m, soil, work.cut);
      countIn(state.boundary, work.cut);
      stem.bit_m = hole.depth_m;
      if (layer.su_kPa !== null)
        for (let k = 0; k < FINE_CLASS_COUNT; k++) cutClay_m3s += work.cut.solids_m3[k] / TICK_s;
    }
  }
  watchRefusal(run, cutting && work.bitResult.refused);
  if (stem.turning && !stem.stalled) {
    reamInto(work.reamed, hole, stemPlace(run), kit.bit_m, work.wallGround, TICK_s);
    countIn(state.boundary, work.reamed);
  }
  heatDrive(run);
  stem.balling_frac = ballingAfter(stem.balling_frac, cutClay_m3s, stemFlow_m3s(state), standing, TICK_s);
  stem.pull_N = pull_N(kit, length_m, work.hole.density_kgm3, bed_m, grip.length_m, grip.su_kPa);
}
