// Edges of the second: thresholds crossed become events; the machine is called only where its mode must change.

import { edgesInto } from '../machine/edges';
import type { MachineValue } from '../machine/machine';
import { levelBelowRim_m } from '../pit/level';
import { isClosed, isSloughing } from '../hole/wall/stands';
import { bedHeight_m } from '../hole/hole';
import { flowing } from './flowing';
import { readFluidSignals } from './fluidSigns';
import { send } from './modes';
import type { EventName } from './names';
import type { Run } from './run';
import { buriedNow_m, dragShareNow, onBottom, stemLength_m, stemPlace } from './stem';
import { tell } from './tell';

/** Fill above the bit that a crew notices, m; share of the strainer that counts as blocked; shares of the torque and pull limits that count as tight. ASSUMED. */
const NOTICED_FILL_m = 0.05;
const BLOCKED_frac = 0.75;
const TIGHT_frac = 0.6;
const BALLED_frac = 0.5;
const UNBALLED_frac = 0.2;
/** The pit counts as low when this share of its depth stands empty. ASSUMED. */
const PIT_LOW_frac = 0.5;
/** The bit counts as out of the hole within this of the ground level, m. */
const OUT_m = 0.01;
/** The last centimetre of a rod belongs to the clamp, m. */
const ROD_DOWN_m = 0.01;

function watchFlow(run: Run): void {
  const { state, work } = run;
  const { pump, stem, hole } = state;
  const now = flowing(state);
  if (now === pump.flowTold) return;
  pump.flowTold = now;
  if (now) {
    tell(run, 'flowStarted', { bit_m: stem.bit_m });
    return;
  }
  tell(run, 'flowStopped', {
    bit_m: stem.bit_m,
    depth_m: hole.depth_m,
    offBottom_m: hole.depth_m - stem.bit_m,
    suspended_m3: work.hole.suspended_m3,
    coarse_m3: work.hole.coarse_m3,
    bed_m: bedHeight_m(hole, stemPlace(run)),
    turning: stem.turning ? 1 : 0,
  });
}

function watchStem(run: Run): void {
  const { stem } = run.state;
  const fill_m = buriedNow_m(run);
  // Fill that settles round a stem left alone is noticed when it is next turned, fed or moved.
  const inHand = stem.turning || stem.feed_frac > 0 || stem.motion_m !== 0;
  if (fill_m <= NOTICED_FILL_m) stem.buriedTold = false;
  else if (inHand && !stem.buriedTold) {
    // Told again only after the bit has come clear.
    stem.buriedTold = true;
    tell(run, 'buried', { buried_m: fill_m, depth_m: run.state.hole.depth_m });
  }
  if (stem.stalled !== stem.stalledTold)
    tell(run, stem.stalled ? 'stalled' : 'restarted', { depth_m: run.state.hole.depth_m });
  stem.stalledTold = stem.stalled;
  const down = stem.rods > 0 && stemLength_m(run) - stem.bit_m < ROD_DOWN_m;
  if (down && !stem.rodDownTold) tell(run, 'rodDown', { depth_m: run.state.hole.depth_m, rods: stem.rods });
  stem.rodDownTold = down;
  if (!stem.balledTold && stem.balling_frac > BALLED_frac) {
    stem.balledTold = true;
    tell(run, 'balled', { depth_m: run.state.hole.depth_m });
  } else if (stem.balledTold && stem.balling_frac < UNBALLED_frac) {
    stem.balledTold = false;
    tell(run, 'unballed', {});
  }
}

function readSignals(run: Run): void {
  const { state, work, kit } = run;
  const { signals } = work;
  const { pump, stem, pit } = state;
  signals.priming = state.tasks.some((task) => task.action === 'prime');
  signals.primed = pump.primed;
  signals.throttleUp = pump.throttle_frac > 0;
  signals.strainerShut = pit.blockage_frac > BLOCKED_frac;
  signals.turning = stem.turning && !stem.stalled;
  signals.onBottom = onBottom(state);
  signals.out = stem.bit_m <= OUT_m;
  const torque_ratio = stem.turning ? stem.torque_Nm / kit.stallTorque_Nm : 0;
  const drag_ratio = dragShareNow(run);
  signals.stuck = drag_ratio > 1 && stem.motion_m === 0;
  signals.tight = torque_ratio > TIGHT_frac || drag_ratio > TIGHT_frac;
  signals.flowing = flowing(state);
  signals.sloughing = isSloughing(state.hole);
  signals.holeClosed = isClosed(state.hole);
  signals.returns_frac = state.signs.returns_frac;
  readFluidSignals(run, signals);
}

/** The events that a change of mode means for the record. */
function tellChange(run: Run, before: MachineValue): void {
  const { machine } = run.state;
  const told: EventName[] = [];
  if (machine.pump !== before.pump && machine.pump === 'blocked') told.push('strainerBlocked');
  if (machine.stem !== before.stem) {
    if (machine.stem === 'tight') told.push('tight');
    if (machine.stem === 'stuck') told.push('stuck');
    if (machine.stem === 'out') told.push('stemOut');
  }
  if (machine.hole !== before.hole) {
    if (machine.hole === 'sloughing') told.push('sloughing');
    if (machine.hole === 'closed') told.push('holeClosed');
  }
  if (machine.fluid !== before.fluid && before.fluid === 'soaking' && machine.fluid !== 'spent') told.push('soaked');
  if (machine.returns !== before.returns && flowing(run.state)) {
    if (machine.returns === 'none') told.push('returnsLost');
    if (machine.returns === 'full') told.push('returnsBack');
  }
  for (const name of told) tell(run, name, { depth_m: run.state.hole.depth_m });
}

function watchPit(run: Run): void {
  const { pit, signs, site } = run.state;
  const { depth_m } = pit.suction;
  const low = levelBelowRim_m(pit.suction) > depth_m * PIT_LOW_frac;
  // A pit that is not there, or has never been filled, is not low.
  if (low && !signs.pitLowTold && site.pitDug) tell(run, 'pitLow', {});
  signs.pitLowTold = low;
}

/** Tests the edges of this second, tells what happened and moves the machine on. */
export function watch(run: Run): void {
  watchFlow(run);
  watchStem(run);
  watchPit(run);
  readSignals(run);
  const before = run.state.machine;
  const count = edgesInto(run.work.edges, before, run.work.signals);
  for (let i = 0; i < count; i++) send(run, run.work.edges[i]);
  if (count > 0) tellChange(run, before);
}
