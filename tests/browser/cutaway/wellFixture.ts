// A well made by hand in the fixture's hole: casing down, pack and seal round it, water drawn. No run behind it.
import { FILL_NAMES, PACKS, type FillName, type PackName } from '../../../sim';
import type { CutawayView, ShownAnnulus, ShownCasing, ShownWell } from '../../../src/cutaway/shown';

export interface WellChoice {
  look?: ShownCasing['look'];
  /** What stands round the pipe, from above: fill, upper and lower end, m. */
  fills?: readonly [fill: FillName, from_m: number, to_m: number][];
  falling?: boolean;
  clogged?: boolean;
  snapped?: boolean;
  /** Water is pumped and drawn down by so much, m. */
  drawn_m?: number;
  head?: boolean;
  sounded_m?: number | null;
}

const FILLS: WellChoice['fills'] = [
  ['bentonitePellets', 0.5, 3.5],
  ['pack07', 4.5, 8.25],
];
const REST_m = 3.1;

function annulusOf({ fills = FILLS, falling = false, clogged = false }: WellChoice, view: CutawayView): ShownAnnulus {
  const { dz_m, cells, radius_m } = view.hole!;
  const stride = radius_m.length;
  const rest_frac = new Float64Array(FILL_NAMES.length * stride);
  const falling_frac = new Float64Array(FILL_NAMES.length * stride);
  const bridged = new Float64Array(stride);
  const clogged_frac = new Float64Array(stride);
  for (const [fill, from_m, to_m] of fills ?? []) {
    const row = FILL_NAMES.indexOf(fill) * stride;
    for (let i = 0; i < cells; i++) {
      const inside_m = Math.min(to_m, (i + 1) * dz_m) - Math.max(from_m, i * dz_m);
      // The last cell ends with the hole.
      if (inside_m > 0) rest_frac[row + i]! += inside_m / Math.min(dz_m, view.hole!.depth_m - i * dz_m);
    }
  }
  const pack = FILL_NAMES.indexOf('pack07') * stride;
  if (falling) for (let i = 1; i < 12; i++) falling_frac[pack + i] = 0.04;
  if (clogged) for (let i = 18; i < 21; i++) clogged_frac[i] = 0.6;
  return {
    dz_m,
    cells,
    depth_m: view.hole!.depth_m,
    fills: FILL_NAMES,
    rest_frac,
    falling_frac,
    stride,
    bridged,
    clogged_frac,
    grain_m: FILL_NAMES.map((fill) => (fill in PACKS ? PACKS[fill as PackName].d50_mm / 1000 : 0)),
  };
}

/** The view with a well in it; the rods are out. */
export function withWell(view: CutawayView, choice: WellChoice = {}): CutawayView {
  const { look = 'set', snapped = false, drawn_m = 0, head = false, sounded_m = null } = choice;
  const blind = view.hole === null;
  const open = view.layers !== null;
  const shoe_m = look === 'hung' || look === 'floating' ? 5.5 : look === 'air' ? 0 : 8;
  const level_m = REST_m + drawn_m;
  const casing: ShownCasing = {
    outside_m: 0.063,
    bore_m: 0.057,
    look,
    top_m: shoe_m - 8.5,
    shoe_m,
    screen: { from_m: shoe_m - 3, to_m: shoe_m - 0.5 },
    slotWidth_m: 0.0005,
    slotSpacing_m: 0.01,
    cloth: true,
    cap: true,
    piece_m: 3,
    centralisers: 3,
    snapped_m: snapped && !blind ? shoe_m - 3 : null,
    level_m,
    dipped: blind,
  };
  const well: ShownWell = {
    casing,
    annulus: look === 'set' && !blind ? annulusOf(choice, view) : null,
    sounded_m,
    pack_L: 20,
    seal_L: 12,
    drawn_m3s: drawn_m > 0 ? 3e-4 : 0,
    drawnFines_frac: 1e-4,
    inflow_m3s: drawn_m > 0 && !blind ? 3e-4 : 0,
    rest_m: open ? REST_m : null,
    head: head ? { apron_m: 1, drain_m: 3, cap: true, lift: 'suction' } : null,
  };
  const stem = {
    ...view.stem,
    rods: 0,
    rodsInRack: 12,
    bit_m: 0,
    turning: false,
    sinking_ms: 0,
    feed_frac: 0,
    out: true,
  };
  return { ...view, stem, well };
}
