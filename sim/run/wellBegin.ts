// What the well starts with: the water in its casing, and round its screen what the drilling has left.

import { boreArea_m2 } from '../completion/buoyancy';
import { frontRadius_m } from '../hole/loss/front';
import { BENTONITE as BENTONITE_POWDER } from '../materials/bentonite';
import { POLYMER } from '../materials/polymer';
import { CLASS_COUNT } from '../materials/sizes';
import { ln } from '../numeric/functions';
import { restLevel_m } from '../well/casingWater';
import { layerOf, readIntake } from '../well/intake';
import { createRateSteps } from '../well/rateSteps';
import { createScreenRing, type ScreenRing } from '../well/ring';
import { screenCells, standingOf, type Standing } from '../well/standing';
import { WASH_METHODS } from '../well/washing';
import { groundOf } from './ground';
import type { Run } from './run';

/** Polymer in the fluid that the ground drank, in working doses: of the mean of all that was lost. */
function lostDose_ratio({ wall }: Run['state']): number {
  if (!(wall.lost_m3 > 0)) return 0;
  return wall.lostPolymer_kg / wall.lost_m3 / POLYMER.workingDose_gL;
}

/** Share of a cake that is clay, by how tight it is: none at the polymer's conductivity, all at the bentonite's, straight in the logarithm. */
function clayShare(cake_m: number, cake_s: number): number {
  if (!(cake_m > 0) || !(cake_s > 0)) return 0;
  const polymer_ms = POLYMER.cakeConductivity_ms;
  const share = ln(polymer_ms / (cake_m / cake_s)) / ln(polymer_ms / BENTONITE_POWDER.cakeConductivity_ms);
  return Math.min(1, Math.max(0, share));
}

/** The ring as the drilling has left it. */
function ringOf(run: Run, standing: Standing): ScreenRing {
  const { hole } = run.state;
  const { first, last } = screenCells(standing);
  const ring = createScreenRing(last - first + 1);
  const dose_ratio = lostDose_ratio(run.state);
  for (let i = 0; i < ring.count; i++) {
    const cell = first + i;
    const top_m = Math.max(standing.screenFrom_m, cell * standing.dz_m);
    const bottom_m = Math.min(standing.screenTo_m, (cell + 1) * standing.dz_m);
    ring.top_m[i] = top_m;
    ring.height_m[i] = Math.max(0, bottom_m - top_m);
    ring.hole_m[i] = Math.max(standing.pipe.outside_m / 2, standing.hole_m[cell]);
    const pores_frac = layerOf(groundOf(run), ring, i).porosity_frac;
    ring.invaded_m[i] = frontRadius_m(ring.hole_m[i], hole.wall.lost_m2[cell], pores_frac);
    ring.dose_ratio[i] = dose_ratio;
    ring.whole_frac[i] = 1;
    ring.mud_frac[i] = 1;
    ring.cake_s[i] = hole.wall.cakeResistance_s[cell];
    ring.caked_frac[i] = 1;
    ring.clay_frac[i] = clayShare(hole.wall.cake_m[cell], ring.cake_s[i]);
  }
  return ring;
}

/** Makes the well of a run whose casing has just been set; its first level is that of the fluid in the hole. */
export function beginWell(run: Run): void {
  const { state } = run;
  const standing = standingOf(state.completion);
  if (!standing) throw new Error('A well needs a plan and a casing in the hole.');
  const ring = ringOf(run, standing);
  const section_m2 = boreArea_m2(standing.pipe);
  const bottom_m = standing.shoe_m;
  const { aquifer, intake, flow_frac } = readIntake(standing, ring, groundOf(run), 0, false);
  ring.flow_frac.set(flow_frac);
  const level_m = Math.min(bottom_m, Math.max(0, state.signs.level_m));
  const water_m3 = section_m2 * (bottom_m - level_m);
  state.boundary.waterIn_m3 += water_m3;
  state.well = {
    closed: true,
    closedTick: state.tick,
    casing: state.completion.plan!.casing,
    section_m2,
    bottom_m,
    water_m3,
    level_m,
    chlorine_kg: 0,
    chlorineIn_m3: 0,
    ring,
    intake,
    rest_m: restLevel_m(aquifer, bottom_m),
    rates: createRateSteps(),
    ground_m3s: 0,
    drawn_m3s: 0,
    still: false,
    stirred: false,
    sand_gL: 0,
    turbidity_NTU: 0,
    sandClass_frac: new Float64Array(CLASS_COUNT),
    washed_s: new Float64Array(WASH_METHODS.length),
    out_m3: 0,
    in_m3: 0,
    sand_kg: 0,
    clearTold: false,
    brokenTold: false,
    jar: null,
    dip: null,
    test: null,
    disinfection: null,
    headWorks: null,
  };
}
