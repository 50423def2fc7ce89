// One second at the bit: how fast it goes down, what it cuts, what it asks of the drive and the rope.

import { ballingAfter } from '../drilling/balling';
import { drillInto } from '../drilling/bit';
import { pull_N } from '../drilling/pull';
import { bedTorque_Nm } from '../drilling/torque';
import { layerAt, saturationAt } from '../ground/lookup';
import { cutGround } from '../hole/cut';
import { bedHeight_m } from '../hole/hole';
import { emptyParcel } from '../hole/parcel';
import { FINE_CLASS_COUNT } from '../materials/sizes';
import { countIn } from './boundary';
import type { Run } from './run';
import { buriedNow_m, onBottom, stemLength_m, stemPlace } from './stem';
import { tell } from './tell';
import { TICK_s } from './work';

/** A layer boundary counts as met when the bit is this far in, m: the rim of a cell never flickers. */
const INTO_LAYER_m = 1e-6;

function meetLayer(run: Run): void {
  const { state, scenario } = run;
  const layer = layerAt(scenario.ground, state.hole.depth_m + INTO_LAYER_m);
  const index = scenario.ground.layers.indexOf(layer);
  if (index === state.stem.layerIndex) return;
  state.stem.layerIndex = index;
  tell(run, 'layerChanged', { kind: layer.kind, depth_m: state.hole.depth_m });
}

/** Drills when the bit stands on the bottom, turns and is fed. Returns what came in from the ground in work.cut. */
export function drill(run: Run): void {
  const { state, work, scenario } = run;
  const { stem, hole } = state;
  const { kit, ground } = scenario;
  emptyParcel(work.cut);
  const length_m = stemLength_m(run);
  const bed_m = buriedNow_m(run);
  const standing = onBottom(state);
  const cutting =
    standing && stem.turning && stem.feed_frac > 0 && state.machine.stem !== 'stuck' && stem.motion_m === 0;
  let cutClay_m3s = 0;
  stem.torque_Nm = stem.turning ? bedTorque_Nm(bed_m) : 0;
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
    input.balling_frac = stem.balling_frac;
    input.bed_m = Math.max(bed_m, bedHeight_m(hole, stemPlace(run)));
    input.load_frac = work.hole.bottomLoad_frac;
    input.flow_m3s = state.pump.flow_m3s;
    input.density_kgm3 = work.hole.density_kgm3;
    input.nozzleVelocity_ms = work.flowResult.nozzleVelocity_ms;
    drillInto(work.bitResult, input);
    stem.torque_Nm = work.bitResult.torque_Nm;
    stem.stalled = work.bitResult.stalled;
    const room_m = Math.max(0, Math.min(length_m, hole.cells * hole.dz_m, ground.depth_m) - hole.depth_m);
    const advance_m = Math.min(work.bitResult.rate_ms * TICK_s, hole.dz_m, room_m);
    if (advance_m > 0) {
      const { cutGround: soil } = work;
      soil.porosity_frac = layer.porosity_frac;
      soil.saturation_frac = saturationAt(ground, hole.depth_m);
      soil.fractions = layer.fractions;
      cutGround(hole, advance_m, kit.bit_m, soil, work.cut);
      countIn(state.boundary, work.cut);
      stem.bit_m = hole.depth_m;
      if (layer.su_kPa !== null)
        for (let k = 0; k < FINE_CLASS_COUNT; k++) cutClay_m3s += work.cut.solids_m3[k] / TICK_s;
    }
  }
  stem.balling_frac = ballingAfter(stem.balling_frac, cutClay_m3s, state.pump.flow_m3s, standing, TICK_s);
  stem.pull_N = pull_N(kit, length_m, work.hole.density_kgm3, bed_m, 0, 0);
}
