// What stands inside the stem: a delay line between pump and bit.
import { makeupInto, type FluidMakeup } from '../fluid/makeup';
import { BENTONITE, SALT, SOAKED, SUBSTANCE_COUNT, SWELLING } from '../fluid/substances';
import { CLASS_COUNT, CLAY_CLASS, FINE_CLASS_COUNT } from '../materials/sizes';
import { suspensionDensity_kgm3 } from './load';
import { emptyParcel, parcelVolume_m3, type Parcel } from './parcel';

/** Fluid column in `cells` slices of equal volume from the swivel down to the bit, plus the air in a fresh rod at its top. */
export interface StemFill {
  cells: number;
  water_m3: Float64Array;
  /** Class-major: class k, slice i at k*cells + i. */
  solids_m3: Float64Array;
  /** Substance-major: substance s, slice i at s*cells + i. */
  dissolved_kg: Float64Array;
  /** Air, m3. */
  void_m3: number;
}

/** Make-up and density of the fluid in the stem. */
export interface StemReading extends FluidMakeup {
  density_kgm3: number;
}

/** Slices: enough to keep a change of fluid sharp over the few seconds it takes to the bit. */
const SLICES = 16;

/** A stem full of air. volume_m3: of its bore. */
export function createStemFill(volume_m3: number): StemFill {
  return {
    cells: SLICES,
    water_m3: new Float64Array(SLICES),
    solids_m3: new Float64Array(CLASS_COUNT * SLICES),
    dissolved_kg: new Float64Array(SUBSTANCE_COUNT * SLICES),
    void_m3: volume_m3,
  };
}

/** Fluid in the stem, m3. */
export function stemVolume_m3(fill: StemFill): number {
  let volume = 0;
  for (let i = 0; i < fill.cells; i++) volume += fill.water_m3[i];
  for (let j = 0; j < fill.solids_m3.length; j++) volume += fill.solids_m3[j];
  return volume;
}

// How the column is cut anew, worked out once for all it carries: each piece is a share of one part of the column as it was (0 what
// comes in, then the slices) that goes to one slice, or out. Scratch of one push.
const OUT = SLICES;
const MOST_PIECES = 2 * SLICES + 3;
const pieceFrom = new Int32Array(MOST_PIECES);
const pieceTo = new Int32Array(MOST_PIECES);
const pieceShare = new Float64Array(MOST_PIECES);
const moved = new Float64Array(SLICES + 1);
let pieces = 0;

function addPiece(from: number, to: number, share: number): void {
  pieceFrom[pieces] = from;
  pieceTo[pieces] = to;
  pieceShare[pieces++] = share;
}

/** Cuts the column, with what comes in on top, into slices of equal volume that hold kept_m3 in all; what lies beyond goes out. */
function cutColumn(fill: StemFill, incoming_m3: number, kept_m3: number): void {
  const { cells, water_m3, solids_m3 } = fill;
  const slice_m3 = kept_m3 / cells;
  let from_m3 = 0;
  pieces = 0;
  for (let j = 0; j <= cells; j++) {
    let length_m3 = incoming_m3;
    if (j > 0) {
      length_m3 = water_m3[j - 1];
      for (let k = 0; k < CLASS_COUNT; k++) length_m3 += solids_m3[k * cells + j - 1];
    }
    let done = 0;
    if (slice_m3 > 0) {
      const first = Math.floor(from_m3 / slice_m3);
      if (!(length_m3 > 0)) {
        // A slice without volume that still holds something: into the slice where it is, or out.
        if (from_m3 < kept_m3) {
          addPiece(j, Math.min(cells - 1, first), 1);
          done = 1;
        }
      } else {
        for (let i = Math.min(cells, first); i < cells && done < 1; i++) {
          const next = Math.max(done, Math.min(1, ((i + 1) * slice_m3 - from_m3) / length_m3));
          if (next > done) addPiece(j, i, next - done);
          done = next;
        }
      }
    }
    if (done < 1) addPiece(j, OUT, 1 - done);
    from_m3 += length_m3;
  }
}

/** Moves one field into the pieces cut; returns what goes out. */
function shift(field: Float64Array, base: number, incoming: number, slices: number): number {
  for (let i = 0; i <= OUT; i++) moved[i] = 0;
  for (let p = 0; p < pieces; p++) {
    const from = pieceFrom[p];
    moved[pieceTo[p]] += (from === 0 ? incoming : field[base + from - 1]) * pieceShare[p];
  }
  for (let i = 0; i < slices; i++) field[base + i] = moved[i];
  return moved[OUT];
}

/** Nothing of a field in any slice nor in what comes in: there is nothing to move. */
function isAbsent(field: Float64Array, base: number, incoming: number, slices: number): boolean {
  if (incoming !== 0) return false;
  for (let i = 0; i < slices; i++) if (field[base + i] !== 0) return false;
  return true;
}

/** Lays the column (with what comes in on top) into slices that hold kept_m3 in all; the rest leaves at the bit. */
function settleInto(fill: StemFill, inflow: Parcel | null, kept_m3: number, outflow: Parcel): void {
  const n = fill.cells;
  cutColumn(fill, inflow === null ? 0 : parcelVolume_m3(inflow), kept_m3);
  outflow.water_m3 = shift(fill.water_m3, 0, inflow === null ? 0 : inflow.water_m3, n);
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    const incoming_kg = inflow === null ? 0 : inflow.dissolved_kg[s];
    if (isAbsent(fill.dissolved_kg, s * n, incoming_kg, n)) continue;
    outflow.dissolved_kg[s] = shift(fill.dissolved_kg, s * n, incoming_kg, n);
  }
  for (let k = 0; k < CLASS_COUNT; k++) {
    const incoming_m3 = inflow === null ? 0 : inflow.solids_m3[k];
    if (isAbsent(fill.solids_m3, k * n, incoming_m3, n)) continue;
    outflow.solids_m3[k] = shift(fill.solids_m3, k * n, incoming_m3, n);
  }
}

/** Pushes inflow in at the top; outflow is set to what leaves at the bit. Air gives way first and is not followed. */
export function pushThroughStem(fill: StemFill, inflow: Parcel, outflow: Parcel): void {
  emptyParcel(outflow);
  const incoming_m3 = parcelVolume_m3(inflow);
  if (incoming_m3 <= 0) return;
  const filled_m3 = Math.min(fill.void_m3, incoming_m3);
  const kept_m3 = stemVolume_m3(fill) + filled_m3;
  fill.void_m3 -= filled_m3;
  settleInto(fill, inflow, kept_m3, outflow);
}

/** A rod is screwed on at the top: its bore holds air. */
export function lengthenStem(fill: StemFill, volume_m3: number): void {
  fill.void_m3 += volume_m3;
}

/** A rod comes off: air goes first, then fluid leaves; outflow is set to it. */
export function shortenStem(fill: StemFill, volume_m3: number, outflow: Parcel): void {
  emptyParcel(outflow);
  const air_m3 = Math.min(fill.void_m3, volume_m3);
  fill.void_m3 -= air_m3;
  if (volume_m3 <= air_m3) return;
  settleInto(fill, null, Math.max(0, stemVolume_m3(fill) - (volume_m3 - air_m3)), outflow);
}

function carried_kg(fill: StemFill, s: number): number {
  let total = 0;
  for (let i = 0; i < fill.cells; i++) total += fill.dissolved_kg[s * fill.cells + i];
  return total;
}

export function readStem(fill: StemFill, out: StemReading): void {
  let water = 0;
  for (let i = 0; i < fill.cells; i++) water += fill.water_m3[i];
  let grains = 0;
  let fines = 0;
  let clay = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    let ofClass = 0;
    for (let i = 0; i < fill.cells; i++) ofClass += fill.solids_m3[k * fill.cells + i];
    grains += ofClass;
    if (k < FINE_CLASS_COUNT) fines += ofClass;
    if (k === CLAY_CLASS) clay = ofClass;
  }
  const volume = water + grains;
  makeupInto(
    out,
    carried_kg(fill, SOAKED),
    carried_kg(fill, BENTONITE),
    carried_kg(fill, SWELLING),
    carried_kg(fill, SALT),
    water,
    volume > 0 ? fines / volume : 0,
    volume > 0 ? clay / volume : 0,
  );
  out.density_kgm3 = suspensionDensity_kgm3(volume > 0 ? grains / volume : 0, out.bentonite_gL, out.salt_gL);
}
