// Grains on their way down the ring: how fast they fall, where they come to rest, what shakes them loose again.
import type { Rheology } from '../fluid/rheology';
import { dragLawOf } from '../hole/drag';
import { terminalVelocity_ms } from '../hole/fall';
import { CUTTINGS_SPHERICITY } from '../hole/slip';
import { freeRoom_m3, isFull, restsIn, type AnnulusState, type Standpipe } from './annulus';
import { FILL_COUNT } from './fills';

const law = dragLawOf(CUTTINGS_SPHERICITY);
/** The fluid in the ring is all but still, 1/s: as in a hole at rest. ASSUMED. */
const STILL_SHEAR_1s = 0.05;
/** Less than this of a fill on its way is none, m3. */
const NONE_m3 = 1e-12;

/** Fall of one piece through the fluid in the ring, m/s, by the drag law of the cuttings. Worked value: water 20 C, 1.41 mm quartz -> .1737. */
export const pieceFall_ms = (piece_mm: number, grain_kgm3: number, fluid: Rheology, density_kgm3: number): number =>
  terminalVelocity_ms(law, piece_mm / 1000, grain_kgm3, density_kgm3, fluid, STILL_SHEAR_1s);

/** Lays so much of a fill to rest from cell i upwards. Returns what found no room, m3. */
export function layDown(annulus: AnnulusState, f: number, i: number, volume_m3: number, pipe: Standpipe): number {
  let left_m3 = volume_m3;
  for (let j = i; j >= 0 && left_m3 > 0; j--) {
    const laid_m3 = Math.min(left_m3, freeRoom_m3(annulus, j, pipe));
    annulus.fill_m3[f * annulus.cells + j] += laid_m3;
    left_m3 -= laid_m3;
  }
  return left_m3;
}

/** One step of a fill in which it falls by share of a cell: it comes to rest or goes on into the next cell. */
function sink(annulus: AnnulusState, f: number, share: number, pipe: Standpipe): void {
  const { falling_m3, inFlight_m3, cells, used } = annulus;
  for (let i = used - 1; i >= 0; i--) {
    const at = f * cells + i;
    const here_m3 = falling_m3[at];
    if (here_m3 === 0) continue;
    if (!restsIn(annulus, i, pipe)) {
      const down_m3 = here_m3 < NONE_m3 ? here_m3 : here_m3 * share;
      falling_m3[at] -= down_m3;
      falling_m3[at + 1] += down_m3;
      continue;
    }
    const left_m3 = layDown(annulus, f, i, here_m3, pipe);
    falling_m3[at] = left_m3;
    inFlight_m3[f] -= here_m3 - left_m3;
  }
  let whole_m3 = 0;
  for (let i = 0; i < used; i++) whole_m3 += falling_m3[f * cells + i];
  inFlight_m3[f] = whole_m3;
}

/** All that is on its way down falls for dt_s. */
export function fallOn(annulus: AnnulusState, pipe: Standpipe, dt_s: number): void {
  for (let f = 0; f < FILL_COUNT; f++) {
    if (annulus.inFlight_m3[f] === 0) continue;
    const cells = (annulus.fall_ms[f] * dt_s) / annulus.dz_m;
    const steps = Math.max(1, Math.ceil(cells));
    for (let step = 0; step < steps; step++) sink(annulus, f, cells / steps, pipe);
  }
}

/** Lets go of so much of a fill in cell i. */
export function letFall(annulus: AnnulusState, f: number, i: number, volume_m3: number): void {
  annulus.falling_m3[f * annulus.cells + i] += volume_m3;
  annulus.inFlight_m3[f] += volume_m3;
}

/** Whether any bridge or unsupported fill hangs in the ring. */
const hangs = (annulus: AnnulusState, i: number, pipe: Standpipe): boolean =>
  i < annulus.used - 1 && !isFull(annulus, i + 1, pipe);

/**
 * Breaks all bridges: what stands over a void and is loose falls again. held: fills that stay where they are, set or swollen.
 * Returns whether anything came down.
 */
export function breakBridges(annulus: AnnulusState, pipe: Standpipe, held: (f: number) => boolean): boolean {
  let broken = false;
  for (let i = annulus.used - 1; i >= 0; i--) {
    if (!hangs(annulus, i, pipe)) continue;
    annulus.bridged[i] = 0;
    for (let f = 0; f < FILL_COUNT; f++) {
      const at = f * annulus.cells + i;
      const loose_m3 = annulus.fill_m3[at];
      if (loose_m3 === 0 || held(f)) continue;
      annulus.fill_m3[at] = 0;
      letFall(annulus, f, i, loose_m3);
      broken = true;
    }
  }
  return broken;
}
