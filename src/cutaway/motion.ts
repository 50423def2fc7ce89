// What moves between two views: grains and fluid by their speeds, the bit from where it was to where it is, the turn of
// the stem. Paused or still, nothing moves.

import { timesSlower } from './pace';
import type { Scene } from './part';
import type { CutawayView } from './shown';

export interface Motion {
  /** Shown job seconds of the last advance. */
  readonly shown_s: number;
  take(view: CutawayView, pace_ratio: number, scene: Scene | null, first: boolean): void;
  slower(view: CutawayView, scene: Scene): void;
  /** How many times slower things are shown where a metre of depth takes so many pixels. */
  slowerAt(view: CutawayView, depth_pxm: number): number;
  /** Lets so many seconds of the wall clock pass; true while there is more to move. */
  advance(view: CutawayView, scene: Scene, wall_s: number): boolean;
  isMoving(view: CutawayView): boolean;
}

/** A bit that jumps farther than this in one view was set there (a new rod, a step back); it does not travel. */
const LONGEST_TRAVEL_m = 1.2;

/** Fastest rise of the fluid round the stem; sets how much slower than true things are shown. */
function fastestRise_ms(view: CutawayView): number {
  const { hole } = view;
  let fastest = 0;
  if (hole) for (let i = 0; i < hole.cells; i++) fastest = Math.max(fastest, hole.up_ms[i]);
  return fastest;
}

/** still: nothing moves between two views. */
export function createMotion(still: boolean): Motion {
  let pace_ratio = 1;
  let from_m = 0;
  let to_m = 0;
  let travel = 1;
  let shown_s = 0;

  function isMoving(view: CutawayView): boolean {
    if (still || pace_ratio <= 0) return false;
    return (
      view.pump.flow_m3s > 0 || view.stem.turning || travel < 1 || sinking(view) || pouring(view) || view.sky !== 'dry'
    );
  }

  /** Grains that hang in still fluid go on falling. */
  function sinking({ hole }: CutawayView): boolean {
    return hole !== null && hole.solids_frac.some((share) => share > 1e-5);
  }

  /** Pack and seal that fall round the casing. */
  function pouring({ well }: CutawayView): boolean {
    return well?.annulus?.falling_frac.some((share) => share > 1e-4) ?? false;
  }

  const slowerAt = (view: CutawayView, depth_pxm: number): number =>
    timesSlower(pace_ratio, view.pump.bore_ms, fastestRise_ms(view), depth_pxm);

  return {
    get shown_s() {
      return shown_s;
    },
    take(view, newPace_ratio, scene, first) {
      pace_ratio = newPace_ratio;
      to_m = view.stem.bit_m;
      const here_m = scene && !first ? scene.bit_m : to_m;
      const jump = still || pace_ratio <= 0 || Math.abs(to_m - here_m) > LONGEST_TRAVEL_m;
      from_m = jump ? to_m : here_m;
      travel = from_m === to_m ? 1 : 0;
      if (scene) scene.bit_m = from_m;
    },
    slower(view, scene) {
      if (scene.bit_m === 0 && travel === 1) scene.bit_m = to_m;
      scene.slower = slowerAt(view, scene.place.depth_pxm);
    },
    slowerAt,
    advance(view, scene, wall_s) {
      shown_s = 0;
      if (still || pace_ratio <= 0) return false;
      shown_s = (wall_s * pace_ratio) / scene.slower;
      if (travel < 1) {
        travel = Math.min(1, travel + wall_s * Math.max(1, pace_ratio));
        scene.bit_m = from_m + (to_m - from_m) * travel;
      }
      if (view.stem.turning) {
        // Faster than the eye can follow it would seem to stand or to run backwards.
        const turns_s = (view.kit.turn_rpm / 60) * Math.min(1, pace_ratio);
        scene.turn_rad = (scene.turn_rad + 2 * Math.PI * turns_s * wall_s) % (2 * Math.PI);
      }
      return isMoving(view);
    },
    isMoving,
  };
}
