// A view made by hand: nine metres deep, five rods and a bit, in the middle of drilling coarse sand. No run behind it.
import type { CutawayView, ViewLevel } from '../../../src/cutaway/shown';

const CELLS = 160;
const CLASSES = 8;
const DZ_m = 0.25;
const GRAIN_m = [1e-6, 1.1e-5, 1.1e-4, 3.5e-4, 1.1e-3, 3.5e-3, 1.1e-2, 3.5e-2];
/** Falls of the classes in water, m/s, finest first. */
const SLIP_ms = [0, 0.0001, 0.008, 0.045, 0.15, 0.28, 0.45, 0.75];

export interface FixtureChoice {
  level?: ViewLevel;
  depth_m?: number;
  flowing?: boolean;
  bed_m?: number;
  washOut?: boolean;
  levelDown_m?: number;
  polymer_gL?: number;
  /** Skin on the sand, ground falling from the wall, fluid going into the ground. */
  cake_m?: number;
  falling?: boolean;
  seep_m2s?: number;
  /** Who is there and at what; the sky. */
  crew?: CutawayView['crew'];
  sky?: CutawayView['sky'];
  /** What is caught on the strainer. */
  blocked_frac?: number;
  /** One cell half as wide, one class twice as much, the pit so much lower, m. */
  halvedCell?: number;
  doubledClass?: number;
  pitDown_m?: number;
}

export function fixtureView(choice: FixtureChoice = {}): CutawayView {
  const { level = 'hole', depth_m = 8.35, flowing = true, bed_m = 0.05, washOut = true, levelDown_m = 0 } = choice;
  const rods = Math.ceil((depth_m + 0.3) / 1.5);
  const bit_m = flowing ? depth_m : depth_m - 0.4;
  const flow_m3s = flowing ? 0.0021 : 0;
  const hole = {
    dz_m: DZ_m,
    cells: Math.ceil(depth_m / DZ_m),
    depth_m,
    radius_m: new Float64Array(CELLS),
    up_ms: new Float64Array(CELLS),
    cake_m: new Float64Array(CELLS),
    falling: new Float64Array(CELLS),
    seep_m2s: level === 'open' || level === 'debrief' ? new Float64Array(CELLS) : null,
    solids_frac: new Float64Array(CLASSES * CELLS),
    stride: CELLS,
    slip_ms: new Float64Array(CLASSES * CELLS),
    level_m: levelDown_m,
    bed_m,
    bed_frac: Float64Array.from([0, 0.02, 0.1, 0.2, 0.38, 0.2, 0.1, 0]),
    polymer_gL: choice.polymer_gL ?? 0.4,
  };
  for (let i = 0; i < hole.cells; i++) {
    const at_m = (i + 0.5) * DZ_m;
    const wash = washOut ? 0.45 * Math.exp(-(((at_m - 5.2) / 0.7) ** 2)) : 0;
    hole.radius_m[i] = 0.05 * (1 + wash);
    if (at_m > 4.4) hole.cake_m[i] = choice.cake_m ?? 0;
    if (choice.falling && at_m > 4.9 && at_m < 5.7) hole.falling[i] = 1;
    if (hole.seep_m2s && at_m > 3.1) hole.seep_m2s[i] = (choice.seep_m2s ?? 0) * (at_m > 6.6 ? 1 : 0.1);
    hole.up_ms[i] = at_m < bit_m ? flow_m3s / (Math.PI * (hole.radius_m[i]! ** 2 - 0.01685 ** 2)) : 0;
    const load = 0.4 + 0.6 * (at_m / depth_m);
    const shares = [0.004, 0.01, 0.004, 0.007, 0.012, 0.006, 0.004 * Math.max(0, at_m / depth_m - 0.4), 0];
    for (let k = 0; k < CLASSES; k++) {
      hole.solids_frac[k * CELLS + i] = shares[k]! * load * (1 + wash);
      hole.slip_ms[k * CELLS + i] = SLIP_ms[k]!;
      if (k === choice.doubledClass) hole.solids_frac[k * CELLS + i]! *= 2;
    }
    if (i === choice.halvedCell) hole.radius_m[i]! /= 2;
  }
  const down_m = choice.pitDown_m ?? 0;
  const blind = level === 'blind';
  const open = level === 'open' || level === 'debrief';
  return {
    level,
    time_s: 4000,
    kit: {
      bit_m: 0.1,
      rodLength_m: 1.5,
      rodOutside_m: 0.0337,
      rodBore_m: 0.0272,
      nozzles: 2,
      turn_rpm: 90,
      grain_m: GRAIN_m,
    },
    crew: choice.crew ?? {
      workers: flowing
        ? [
            { post: 'handle', tool: 'none' },
            { post: 'winch', tool: 'none' },
          ]
        : [
            { post: 'idle', tool: 'none' },
            { post: 'idle', tool: 'none' },
          ],
      away: 0,
    },
    sky: choice.sky ?? 'dry',
    stem: {
      rods,
      rodsInRack: 6,
      bit_m,
      bottom_m: depth_m,
      turning: flowing,
      feed_frac: flowing ? 0.6 : 0,
      sinking_ms: flowing ? 0.004 : 0,
      stuck: false,
      tight: false,
      out: false,
    },
    pump: {
      primed: true,
      running: flowing,
      throttle_frac: flowing ? 0.8 : 0,
      dead: false,
      lost_frac: 0,
      flow_m3s,
      bore_ms: flow_m3s / 5.81e-4,
      jet_ms: flow_m3s / 1.57e-4,
    },
    returns: {
      share_frac: flowing ? 0.95 : 0,
      fines_frac: 0.012,
      grains_frac: Float64Array.from([0.004, 0.01, 0.003, 0.004, 0.003, 0, 0, 0]),
      colour: 'brown',
    },
    pit: {
      dug: true,
      settling: {
        area_m2: 0.6,
        depth_m: 0.8,
        level_m: 0.09 + down_m,
        deposit_m: 0.22,
        fines_frac: 0.011,
        sand_frac: 0.004,
      },
      suction: {
        area_m2: 0.6,
        depth_m: 0.8,
        level_m: 0.1 + down_m,
        deposit_m: 0.05,
        fines_frac: 0.01,
        sand_frac: 0.0008,
      },
      notch_m: 0.15,
      strainer_m: 0.25,
      strainerBlocked_frac: choice.blocked_frac ?? 0.2,
      polymer_gL: choice.polymer_gL ?? 0.4,
    },
    hole: blind ? null : hole,
    well: null,
    holeNumber: 1,
    layers: open
      ? [
          { top_m: 0, bottom_m: 0.6, kind: 'topsoil' },
          { top_m: 0.6, bottom_m: 1.9, kind: 'silt' },
          { top_m: 1.9, bottom_m: 4.4, kind: 'firmClay' },
          { top_m: 4.4, bottom_m: 6.6, kind: 'fineSand' },
          { top_m: 6.6, bottom_m: 9.2, kind: 'coarseSand' },
          { top_m: 9.2, bottom_m: 30, kind: 'coarseGravel' },
        ]
      : null,
    waterTable_m: open ? 3.1 : null,
    ownLog: [
      { from_m: 0, to_m: 1.5, kind: 'silt' },
      { from_m: 1.5, to_m: 4.5, kind: 'clay' },
      { from_m: 4.5, to_m: 6.5, kind: 'fineSand' },
      { from_m: 6.5, to_m: 7.5, kind: 'coarseSand' },
    ].filter((one) => one.to_m <= depth_m),
    samples_m: [1.5, 3, 4.5, 6, 7.5].filter((at_m) => at_m <= depth_m),
    neighbours: { top_m: 2.6, bottom_m: 4.1 },
  };
}
