// Fills what the drawing is given from a run, as far as the view level allows. The one place where the drawing's side
// looks into a run. The view's arrays are kept and filled anew: read it before the next call for the same run and level.

import {
  floorRise_m,
  FINE_CLASS_COUNT,
  groundOf,
  levelBelowRim_m,
  skyLook,
  SIZE_CLASSES,
  SOAKED,
  type Chamber,
  type Run,
} from '$sim';
import type { CutawayView, ShownChamber, ShownKit, ViewLevel } from './shown';
import { fillCrew } from './viewCrew';
import { createShownHole, fillHole } from './viewHole';
import { createShownWell, fillWell } from './viewWell';

export type { CutawayView, ViewLevel } from './shown';

/** Views of the present hole of a run: another hole has other ground. */
interface HoleViews {
  readonly hole: number;
  readonly views: Partial<Record<ViewLevel, CutawayView>>;
}

const cache = new WeakMap<Run, HoleViews>();

/** What the drawing may show of the run at that level. */
export function cutawayView(run: Run, level: ViewLevel): CutawayView {
  let kept = cache.get(run);
  if (kept?.hole !== run.state.holeNumber) cache.set(run, (kept = { hole: run.state.holeNumber, views: {} }));
  const view = (kept.views[level] ??= createView(run, level));
  fill(view, run);
  return view;
}

function createView(run: Run, level: ViewLevel): CutawayView {
  const { kit } = run;
  const ground = groundOf(run);
  const open = level === 'open' || level === 'debrief';
  const levels = ground.site.wells.flatMap((well) => [well.level_m, well.dryLevel_m]);
  const shownKit: ShownKit = {
    bit_m: kit.bit_m,
    rodLength_m: kit.rodLength_m,
    rodOutside_m: kit.rodOutside_m,
    rodBore_m: kit.rodBore_m,
    nozzles: kit.nozzles,
    turn_rpm: kit.turning_rpm,
    grain_m: SIZE_CLASSES.map((one) => one.d_mm / 1000),
  };
  const chamber = (): ShownChamber => ({
    area_m2: 1,
    depth_m: 1,
    level_m: 0,
    deposit_m: 0,
    fines_frac: 0,
    sand_frac: 0,
  });
  return {
    level,
    time_s: 0,
    kit: shownKit,
    crew: { workers: [], away: 0 },
    sky: 'dry',
    stem: {
      rods: 0,
      rodsInRack: 0,
      bit_m: 0,
      bottom_m: 0,
      turning: false,
      feed_frac: 0,
      sinking_ms: 0,
      stuck: false,
      tight: false,
      out: false,
    },
    pump: {
      primed: false,
      running: false,
      throttle_frac: 0,
      dead: false,
      lost_frac: 0,
      flow_m3s: 0,
      bore_ms: 0,
      jet_ms: 0,
    },
    returns: { share_frac: 0, fines_frac: 0, grains_frac: new Float64Array(SIZE_CLASSES.length), colour: 'brown' },
    pit: {
      dug: true,
      settling: chamber(),
      suction: chamber(),
      notch_m: 0,
      strainer_m: 0,
      strainerBlocked_frac: 0,
      polymer_gL: 0,
    },
    hole: level === 'blind' ? null : createShownHole(run, open),
    well: createShownWell(run),
    holeNumber: run.state.holeNumber,
    layers: open ? ground.layers.map(({ top_m, bottom_m, kind }) => ({ top_m, bottom_m, kind })) : null,
    waterTable_m: open ? ground.waterTable_m : null,
    ownLog: [],
    samples_m: [],
    neighbours: levels.length > 0 ? { top_m: Math.min(...levels), bottom_m: Math.max(...levels) } : null,
  };
}

function fill(view: CutawayView, run: Run): void {
  const { state } = run;
  view.time_s = state.tick;
  // The bit may be chosen when the crew sets out.
  view.kit.bit_m = run.kit.bit_m;
  fillCrew(view.crew, run);
  view.sky = skyLook(run);
  fillStem(view, run);
  fillPump(view, run);
  fillReturns(view, run);
  fillChamber(view.pit.settling, state.pit.settling);
  fillChamber(view.pit.suction, state.pit.suction);
  const { suction } = state.pit;
  view.pit.dug = state.site.pitDug;
  view.pit.notch_m = state.pit.notch_m;
  view.pit.strainer_m = state.pit.strainer_m;
  view.pit.strainerBlocked_frac = state.pit.blockage_frac;
  view.pit.polymer_gL = suction.water_m3 > 0 ? suction.dissolved_kg[SOAKED] / suction.water_m3 : 0;
  if (view.hole) fillHole(view.hole, run);
  if (view.well) fillWell(view.well, run, view.level);
  view.ownLog = state.ownLog;
  view.samples_m.length = state.samples.length;
  for (let i = 0; i < state.samples.length; i++) view.samples_m[i] = state.samples[i].label_m;
}

function fillStem(view: CutawayView, { state }: Run): void {
  const { stem } = view;
  stem.rods = state.stem.rods;
  stem.rodsInRack = state.rodsInAll - state.stem.rods;
  stem.bit_m = state.stem.bit_m;
  // The tally of rods tells the crew how deep the bit has been: the depth drilled.
  stem.bottom_m = state.hole.depth_m;
  stem.turning = state.stem.turning;
  stem.feed_frac = state.stem.feed_frac;
  stem.sinking_ms = state.stem.sinking_ms;
  stem.stuck = state.machine.stem === 'stuck';
  stem.tight = state.machine.stem === 'tight';
  stem.out = state.stem.rods === 0;
}

function fillPump(view: CutawayView, { state, kit, work }: Run): void {
  const { pump } = view;
  pump.primed = state.pump.primed;
  pump.throttle_frac = state.pump.throttle_frac;
  pump.running = state.pump.throttle_frac > 0;
  pump.flow_m3s = state.pump.flow_m3s;
  pump.dead = state.faults.engineDead;
  pump.lost_frac = state.faults.hoseLost_frac;
  pump.bore_ms = (state.pump.flow_m3s * (1 - pump.lost_frac)) / ((Math.PI / 4) * kit.rodBore_m * kit.rodBore_m);
  pump.jet_ms = state.pump.flow_m3s > 0 ? work.flowResult.nozzleVelocity_ms : 0;
}

function fillReturns(view: CutawayView, { state }: Run): void {
  const { returns } = view;
  const { signs } = state;
  returns.share_frac = signs.returns_frac;
  returns.fines_frac = signs.fines_frac;
  for (let k = 0; k < returns.grains_frac.length; k++) returns.grains_frac[k] = signs.mouth_frac[k];
  returns.colour = signs.colour;
}

function fillChamber(shown: ShownChamber, chamber: Chamber): void {
  let fines_m3 = 0;
  let sand_m3 = 0;
  for (let k = 0; k < chamber.solids_m3.length; k++) {
    if (k < FINE_CLASS_COUNT) fines_m3 += chamber.solids_m3[k];
    else sand_m3 += chamber.solids_m3[k];
  }
  const fluid_m3 = Math.max(1e-6, chamber.water_m3 + fines_m3 + sand_m3);
  shown.area_m2 = chamber.area_m2;
  shown.depth_m = chamber.depth_m;
  shown.level_m = levelBelowRim_m(chamber);
  shown.deposit_m = floorRise_m(chamber);
  shown.fines_frac = fines_m3 / fluid_m3;
  shown.sand_frac = sand_m3 / fluid_m3;
}
