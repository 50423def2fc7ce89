// The wall of a hole of 30 m in ground of all sorts, once a tick: at rest with the pump on, and with the stem on its way up.
import { buildGround, type SoilKind } from '../../sim';
import { createHole } from '../../sim/hole/hole';
import { dropFallen } from '../../sim/hole/wall/fallen';
import { surgeInto } from '../../sim/hole/wall/swab';
import { wallInto } from '../../sim/hole/wall/wall';
import { createWallWork } from '../../sim/hole/wall/work';
import { createWallGround } from '../../sim/hole/wallGround';
import { createParcel } from '../../sim/hole/parcel';

const BEDS: readonly SoilKind[] = ['topsoil', 'fineSand', 'siltySand', 'softClay', 'mediumSand', 'coarseSand'];
const CELLS = 120;
const DZ_m = 0.25;

export function wallOf(lift_ms: number): () => void {
  const layers = BEDS.map((kind) => ({ kind, thickness_m: [5, 5] as [number, number] }));
  const ground = createWallGround(buildGround({ layers, waterTable_m: [2, 2] }, 1), DZ_m, CELLS);
  const depth_m = CELLS * DZ_m;
  const hole = createHole({ dz_m: DZ_m, maxDepth_m: depth_m, bit_m: 0.1, starter_m: depth_m });
  hole.water_m3 = 0.2;
  hole.wall.lost_m2.fill(2e-3);
  hole.wall.cakeResistance_s.fill(2000);
  const work = createWallWork(ground, DZ_m);
  const out = createParcel();
  const fluid = { density_kgm3: 1010, K_Pasn: 0.001, n_ratio: 1 };
  const stem = { bit_m: lift_ms > 0 ? 20 : depth_m, rodOutside_m: 0.0337 };
  const flow_m3s = lift_ms > 0 ? 0 : 0.002;
  const moving = { lift_ms, holeWidth_m: 0.1, stem, fluid, flow_m3s, balling_frac: 0 };
  const input = {
    tick: 0,
    dt_s: 1,
    pressure_Pa: new Float64Array(CELLS).map((_, i) => 9908 * Math.max(0, (i + 0.5) * DZ_m - 1)),
    surge_Pa: new Float64Array(CELLS),
    ground_Pa: ground.pore_Pa,
    stem,
    bitWidth_m: 0.1,
    flow_m3s,
    fluid,
    soaked_gL: 0,
    bentonite_gL: 0,
  };
  return () => {
    surgeInto(input.surge_Pa, hole, work.swab, moving);
    wallInto(hole, ground, work, input);
    dropFallen(hole, work.fallen, 1, out);
    input.tick += 1;
  };
}
