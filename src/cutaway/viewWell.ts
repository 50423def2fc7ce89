// The well under way for the view: casing, what stands round it, the water in it. In a blind lesson only what the crew has
// measured or counted.

import {
  CASINGS,
  FILL_NAMES,
  PACKS,
  PVC,
  shoe_m,
  type AnnulusState,
  type FillName,
  type PackName,
  type Run,
} from '$sim';
import type { ShownAnnulus, ShownCasing, ShownWell, ViewLevel } from './shown';

/** Silt and clay by volume in water of one NTU. ASSUMED for the eye: 1 mg/L a NTU, 2650 kg/m3. */
const FRAC_PER_NTU = 1 / 2.65e6;

const packOf = (fill: FillName): PackName | null => (fill in PACKS ? (fill as PackName) : null);
const GRAIN_m = FILL_NAMES.map((fill) => {
  const pack = packOf(fill);
  return pack ? PACKS[pack].d50_mm / 1000 : 0;
});

export function createShownWell(run: Run): ShownWell | null {
  if (!run.scenario.well) return null;
  return {
    casing: null,
    annulus: null,
    sounded_m: null,
    pack_L: 0,
    seal_L: 0,
    drawn_m3s: 0,
    drawnFines_frac: 0,
    inflow_m3s: 0,
    rest_m: null,
    head: null,
  };
}

export function fillWell(shown: ShownWell, run: Run, level: ViewLevel): void {
  const { completion, well } = run.state;
  const blind = level === 'blind';
  const open = level === 'open' || level === 'debrief';
  shown.casing = casingOf(run, blind);
  if (completion.annulus && !blind) {
    shown.annulus ??= createAnnulus(completion.annulus);
    shown.annulus.depth_m = run.state.hole.depth_m;
    fillAnnulus(
      shown.annulus,
      completion.annulus,
      CASINGS[completion.plan!.casing].outside_m,
      completion.casing.shoe_m,
    );
  } else shown.annulus = null;
  shown.sounded_m = completion.sounded?.top_m ?? null;
  shown.pack_L = 0;
  shown.seal_L = 0;
  for (const { fill, volume_m3 } of completion.poured) {
    if (packOf(fill)) shown.pack_L += volume_m3 * 1000;
    else shown.seal_L += volume_m3 * 1000;
  }
  shown.drawn_m3s = well ? Math.max(0, well.drawn_m3s) : 0;
  shown.drawnFines_frac = well ? well.turbidity_NTU * FRAC_PER_NTU : 0;
  shown.inflow_m3s = well && !blind ? well.ground_m3s : 0;
  shown.rest_m = well && open ? well.rest_m : null;
  shown.head = well?.headWorks ?? null;
}

function casingOf({ state }: Run, blind: boolean): ShownCasing | null {
  const { casing, plan } = state.completion;
  if (!plan || casing.look === 'none') return null;
  const pipe = CASINGS[plan.casing];
  const end_m = casing.shoe_m;
  const up_m = shoe_m(plan) - end_m;
  const slotted = plan.slotRows > 0 && plan.screenTo_m > plan.screenFrom_m;
  return {
    outside_m: pipe.outside_m,
    bore_m: pipe.outside_m - 2 * pipe.wall_m,
    look: casing.look,
    top_m: end_m - casing.length_m,
    shoe_m: end_m,
    // The screen is cut into the pipe: where the casing stands higher than planned, so does the screen.
    screen: slotted ? { from_m: plan.screenFrom_m - up_m, to_m: plan.screenTo_m - up_m } : null,
    slotWidth_m: plan.slotWidth_mm / 1000,
    slotSpacing_m: plan.slotSpacing_mm / 1000,
    cloth: plan.cloth !== 'none',
    cap: plan.cap,
    piece_m: PVC.piece_m,
    centralisers: plan.centralisers,
    snapped_m: casing.snapped && !blind ? plan.screenFrom_m - up_m : null,
    ...waterIn(state, blind),
  };
}

function waterIn(
  { completion: { casing }, well }: Run['state'],
  blind: boolean,
): Pick<ShownCasing, 'level_m' | 'dipped'> {
  if (blind) return { level_m: well?.dip?.level_m ?? null, dipped: true };
  if (well) return { level_m: well.level_m, dipped: false };
  return { level_m: casing.inside_m > 0 ? casing.shoe_m - casing.inside_m : null, dipped: false };
}

function createAnnulus({ cells, dz_m }: AnnulusState): ShownAnnulus {
  return {
    dz_m,
    cells: 0,
    depth_m: 0,
    fills: FILL_NAMES,
    rest_frac: new Float64Array(FILL_NAMES.length * cells),
    falling_frac: new Float64Array(FILL_NAMES.length * cells),
    stride: cells,
    bridged: new Float64Array(cells),
    clogged_frac: new Float64Array(cells),
    grain_m: GRAIN_m,
  };
}

/** Room of a cell between wall and casing, down to the bottom of the hole; below the casing's end the whole hole. */
function room_m3(annulus: AnnulusState, i: number, outside_m: number, shoe_m: number, depth_m: number): number {
  const radius_m = annulus.radius_m[i]!;
  const top_m = i * annulus.dz_m;
  const height_m = Math.max(0, Math.min(annulus.dz_m, depth_m - top_m));
  const cased_m = Math.max(0, Math.min(height_m, shoe_m - top_m));
  const steel_m2 = (outside_m * outside_m) / 4;
  return Math.max(1e-9, Math.PI * (radius_m * radius_m * height_m - steel_m2 * cased_m));
}

function fillAnnulus(shown: ShownAnnulus, annulus: AnnulusState, outside_m: number, shoe_m: number): void {
  shown.cells = annulus.used;
  for (let i = 0; i < annulus.used; i++) {
    const room = room_m3(annulus, i, outside_m, shoe_m, shown.depth_m);
    shown.bridged[i] = annulus.bridged[i]!;
    shown.clogged_frac[i] = annulus.clogged_frac[i]!;
    for (let f = 0; f < FILL_NAMES.length; f++) {
      const at = f * annulus.cells + i;
      shown.falling_frac[f * shown.stride + i] = annulus.falling_m3[at]! / room;
      shown.rest_frac[f * shown.stride + i] = (annulus.fill_m3[at]! - annulus.falling_m3[at]!) / room;
    }
  }
}
