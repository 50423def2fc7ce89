// What a run, and each new hole in it, begins with: the stem hung in a starter hole, the pit, the stocks.

import { createCompletion } from '../completion/completion';
import { createHole, type HoleState } from '../hole/hole';
import { createStemFill, type StemFill } from '../hole/stemFill';
import { CAUSES } from '../hole/wall/failures';
import { firstValue } from '../machine/machine';
import type { Kit } from '../materials/kit';
import { CLASS_COUNT } from '../materials/sizes';
import { createPit } from '../pit/pit';
import { createBoundary } from './boundary';
import { createFaults } from './faultState';
import { firstGear } from './gear';
import { NOISE_COUNT } from './noise';
import type { Opening, Scenario } from './scenario';
import type { RunState, StemState } from './state';
import { rodBore_m3 } from './stem';

/** Channel of a pit that is there at the start, m. ASSUMED. */
const KIT_CHANNEL_m = 1;

function openingPit(kit: Kit, opening: Opening): RunState['pit'] {
  const pit = createPit({
    settling: kit.settling,
    suction: kit.suction,
    notch_m: kit.notch_m,
    strainer_m: kit.strainer_m,
  });
  const area_m2 = pit.settling.area_m2 + pit.suction.area_m2;
  const filled_m3 = Math.min(
    opening.setOut ? 0 : opening.pit_L / 1000,
    pit.settling.capacity_m3 + pit.suction.capacity_m3,
  );
  pit.settling.water_m3 = (filled_m3 * pit.settling.area_m2) / area_m2;
  pit.suction.water_m3 = (filled_m3 * pit.suction.area_m2) / area_m2;
  return pit;
}

/** A stem hung in the starter hole, cool and at rest. */
export function openingStem({ opening }: Scenario, kit: Kit): StemState {
  return {
    rods: opening.rods,
    bit_m: opening.starter_m,
    turning: false,
    feed_frac: 0,
    motion_m: 0,
    motion_ms: 0,
    balling_frac: 0,
    torque_Nm: 0,
    pull_N: 0,
    sinking_ms: 0,
    layerIndex: 0,
    rodDownTold: false,
    buriedTold: false,
    balledTold: false,
    stalled: false,
    stalledTold: false,
    freeing: false,
    drive_C: kit.temperature_C,
    driveTripped: false,
    refused_s: 0,
    refusedAt_m: -1,
  };
}

/** The same stem still full of air, and the starter hole it hangs in. */
export const openingFill = ({ opening }: Scenario, kit: Kit): StemFill =>
  createStemFill(opening.rods * rodBore_m3(kit));
export const starterHole = ({ opening }: Scenario, kit: Kit): HoleState =>
  createHole({ dz_m: kit.dz_m, maxDepth_m: opening.maxDepth_m, bit_m: kit.bit_m, starter_m: opening.starter_m });

/** The state of a run at its first tick. */
export function openingState(scenario: Scenario): RunState {
  const { kit, opening } = scenario;
  const starter_m = opening.starter_m;
  return {
    tick: 0,
    machine: firstValue(),
    stem: openingStem(scenario, kit),
    pump: {
      throttle_frac: 0,
      primed: opening.primed && opening.setOut !== true,
      flow_m3s: 0,
      running_s: 0,
      flowTold: false,
      gulping: false,
      gulpingTold: false,
      worn_frac: opening.pumpWorn_frac ?? 0,
      wornTold: false,
      dry_s: 0,
      sealBurnt: false,
    },
    fill: openingFill(scenario, kit),
    hole: starterHole(scenario, kit),
    holeNumber: 1,
    oldHoles: [],
    rodsInAll: opening.rodsInAll,
    site: { pitDug: opening.setOut !== true, channel_m: KIT_CHANNEL_m, spot: '' },
    gear: firstGear(scenario),
    wall: {
      lost_m3: 0,
      came_m3: 0,
      lostPolymer_kg: 0,
      taken_m3: new Float64Array(CAUSES.length),
      toldAgain_tick: new Float64Array(CAUSES.length),
    },
    pit: openingPit(kit, opening),
    well: null,
    tasks: [],
    wait: null,
    stocks: {
      water_L: opening.water_L,
      powder_kg: opening.powder_kg,
      bentonite_kg: opening.bentonite_kg ?? 0,
      clay_kg: opening.clay_kg ?? 0,
      chlorine_kg: opening.chlorine_kg ?? 0,
      petrol_L: opening.petrol_L,
      waterUsed_L: 0,
      powderUsed_kg: 0,
      bentoniteUsed_kg: 0,
      clayUsed_kg: 0,
      chlorineUsed_kg: 0,
      wellSpent_marks: 0,
    },
    outTold: { water: opening.water_L <= 0, powder: opening.powder_kg <= 0, petrol: opening.petrol_L <= 0 },
    boundary: createBoundary(),
    signs: {
      level_m: starter_m,
      returns_frac: 0,
      grit_frac: 0,
      fines_frac: 0,
      mouth_frac: new Float64Array(CLASS_COUNT),
      salt_gL: 0,
      colour: 'pale',
      cleanTicks: 0,
      wasLoaded: false,
      pitLowTold: false,
      pitFullTold: false,
    },
    faults: createFaults(scenario.faults),
    feel: null,
    funnel: null,
    stick: null,
    completion: createCompletion(),
    caught: { solids_m3: new Float64Array(CLASS_COUNT), moment_m4: new Float64Array(CLASS_COUNT) },
    samples: [],
    notes: [],
    ownLog: [],
    cautions: [],
    hints: [],
    wentBack: 0,
    lastRefusal: null,
    recent: [],
    noise: new Float64Array(NOISE_COUNT),
  };
}
