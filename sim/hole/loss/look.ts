// One look at one cell of the wall: its cake as the last seconds left it, and how it will drink in the next.
import type { HoleState } from '../hole';
import type { WallGround } from '../wallGround';
import { capture_frac, grownResistance_s, keptByInflow_frac, limitedResistance_s } from './cake';
import { flowPerMetre_m2s, poreLogOf, reachLogOf } from './conductance';
import { frontRadius_m, LEAST_FRONT_ratio, LOOK_TICKS } from './front';
import { ln } from '../../numeric/functions';
import type { LossInput, LossWork } from './work';

/** A smaller difference of head counts as this much, m, when the wall's conductance is worked out: a power law has none at rest. ASSUMED. */
const LEAST_HEAD_m = 0.01;
/** A cell just cut has no flow to start from: its front and its flow are found by turns. */
const FIRST_ROUNDS = 6;

/** Sets the law up for cell i; the fluid's K, n and ln of its index are there already. */
function readLaw(hole: HoleState, ground: WallGround, i: number, work: LossWork): void {
  const { law } = work;
  const radius_m = hole.radius_m[i];
  if (work.logRadius_m[i] !== radius_m) {
    work.logRadius_m[i] = radius_m;
    work.reachLog[i] = reachLogOf(radius_m);
    work.poreLog[i] = poreLogOf(radius_m, ground.K_ms[i], ground.porosity_frac[i]);
  }
  law.radius_m = radius_m;
  law.K_ms = ground.K_ms[i];
  law.poreLog = work.poreLog[i];
  law.cake_s = hole.wall.cakeResistance_s[i];
}

/** Flow at head_m with the front where half the time to the next look will have brought it, by a flow of guess_m2s. */
function flowWithFront(
  hole: HoleState,
  ground: WallGround,
  i: number,
  head_m: number,
  guess_m2s: number,
  work: LossWork,
): number {
  const { law } = work;
  const half_m2 = (head_m > 0 ? 0.5 : -0.5) * LOOK_TICKS * guess_m2s;
  const lost_m2 = Math.max(0, hole.wall.lost_m2[i] + half_m2);
  const saturated = ground.saturation_frac[i] >= 1;
  const pores_frac = saturated ? ground.porosity_frac[i] : ground.porosity_frac[i] * (1 - ground.saturation_frac[i]);
  let front_ratio = frontRadius_m(law.radius_m, lost_m2, pores_frac) / law.radius_m;
  if (!saturated && front_ratio < LEAST_FRONT_ratio) front_ratio = LEAST_FRONT_ratio;
  law.frontLog = ln(front_ratio);
  // Beyond the front in ground that is not saturated there is no water to push.
  law.reachLog = saturated ? work.reachLog[i] : law.frontLog;
  return flowPerMetre_m2s(Math.max(LEAST_HEAD_m, Math.abs(head_m)), law, guess_m2s);
}

/** The cake of cell i after dt_s at this head; rho_s: the ground's own resistance beside it. */
function tendCake(
  hole: HoleState,
  i: number,
  head_m: number,
  rho_s: number,
  perFiltrate: number,
  dt_s: number,
  input: LossInput,
  work: LossWork,
): void {
  const { wall } = hole;
  const K_c = work.making.conductivity_ms;
  const before_s = wall.cakeResistance_s[i];
  if (head_m > 0 && perFiltrate > 0) {
    const grown_s = grownResistance_s(before_s, rho_s, head_m, perFiltrate, K_c, dt_s);
    const resistance_s = limitedResistance_s(before_s, grown_s, wall.cake_m[i], K_c);
    wall.cake_m[i] += (resistance_s - before_s) * K_c;
    wall.cakeResistance_s[i] = resistance_s;
  }
  if (!(wall.cake_m[i] > 0)) return;
  let kept = i * hole.dz_m < input.bit_m ? work.keptInStream_frac : work.keptInRest_frac;
  if (head_m < 0) kept *= keptByInflow_frac(dt_s);
  wall.cake_m[i] *= kept;
  wall.cakeResistance_s[i] *= kept;
}

/**
 * Looks at cell i. head_m: fluid over ground water, m of water; 0 where the wall is dry. inTurn: the cake is brought up to date
 * (at most LOOK_TICKS seconds of it); else the cell was just cut. Leaves the conductance to count with until the next look: that
 * of the mean resistance between the cake now and the one that will be there then.
 */
export function lookAtCell(
  hole: HoleState,
  ground: WallGround,
  i: number,
  head_m: number,
  inTurn: boolean,
  input: LossInput,
  work: LossWork,
): void {
  const { wall } = hole;
  const { law } = work;
  readLaw(hole, ground, i, work);
  if (work.capture_frac[i] < 0) work.capture_frac[i] = capture_frac(ground.d15_mm[i]);
  const perFiltrate = work.making.perFiltrate_ratio * work.capture_frac[i];
  const strong_m = Math.max(LEAST_HEAD_m, Math.abs(head_m));
  const before_ms = wall.conductance_ms[i];
  let q_m2s = flowWithFront(hole, ground, i, head_m, before_ms * strong_m, work);
  if (!(before_ms > 0)) {
    for (let round = 1; round < FIRST_ROUNDS; round++) q_m2s = flowWithFront(hole, ground, i, head_m, q_m2s, work);
  }
  const around_m = 2 * Math.PI * law.radius_m;
  const rho_s = Math.max(0, (around_m * strong_m) / q_m2s - law.cake_s);
  if (inTurn) {
    const dt_s = Math.min(LOOK_TICKS * input.dt_s, wall.open_s[i]);
    tendCake(hole, i, head_m, rho_s, perFiltrate, dt_s, input, work);
  }
  const now_s = wall.cakeResistance_s[i];
  let later_s = now_s;
  if (head_m > 0 && perFiltrate > 0) {
    const K_c = work.making.conductivity_ms;
    const grown_s = grownResistance_s(now_s, rho_s, head_m, perFiltrate, K_c, LOOK_TICKS * input.dt_s);
    later_s = limitedResistance_s(now_s, grown_s, wall.cake_m[i], K_c);
  }
  wall.conductance_ms[i] = around_m / (rho_s + 0.5 * (now_s + later_s));
}
