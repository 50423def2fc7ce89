// The tables of figures in sim/MODEL.md worked out anew: what stands in the row that begins with a word, in a column.
import { createBitResult, drillInto } from '../../sim/drilling/bit';
import { bedTorque_Nm } from '../../sim/drilling/torque';
import { pull_N } from '../../sim/drilling/pull';
import { apparentViscosity_Pas } from '../../sim/fluid/apparent';
import { feelWord } from '../../sim/fluid/feel';
import { marshFunnel_s } from '../../sim/fluid/funnel';
import { rheologyInto } from '../../sim/fluid/rheology';
import { suspensionDensity_kgm3 } from '../../sim/hole/load';
import { slipInto } from '../../sim/hole/slip';
import { WATER_Nm3 } from '../../sim/hole/loss/conductance';
import { REACH_m } from '../../sim/hole/loss/front';
import { createNeedTable, readNeed } from '../../sim/hole/wall/need';
import { createWallGround } from '../../sim/hole/wallGround';
import { keptFull, oneMetre } from '../sim/hole/loss/sandHole';
import { createFlowResult, solveFlow } from '../../sim/hydraulics/flow';
import { FUNNEL_VOLUME_m3 } from '../../sim/materials/funnel';
import { DEFAULT_KIT as KIT } from '../../sim/materials/kit';
import { CLASS_COUNT, SIZE_CLASSES } from '../../sim/materials/sizes';
import { SOILS, type SoilKind } from '../../sim/materials/soils';
import { waterDensity_kgm3 } from '../../sim/materials/water';
import { alongLogY } from '../../sim/numeric/curve';
import { GRAVITY_MS2 } from '../../sim/numeric/units';
import { PIT_SHEAR_1s, SETTLING_TANKS } from '../../sim/pit/settle';
import { DZ_m, groundOf, siteOf, stand } from '../sim/hole/wall/site';
import { CONSTANTS } from './constants';

/** The row's first cell, the column's heading up to its first blank, and the column's place after the first. */
type Figure = (row: string, column: string, place: number) => number | string;

const fluidOf = (dose_gL: number) => ({
  density_kgm3: waterDensity_kgm3(20),
  ...rheologyInto({ K_Pasn: 0, n_ratio: 1 }, dose_gL, 0, 0, KIT.temperature_C),
});

/** Full throttle, pit full to the rim, an even hole of the bit's width that is full, one clean fluid all round. */
function flowAt(bit_m: number, dose_gL: number) {
  const fluid = fluidOf(dose_gL);
  const out = createFlowResult();
  const levels = { pitLevel_m: 0, mouthLevel_m: 0, blockage_frac: 0, headLeft_ratio: 1, lost_frac: 0 };
  const lines = { hose: fluid, stem: fluid, annulus: fluid };
  const hole = { stemLength_m: bit_m, bit_m, holeDiameter_m: KIT.bit_m };
  solveFlow({ kit: KIT, throttle_frac: 1, ...hole, ...levels, ...lines }, KIT.nominalFlow_m3s, out);
  return out;
}

function slip_ms(size: string, dose_gL: number, ambient_1s: number): number {
  const { K_Pasn, n_ratio, density_kgm3 } = fluidOf(dose_gL);
  const slip = new Float64Array(CLASS_COUNT);
  slipInto(slip, new Float64Array(CLASS_COUNT), K_Pasn, n_ratio, density_kgm3, ambient_1s);
  return slip[SIZE_CLASSES.findIndex(({ id }) => id === size)];
}

const L_MIN = 60000;
const PIT_FLOW_m3s = 120 / L_MIN;
const STILL_SHEAR_1s = CONSTANTS.get('run/circulate.ts')!.get('STILL_SHEAR_1s')!.value as number;

/** What clean ground needs at 10 m, ground water all the way, and the level that gives it through this share. */
function standing(kind: SoilKind, place: number): number {
  const ground = createWallGround(groundOf([[kind, 20]], 0), 20, 1);
  const table = createNeedTable(ground, 20);
  readNeed(table, 0, KIT.bit_m / 2);
  const need_Pa = table.friction_Pa[0];
  const share_frac = place === 1 ? Math.log(2) / Math.log((2 * REACH_m) / KIT.bit_m) : 1;
  return place === 0 ? need_Pa / 1000 : need_Pa / (share_frac * WATER_Nm3);
}

const LEVELS_m = [0, 3, Infinity];
/** Diameter left of a hole in soft clay, mm. */
function squeezed_mm(depth_m: number, level_m: number): number {
  const site = siteOf(groundOf([['softClay', 30]], 2), 16, Math.min(level_m, 16));
  site.ground.swell_ratio.fill(0);
  stand(site, 1800);
  return 2000 * site.hole.radius_m[Math.floor(depth_m / DZ_m)];
}

export const FIGURES: Readonly<Record<string, Figure>> = {
  stand: (row, _column, place) => standing(row as SoilKind, place),
  squeeze: (row, _column, place) => squeezed_mm(Number(row), LEVELS_m[place]),
  fluid(row, _column, place) {
    const { K_Pasn, n_ratio, density_kgm3 } = fluidOf(Number(row));
    const fluid = { K_Pasn, n_ratio };
    if (place === 3) return marshFunnel_s(K_Pasn, n_ratio, density_kgm3, FUNNEL_VOLUME_m3);
    return [K_Pasn, n_ratio, 1000 * apparentViscosity_Pas(fluid, 100), 0, feelWord(fluid, Number(row))][place];
  },
  bentonite(row, _column, place) {
    const dose_gL = Number(row);
    const fluid = rheologyInto({ K_Pasn: 0, n_ratio: 1 }, 0, dose_gL, 0, KIT.temperature_C);
    const density_kgm3 = suspensionDensity_kgm3(0, dose_gL);
    if (place === 3) return marshFunnel_s(fluid.K_Pasn, fluid.n_ratio, density_kgm3, FUNNEL_VOLUME_m3);
    return [fluid.K_Pasn, fluid.n_ratio, 1000 * apparentViscosity_Pas(fluid, 100), 0, density_kgm3, feelWord(fluid, 0)][
      place
    ];
  },
  flow(row, _column, place) {
    const f = flowAt(Number(row), 0);
    const hoses_Pa = f.strainer_Pa + f.suctionHose_Pa + f.deliveryHose_Pa + f.swivel_Pa;
    const losses_Pa = [hoses_Pa, f.stem_Pa, f.nozzle_Pa, f.annulus_Pa];
    const heads_m = losses_Pa.map((loss_Pa) => loss_Pa / (waterDensity_kgm3(20) * GRAVITY_MS2));
    return [f.flow_m3s * L_MIN, f.annulusVelocity_ms, f.pumpHead_m, ...heads_m][place];
  },
  climb(row, column) {
    const { annulusVelocity_ms, wallRate_1s } = flowAt(20, Number(column));
    return 1 - slip_ms(row, Number(column), wallRate_1s / 2) / annulusVelocity_ms;
  },
  still: (row, column) => 1000 * slip_ms(row, Number(column), STILL_SHEAR_1s),
  pit(row, column) {
    const x_ratio = (slip_ms(row, Number(column), PIT_SHEAR_1s) * KIT.settling.area_m2) / PIT_FLOW_m3s;
    return 1 - (1 + x_ratio / SETTLING_TANKS) ** -SETTLING_TANKS;
  },
  rate(row, column) {
    const out = createBitResult();
    const { nozzles, nozzle_m, nominalFlow_m3s: flow_m3s } = KIT;
    const nozzleVelocity_ms = flow_m3s / ((nozzles * Math.PI * nozzle_m * nozzle_m) / 4);
    const clean = {
      feed_frac: 1,
      turning: true,
      grip_Nm: 0,
      balling_frac: 0,
      bed_m: 0,
      load_frac: 0,
      density_kgm3: 1000,
    };
    const stemLength_m = Number(column);
    drillInto(out, { kit: KIT, ...clean, ...SOILS[row as SoilKind], stemLength_m, flow_m3s, nozzleVelocity_ms });
    return out.rate_ms * 3600;
  },
  fill(row, column, place) {
    const fill_m = Number(row);
    return place === 0 ? bedTorque_Nm(fill_m) : pull_N(KIT, Number(column), 1000, fill_m, 0, 0);
  },
  loss(row, _column, place) {
    const soil = SOILS[row as SoilKind];
    const d15_mm = alongLogY([0.1, 0.3], [soil.d10_mm, soil.d30_mm], 0.15);
    return keptFull(oneMetre({ ...soil, d15_mm }, place === 0 ? 0 : 1.3), [60, 8, 60, 300, 1800][place]);
  },
};
