// Whether casing and screen are sound: what the pipe stands, what the slots leave of it, how much of the screen is of use.
import { collapse_Pa, collapseHead_m, emptied_Pa, slottedCollapse_ratio } from '../completion/collapse';
import { slurryDensity_kgm3 } from '../completion/cement';
import { entrance_ms, openPerMetre_m, openShare_frac, sectionLeft_frac } from '../completion/slots';
import { CEMENT, SEALS } from '../materials/seals';
import { waterDensity_kgm3 } from '../materials/water';
import { screenLength_m, type Standing } from './standing';
import { shared_m } from './transmissivity';
import type { Verdict } from './verdict';
import type { VerdictReading } from './verdictReading';
import type { YieldRead } from './yieldVerdict';

/** A margin wider than this is told as this. */
const WIDEST_ratio = 99;

/** Height of fresh slurry that stood against the casing, m: the cells that hold a seal that is poured as a slurry. */
function slurryHeight_m(standing: Standing): number {
  let height_m = 0;
  for (const { seal_frac, piece_mm } of standing.fill)
    if (seal_frac > 0 && piece_mm === SEALS.cement.piece_mm) height_m += seal_frac * standing.dz_m;
  return height_m;
}

/**
 * Pressure at which the pipe folds over the most that it meets: bailed dry (blank pipe at the screen's top, slotted pipe at its end), or with
 * fresh slurry outside and water inside.
 */
export function collapse_ratio(standing: Standing, level_m: number, temperature_C: number): number {
  const { pipe, slots, screenFrom_m, screenTo_m } = standing;
  const water_kgm3 = waterDensity_kgm3(temperature_C);
  const whole_Pa = collapse_Pa(pipe);
  const blank = whole_Pa / Math.max(1, emptied_Pa(screenFrom_m, level_m, water_kgm3));
  const slotted_Pa = whole_Pa * slottedCollapse_ratio(slots);
  const slotted = slotted_Pa / Math.max(1, emptied_Pa(screenTo_m, level_m, water_kgm3));
  const slurry_m = slurryHeight_m(standing);
  const head_m = collapseHead_m(whole_Pa, slurryDensity_kgm3(CEMENT.water_ratio), water_kgm3);
  const grouted = slurry_m > 0 ? head_m / slurry_m : WIDEST_ratio;
  return Math.min(WIDEST_ratio, blank, slotted, grouted);
}

export function casingVerdict({ standing, temperature_C }: VerdictReading, level_m: number): Verdict['casing'] {
  return {
    collapse_ratio: collapse_ratio(standing, level_m, temperature_C),
    section_frac: sectionLeft_frac(standing.slots, standing.pipe.outside_m),
    snapped: standing.snapped,
    depth_m: standing.shoe_m,
  };
}

/** The screen in the driest month, when used_m3s is drawn through it. */
export function screenVerdict(
  { standing, ground }: VerdictReading,
  dry: YieldRead,
  used_m3s: number,
): Verdict['screen'] {
  const { screenFrom_m, screenTo_m, slots, pipe } = standing;
  const length_m = screenLength_m(standing);
  let inAquifer_m = 0;
  for (const { top_m, bottom_m } of ground.heads)
    inAquifer_m += shared_m({ top_m, bottom_m, K_ms: 0 }, screenFrom_m, screenTo_m);
  const wet_m = Math.max(0, screenTo_m - Math.max(screenFrom_m, dry.read.aquifer.level_m));
  const open_m2 = openPerMetre_m(slots) * wet_m;
  return {
    from_m: screenFrom_m,
    to_m: screenTo_m,
    openShare_frac: openShare_frac(slots, pipe.outside_m),
    inAquifer_frac: Math.min(1, inAquifer_m / length_m),
    belowLowest_frac: wet_m / length_m,
    entrance_ms: open_m2 > 0 ? entrance_ms(used_m3s, open_m2) : 0,
  };
}
