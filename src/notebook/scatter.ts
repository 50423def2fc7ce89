// The picture of a sample: grains laid at chance places, always the same for the same sample. Drawing only; nothing here enters the run.
import { SIZE_CLASSES } from '$sim';

/** Picture units per millimetre of ground: the tray and the grain card share it. */
export const SCALE_per_mm = 8;
export const PICTURE = { width: 200, height: 120 } as const;

/** Share of the picture that the grains cover when all of them can be seen one by one. */
const COVER_frac = 0.5;
/** A picture is a glance, not a count: so many grains of one class at most. */
const MOST_GRAINS = 420;
const LEAST_SHARE_frac = 0.02;

export interface GrainMarks {
  readonly classIndex: number;
  /** Diameter in picture units. */
  readonly size: number;
  /** Dots are drawn as round line ends, stones as closed outlines. */
  readonly form: 'dots' | 'stones';
  /** An SVG path holding every grain of the class. */
  readonly path: string;
  readonly count: number;
}

/** A repeatable row of numbers from 0 to below 1; an own small one, since a picture needs no better. */
export function drawingChance(seed: number): () => number {
  let state = (Math.imul(seed + 1, 0x9e3779b1) ^ 0x5bd1e995) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    let mixed = state ^ (state >>> 15);
    mixed = Math.imul(mixed, 0x2c1b3c6d);
    return ((mixed ^ (mixed >>> 13)) >>> 0) / 4294967296;
  };
}

/** Share of clay and silt, shown as a smear since no grain of it can be seen. */
export function smearOf(shares: readonly number[]): number {
  let smear = 0;
  SIZE_CLASSES.forEach((size, k) => {
    if (size.id === 'clay' || size.id === 'silt') smear += shares[k] ?? 0;
  });
  return Math.min(1, smear);
}

/** The grains of a sample from fine sand up, coarse ones last so that they lie on top. */
export function scatterGrains(sample: number, shares: readonly number[]): GrainMarks[] {
  const chance = drawingChance(sample);
  const marks: GrainMarks[] = [];
  SIZE_CLASSES.forEach((size, k) => {
    const share_frac = shares[k] ?? 0;
    if (size.id === 'clay' || size.id === 'silt' || share_frac < LEAST_SHARE_frac) return;
    const across = size.d_mm * SCALE_per_mm;
    const wanted = (COVER_frac * share_frac * PICTURE.width * PICTURE.height) / (0.785 * across * across);
    const count = Math.max(1, Math.min(Math.round(MOST_GRAINS * Math.sqrt(share_frac)), Math.round(wanted)));
    marks.push({ classIndex: k, count, ...laid(across, count, PICTURE, chance) });
  });
  return marks;
}

export const PATCH = { width: 56, height: 36 } as const;
const PATCH_COVER_frac = 0.4;

/** One patch of the grain card: a size class alone, at the scale of the samples. */
export function cardPatch(classIndex: number): Omit<GrainMarks, 'count'> {
  const across = SIZE_CLASSES[classIndex]!.d_mm * SCALE_per_mm;
  const wanted = (PATCH_COVER_frac * PATCH.width * PATCH.height) / (0.785 * across * across);
  const count = Math.max(1, Math.min(160, Math.round(wanted)));
  const alone = count === 1;
  const chance = drawingChance(100 + classIndex);
  return { classIndex, ...(alone ? single(across, chance) : laid(across, count, PATCH, chance)) };
}

interface Field {
  readonly width: number;
  readonly height: number;
}
type Laid = Pick<GrainMarks, 'size' | 'form' | 'path'>;

/** Grains of one size strewn over a field. */
function laid(across: number, count: number, field: Field, chance: () => number): Laid {
  const form = across < 6 ? 'dots' : 'stones';
  let path = '';
  for (let i = 0; i < count; i++) {
    const x = chance() * field.width;
    const y = chance() * field.height;
    path += form === 'dots' ? `M${round(x)} ${round(y)}h.01` : stone(x, y, across / 2, chance);
  }
  return { size: across, form, path };
}

/** A grain too large to be strewn lies in the middle of the patch. */
function single(across: number, chance: () => number): Laid {
  return { size: across, form: 'stones', path: stone(PATCH.width / 2, PATCH.height / 2, across / 2, chance) };
}

const CORNERS = 7;

/** A worn stone: a closed outline of a few unequal corners about a centre. */
function stone(x: number, y: number, radius: number, chance: () => number): string {
  const turn = chance() * 6.283;
  let path = '';
  for (let c = 0; c < CORNERS; c++) {
    const angle = turn + (c / CORNERS) * 6.283;
    const reach = radius * (0.82 + 0.3 * chance());
    path += `${c === 0 ? 'M' : 'L'}${round(x + reach * Math.cos(angle))} ${round(y + 0.85 * reach * Math.sin(angle))}`;
  }
  return `${path}Z`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
