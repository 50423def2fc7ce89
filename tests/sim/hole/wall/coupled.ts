// Loss and wall of one site together, the level held where the test wants it and the fluid kept at its strength: what falls is taken out again.
import { SOAKED } from '../../../../sim/fluid/substances';
import { holeCapacity_m3 } from '../holds';
import { lossInto } from '../../../../sim/hole/loss/loss';
import { createLossWork, type LossInput, type LossWork } from '../../../../sim/hole/loss/work';
import { rheologyInto } from '../../../../sim/fluid/rheology';
import { suspensionDensity_kgm3 } from '../../../../sim/hole/load';
import { surgeInto } from '../../../../sim/hole/wall/swab';
import { wallShear_Pa } from '../../../../sim/hole/wall/washout';
import { wallInto } from '../../../../sim/hole/wall/wall';
import { CAUSES } from '../../../../sim/hole/wall/failures';
import { cellVolume_m3 } from '../../../../sim/hole/hole';
import type { Ground } from '../../../../sim/ground/ground';
import { DZ_m, siteOf, type Site } from './site';

export interface Coupled extends Site {
  loss: LossWork;
  lossInput: LossInput;
  soaked_gL: number;
}

export function coupledOf(profile: Ground, depth_m: number, level_m: number, soaked_gL = 0): Coupled {
  const site = siteOf(profile, depth_m, level_m);
  const loss = createLossWork(site.hole.cells);
  site.input.pressure_Pa = loss.pressure_Pa;
  site.input.surge_Pa = loss.surge_Pa;
  site.input.ground_Pa = loss.ground_Pa;
  site.input.soaked_gL = soaked_gL;
  site.input.fluid = {
    density_kgm3: suspensionDensity_kgm3(0),
    ...rheologyInto({ K_Pasn: 0, n_ratio: 1 }, soaked_gL, 0, 0, 20),
  };
  const lossInput: LossInput = {
    dt_s: 1,
    tick: 0,
    bit_m: 0,
    rodOutside_m: 0.0337,
    temperature_C: 20,
    inflow_m3: 0,
    turning: false,
    wallShear_Pa: 0,
    friction_Pam: 0,
  };
  return { ...site, loss, lossInput, soaked_gL };
}

/** Fills the hole up to its level again. */
function refill(site: Coupled): void {
  const { hole, input } = site;
  let water_m3 = 0;
  for (let i = 0; i * DZ_m < hole.depth_m; i++) {
    const bottom_m = Math.min((i + 1) * DZ_m, hole.depth_m);
    const wet = Math.min(1, Math.max(0, (bottom_m - site.level_m) / (bottom_m - i * DZ_m)));
    const room_m3 = wet * cellVolume_m3(hole, i, bottom_m, input.stem);
    water_m3 += room_m3;
    if (i < hole.used) hole.dissolved_kg[SOAKED * hole.cells + i] = site.soaked_gL * room_m3;
  }
  hole.water_m3 = water_m3;
  hole.shortfall_m3 = holeCapacity_m3(hole, input.stem) - water_m3;
}

export function together(site: Coupled, seconds: number, each?: () => void): void {
  const { hole, ground, work, input, moving, loss, lossInput } = site;
  for (let s = 0; s < seconds; s++) {
    refill(site);
    moving.fluid = input.fluid;
    moving.flow_m3s = input.flow_m3s;
    lossInput.tick = input.tick;
    lossInput.bit_m = input.stem.bit_m;
    lossInput.wallShear_Pa = wallShear_Pa(work.conduit, input.flow_m3s, 0.1, 0.0337, input.fluid);
    surgeInto(loss.surge_Pa, hole, work.swab, moving);
    lossInto(hole, ground, lossInput, loss);
    wallInto(hole, ground, work, input);
    const { failures } = work;
    for (let f = 0; f < failures.count; f++) {
      site.volume_m3[CAUSES[failures.cause[f]]] += failures.volume_m3[f];
      site.begun[CAUSES[failures.cause[f]]] += failures.begins[f];
    }
    each?.();
    input.tick += 1;
  }
}
