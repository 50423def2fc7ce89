// One row of the trace every few seconds: what the debrief plots and the score reads.

import { leastStability } from '../hole/wall/stands';
import { bedHeight_m, fluidLevel_m } from '../hole/hole';
import { CLASS_COUNT } from '../materials/sizes';
import { levelBelowRim_m } from '../pit/level';
import { heapShare } from './pitSigns';
import { openRow, openWellRow, TRACE_STEP_s, WELL_TRACE_STEP_s } from './record';
import type { Run } from './run';
import { stemPlace } from './stem';

export function traceRow(run: Run): void {
  const { state, work, record } = run;
  if (state.tick % TRACE_STEP_s !== 0) return;
  const row = openRow(record.trace);
  const { columns, mouth_frac } = record.trace;
  const { stem, hole, pit, signs } = state;
  columns.time_s[row] = state.tick;
  columns.bit_m[row] = stem.bit_m;
  columns.depth_m[row] = hole.depth_m;
  columns.holeLevel_m[row] = fluidLevel_m(hole, stemPlace(run));
  columns.flow_m3s[row] = state.pump.flow_m3s;
  columns.settlingLevel_m[row] = levelBelowRim_m(pit.settling);
  columns.suctionLevel_m[row] = levelBelowRim_m(pit.suction);
  columns.returns_frac[row] = signs.returns_frac;
  columns.bed_m[row] = bedHeight_m(hole, stemPlace(run));
  columns.suspended_m3[row] = work.hole.suspended_m3;
  columns.loading_frac[row] = work.hole.bottomLoad_frac;
  columns.torque_Nm[row] = stem.torque_Nm;
  columns.pull_N[row] = stem.pull_N;
  columns.sinking_ms[row] = stem.sinking_ms;
  columns.K_Pasn[row] = work.hole.K_Pasn;
  columns.n_ratio[row] = work.hole.n_ratio;
  columns.soaked_gL[row] = work.hole.soaked_gL;
  columns.turning[row] = stem.turning ? 1 : 0;
  columns.feed_frac[row] = stem.feed_frac;
  columns.strainerBlocked_frac[row] = pit.blockage_frac;
  columns.balling_frac[row] = stem.balling_frac;
  columns.lost_m3[row] = state.wall.lost_m3;
  columns.came_m3[row] = state.wall.came_m3;
  let fallen_m3 = 0;
  for (const taken_m3 of state.wall.taken_m3) fallen_m3 += taken_m3;
  columns.fallen_m3[row] = fallen_m3;
  columns.stability_ratio[row] = leastStability(hole);
  columns.heap_frac[row] = heapShare(pit.settling);
  columns.pumpWorn_frac[row] = state.pump.worn_frac;
  for (let k = 0; k < CLASS_COUNT; k++) mouth_frac[k][row] = signs.mouth_frac[k];
}

/** One row of a well's own trace. */
export function wellRow({ state, record }: Run): void {
  const { well } = state;
  if (!well || state.tick % WELL_TRACE_STEP_s !== 0) return;
  const row = openWellRow(record.wellTrace);
  const { columns } = record.wellTrace;
  columns.time_s[row] = state.tick;
  columns.level_m[row] = well.level_m;
  columns.drawn_m3s[row] = well.drawn_m3s;
  columns.turbidity_NTU[row] = well.turbidity_NTU;
  columns.sand_gL[row] = well.sand_gL;
}
