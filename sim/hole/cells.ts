// Which cells are in use: they reach from the mouth to the top of the bed, the last one thinner or thicker than the rest.
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import { bedTop_m, type HoleState, type StemPlace } from './hole';
import type { HoleWork } from './work';

/** Grain volume fraction beyond which a cell packs: what is more goes to the bed. */
export const PACKED_frac = 0.55;

/** Number of cells for a column down to bottom_m: a rest thinner than half a cell belongs to the one above it. */
const cellsDownTo = (hole: HoleState, bottom_m: number): number =>
  Math.min(hole.cells, Math.max(1, Math.round(bottom_m / hole.dz_m)));

function fold(field: Float64Array, base: number, from: number, to: number): void {
  for (let i = to; i < from; i++) {
    field[base + to - 1] += field[base + i];
    field[base + i] = 0;
  }
}

function spread(field: Float64Array, base: number, from: number, to: number, hole: HoleState, bottom_m: number): void {
  const first = from - 1;
  const whole = field[base + first];
  if (whole === 0) return;
  const length_m = bottom_m - first * hole.dz_m;
  let left = whole;
  for (let i = first; i < to - 1; i++) {
    const part = (whole * hole.dz_m) / length_m;
    field[base + i] = part;
    left -= part;
  }
  field[base + to - 1] = left;
}

/**
 * Brings the cells in use into line with the top of the bed and returns its depth, m. Matter of cells that fell out of use
 * joins the last one; when cells are added the last one's matter is spread over them.
 */
export function fitCells(hole: HoleState, stem: StemPlace): number {
  const bottom_m = bedTop_m(hole, stem);
  const wanted = cellsDownTo(hole, bottom_m);
  const { used } = hole;
  if (wanted === used) return bottom_m;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const base = k * hole.cells;
    if (wanted < used) {
      fold(hole.solids_m3, base, used, wanted);
      fold(hole.moment_m4, base, used, wanted);
    } else {
      spread(hole.solids_m3, base, used, wanted, hole, bottom_m);
      spread(hole.moment_m4, base, used, wanted, hole, bottom_m);
    }
  }
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    if (wanted < used) fold(hole.dissolved_kg, s * hole.cells, used, wanted);
    else spread(hole.dissolved_kg, s * hole.cells, used, wanted, hole, bottom_m);
  }
  hole.used = wanted;
  return bottom_m;
}

/** Sends what one cell holds beyond its packed share to the bed, all classes alike. */
function clipCell(hole: HoleState, i: number, grains_m3: number, most_m3: number): void {
  const share = 1 - most_m3 / grains_m3;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const at = k * hole.cells + i;
    const sent = hole.solids_m3[at] * share;
    const moment = hole.moment_m4[at] * share;
    hole.solids_m3[at] -= sent;
    hole.moment_m4[at] -= moment;
    hole.bed_m3[k] += sent;
    hole.bedMoment_m4[k] += moment;
  }
}

/**
 * Sends what cells hold beyond their packed share to the bed; room and grains of every cell must be set. missing_m3: what the
 * cells at the top lack in fluid. Returns whether any was sent.
 */
export function clipToPacked(hole: HoleState, work: HoleWork, missing_m3: number): boolean {
  let clipped = false;
  let empty_m3 = missing_m3;
  const { volume_m3, grains_m3 } = work;
  for (let i = 0; i < hole.used; i++) {
    const room_m3 = Math.max(0, volume_m3[i] - empty_m3);
    empty_m3 = Math.max(0, empty_m3 - volume_m3[i]);
    const most_m3 = PACKED_frac * room_m3;
    if (grains_m3[i] <= most_m3) continue;
    clipped = true;
    clipCell(hole, i, grains_m3[i], most_m3);
  }
  return clipped;
}
