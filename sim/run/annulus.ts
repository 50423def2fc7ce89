// One second round a casing that is set: grains fall and come to rest, ground caves in, slurry sinks into the pack, seals get ready.

import { freeRoom_m3, cellRoom_m3, type AnnulusState, type Standpipe } from '../completion/annulus';
import { breakBridges, fallOn, letFall } from '../completion/falling';
import { FILL_NAMES, fillIndex, GROUND_FILL } from '../completion/fills';
import type { PlacedSeal } from '../completion/completion';
import { BED_POROSITY } from '../hole/hole';
import { cohesion_Pa, readNeed } from '../hole/wall/need';
import { ROOF_ratio, wanting_ratio } from '../hole/wall/slough';
import { stability_ratio } from '../hole/wall/support';
import { SEALS } from '../materials/seals';
import { GRAVITY_MS2 } from '../numeric/units';
import { pipeOf } from './casing';
import type { Run } from './run';
import { tell } from './tell';
import { TICK_s } from './work';

/** The open wall round the casing is looked at once in so many seconds while it falls, or once the level has moved so far, m. */
const LOOK_s = 20;
const MOVED_m = 0.02;
/** A cell with less than this share of its room open leans on what stands in it. ASSUMED. */
const OPEN_frac = 0.02;
/** Ground above the water keeps bentonite and clay moist where it is tighter than this, m/s, and below this depth, m. ASSUMED. */
const MOIST_K_ms = 1e-6;
const TOP_DRIES_m = 0.5;
/** A seal built upon, washed or shaken the moment it was placed is spoilt by this share; the less the readier it was. ASSUMED. */
const DISTURBED_frac = 0.8;

/** The casing as it takes room in the ring. */
export function standpipe(run: Run): Standpipe {
  const { plan, casing } = run.state.completion;
  const { outside_m } = pipeOf(plan!);
  return { outside_m, shoe_m: casing.shoe_m };
}

/** Pressure of the fluid in the ring at a depth, Pa; it stands as high as in the casing. */
const ringPressure_Pa = (annulus: AnnulusState, depth_m: number, level_m: number): number =>
  annulus.density_kgm3 * GRAVITY_MS2 * Math.max(0, depth_m - level_m);

/** One look at an open cell: what falls of its wall goes down the ring. Returns whether anything did. */
function cave(run: Run, annulus: AnnulusState, i: number, pipe: Standpipe, level_m: number, dt_s: number): boolean {
  const { wallGround, wall } = run.work;
  const room_m3 = cellRoom_m3(annulus, i, pipe);
  // Where friction does not rule, clay stands or has closed on the pipe already.
  if (!(wallGround.phi_deg[i] > 0) || !(room_m3 > 0)) return false;
  if (freeRoom_m3(annulus, i, pipe) < OPEN_frac * room_m3) return false;
  const radius_m = annulus.radius_m[i];
  readNeed(wall.need, i, radius_m);
  const depth_m = (i + 0.5) * annulus.dz_m;
  const dry = depth_m < level_m;
  const over_Pa = ringPressure_Pa(annulus, depth_m, level_m) - wallGround.pore_Pa[i];
  // Drained sand above the water holds together again; under water it does not.
  const stuck_Pa = cohesion_Pa(wallGround, i, dry ? 0 : WETTED_s);
  const friction_Pa = wall.need.friction_Pa[i];
  const F = stability_ratio(
    annulus.support_frac[i] * over_Pa,
    friction_Pa,
    stuck_Pa * wall.need.cohesionShare_ratio[i],
  );
  const wanting = wanting_ratio(F, annulus.caves);
  const most_m = (ROOF_ratio * run.kit.bit_m) / 2;
  const to_m = Math.min(Math.max(radius_m, most_m), radius_m + wall.retreat_ms[i] * wanting * dt_s);
  const fallen_m3 = Math.PI * (to_m * to_m - radius_m * radius_m) * annulus.dz_m;
  if (!(fallen_m3 > 0)) return false;
  annulus.radius_m[i] = to_m;
  // It lies looser than it stood.
  const loose_m3 = (fallen_m3 * (1 - wallGround.porosity_frac[i])) / (1 - BED_POROSITY);
  annulus.put_m3[GROUND_FILL] += loose_m3;
  letFall(annulus, GROUND_FILL, i, loose_m3);
  return true;
}

/** Wetted for longer than capillary water lasts. */
const WETTED_s = 1e6;

function lookAtWall(run: Run, annulus: AnnulusState, pipe: Standpipe, level_m: number): void {
  let caves = false;
  for (let i = 0; i < annulus.used; i++) if (cave(run, annulus, i, pipe, level_m, LOOK_s)) caves = true;
  annulus.caves = caves;
  annulus.looked_m = level_m;
}

/** Salt in the water of a cell, or of the fluid that stood in the ring, g/L: bentonite drinks either. */
const saltAt_gL = (run: Run, annulus: AnnulusState, i: number): number =>
  Math.max(annulus.salt_gL, run.work.wallGround.saturation_frac[i] >= 1 ? run.work.wallGround.salt_gL[i] : 0);

/** Does the ground dry out what it holds here? */
function driesAt(run: Run, annulus: AnnulusState, i: number): boolean {
  const { wallGround } = run.work;
  if (wallGround.saturation_frac[i] >= 1) return false;
  return wallGround.K_ms[i] > MOIST_K_ms || (i + 0.5) * annulus.dz_m < TOP_DRIES_m;
}

/** When a seal is ready it is what the place has made of it. */
function ripen(run: Run, annulus: AnnulusState, placed: PlacedSeal): void {
  const { driesOut, saltLimit_gL } = SEALS[placed.seal];
  const f = fillIndex(placed.seal);
  for (let i = 0; i < annulus.used; i++) {
    if (!(annulus.fill_m3[f * annulus.cells + i] > 0)) continue;
    const salty = saltLimit_gL !== null && saltAt_gL(run, annulus, i) > saltLimit_gL;
    if (salty || (driesOut && driesAt(run, annulus, i))) annulus.spoilt_frac[i] = 1;
  }
  placed.told = true;
  tell(run, 'sealSet', { seal: placed.seal, volume_L: placed.volume_m3 * 1000 });
}

/** Whatever is done to the ring, or to the water at its foot, now: seals that are not ready suffer. except: the same stuff goes on being placed. */
export function disturbSeals(run: Run, except = ''): void {
  const { annulus, seals } = run.state.completion;
  if (!annulus) return;
  const { tick } = run.state;
  for (const { seal, placed_tick, ready_tick } of seals) {
    if (seal === except || tick >= ready_tick) continue;
    const share = DISTURBED_frac * (1 - (tick - placed_tick) / (ready_tick - placed_tick));
    const f = fillIndex(seal);
    for (let i = 0; i < annulus.used; i++)
      if (annulus.fill_m3[f * annulus.cells + i] > 0) annulus.spoilt_frac[i] = Math.max(annulus.spoilt_frac[i], share);
  }
}

/** Surging shakes the ring: what hangs over a void comes down, unless it has set. */
export function shakeRing(run: Run): void {
  const { annulus, seals } = run.state.completion;
  if (!annulus) return;
  const { tick } = run.state;
  const sets = (f: number): boolean =>
    seals.some(
      ({ seal, ready_tick, placed_tick }) => fillIndex(seal) === f && ready_tick > placed_tick && tick >= ready_tick,
    );
  breakBridges(annulus, standpipe(run), sets);
}

/** Where pieces jam, they do when the first of them come by, whoever may still be pouring. */
function jam(run: Run, annulus: AnnulusState): void {
  const { jamCell, jamFill } = annulus;
  if (jamCell < 0) return;
  if (annulus.falling_m3[jamFill * annulus.cells + jamCell] > 0) {
    annulus.jamCell = -1;
    annulus.bridged[jamCell] = 1;
    tell(run, 'packBridged', { fill: FILL_NAMES[jamFill], at_m: (jamCell + 1) * annulus.dz_m });
  } else if (annulus.inFlight_m3[jamFill] === 0) annulus.jamCell = -1;
}

/** The ring's half of the light second. With nothing falling, nothing caving and no seal to wait for it does nothing. */
export function tendAnnulus(run: Run): void {
  const { annulus, seals } = run.state.completion;
  if (!annulus) return;
  const pipe = standpipe(run);
  jam(run, annulus);
  fallOn(annulus, pipe, TICK_s);
  const level_m = run.state.well!.level_m;
  const moved = annulus.caves || Math.abs(level_m - annulus.looked_m) > MOVED_m;
  if (moved && run.state.tick % LOOK_s === 0) lookAtWall(run, annulus, pipe, level_m);
  for (const placed of seals) if (!placed.told && run.state.tick >= placed.ready_tick) ripen(run, annulus, placed);
}
