// What the drawing is given: plain figures that the view level allows, and nothing else. The drawing never sees a run.

/** open: ground and hole true. hole: hole true, ground closed. blind: only mouth, pit, gear and own log. debrief: all. */
export type ViewLevel = 'open' | 'hole' | 'blind' | 'debrief';

export interface ShownKit {
  bit_m: number;
  rodLength_m: number;
  rodOutside_m: number;
  rodBore_m: number;
  nozzles: number;
  turn_rpm: number;
  /** Representative grain size of each class, m, finest first. */
  grain_m: readonly number[];
}

export interface ShownStem {
  rods: number;
  rodsInRack: number;
  bit_m: number;
  /** Deepest depth reached, by the tally of rods, m. */
  bottom_m: number;
  turning: boolean;
  feed_frac: number;
  /** Speed of the bit, downwards positive, m/s. */
  sinking_ms: number;
  stuck: boolean;
  tight: boolean;
  /** All rods are out of the hole and off. */
  out: boolean;
}

export interface ShownPump {
  primed: boolean;
  /** Engine on: the throttle is open. */
  running: boolean;
  throttle_frac: number;
  /** The engine has died. */
  dead: boolean;
  /** Share of the flow that a torn hose throws on the ground; 0: whole. */
  lost_frac: number;
  flow_m3s: number;
  /** Mean speed in the bore of the stem, downwards positive, m/s. */
  bore_ms: number;
  /** Speed at the nozzles, m/s. */
  jet_ms: number;
}

export interface ShownReturns {
  /** Share of the pump's flow that comes out of the mouth, 0 to 1. */
  share_frac: number;
  /** Volume fraction of silt and clay at the mouth. */
  fines_frac: number;
  /** Volume fraction of each size class at the mouth. */
  grains_frac: Float64Array;
  colour: string;
}

export interface ShownChamber {
  area_m2: number;
  depth_m: number;
  /** Fluid's top below the rim, m. */
  level_m: number;
  /** Mean height of the deposit above the floor, m. */
  deposit_m: number;
  /** Volume fraction of silt and clay in the fluid. */
  fines_frac: number;
  /** Volume fraction of sand and coarser in the fluid. */
  sand_frac: number;
}

export interface ShownPit {
  /** Whether there is a pit yet. */
  dug: boolean;
  settling: ShownChamber;
  suction: ShownChamber;
  /** Depth of the notch between the chambers below the rim, m. */
  notch_m: number;
  /** Height of the strainer above the floor of the suction chamber, m. */
  strainer_m: number;
  strainerBlocked_frac: number;
  /** Soaked polymer, g/L. */
  polymer_gL: number;
}

/** Where somebody of the crew stands: by the thing that is worked at. */
export type Post =
  | 'handle'
  | 'winch'
  | 'mouth'
  | 'mouthBeyond'
  | 'pump'
  | 'settling'
  | 'suction'
  | 'stick'
  | 'strainer'
  | 'channel'
  | 'bank'
  | 'idle';

/** What is held there. */
export type Tool = 'none' | 'bucket' | 'shovel' | 'pole' | 'sieve' | 'funnel' | 'tape' | 'sack';

export interface ShownWorker {
  post: Post;
  tool: Tool;
}

/** The crew on the site, those at work first. */
export interface ShownCrew {
  workers: ShownWorker[];
  /** Those who are away. */
  away: number;
}

/** The true hole, cell by cell from the mouth down. Absent in a blind lesson. */
export interface ShownHole {
  dz_m: number;
  cells: number;
  depth_m: number;
  radius_m: Float64Array;
  /** Thickness of the skin on the wall, m. */
  cake_m: Float64Array;
  /** 1 where ground is falling from the wall now, else 0. */
  falling: Float64Array;
  /**
   * Fluid that goes into the ground from each metre of hole, m2/s; negative where ground water comes in. Null where the
   * ground is closed.
   */
  seep_m2s: Float64Array | null;
  /** Upward speed of the fluid round the stem (or in the open hole below the bit), m/s; negative where it sinks. */
  up_ms: Float64Array;
  /** Volume fraction of each size class in the fluid, class by class: [class * stride + cell]. */
  solids_frac: Float64Array;
  stride: number;
  /** How fast each class falls through the fluid, m/s, laid out like solids_frac. */
  slip_ms: Float64Array;
  /** Fluid's top below ground level, m. */
  level_m: number;
  /** Height of the bed of fallen cuttings on the bottom, m, and the share of it by class. */
  bed_m: number;
  bed_frac: Float64Array;
  polymer_gL: number;
}

export interface ShownLayer {
  top_m: number;
  bottom_m: number;
  kind: string;
}

export interface ShownOwnLayer {
  from_m: number;
  to_m: number;
  kind: string;
}

/** The casing: where it is by its length is known to the crew; how the hole holds it is not drawn in a blind lesson. */
export interface ShownCasing {
  outside_m: number;
  bore_m: number;
  look: 'air' | 'free' | 'hung' | 'floating' | 'landed' | 'set';
  /** Upper end (above ground: negative) and lower end, m. */
  top_m: number;
  shoe_m: number;
  /** Slotted part, m; null where the plan has none. */
  screen: { from_m: number; to_m: number } | null;
  slotWidth_m: number;
  slotSpacing_m: number;
  cloth: boolean;
  cap: boolean;
  /** Length of one piece, m: joints stand so far apart, counted from below. */
  piece_m: number;
  centralisers: number;
  /** Where it has broken, m; null where it is whole or nobody can see it. */
  snapped_m: number | null;
  /** Water inside: its top below ground, m; null where it is dry or not known. */
  level_m: number | null;
  /** It was dipped, not seen. */
  dipped: boolean;
}

/** What stands round the casing, cell by cell as in the hole. Absent in a blind lesson. */
export interface ShownAnnulus {
  dz_m: number;
  cells: number;
  /** Bottom of the hole, m: the last cell may reach below it. */
  depth_m: number;
  /** Kinds of fill in the order of their rows: packs, seals, ground. */
  fills: readonly string[];
  /** Share of the room of a cell that a fill takes at rest, and on its way down: [fill * stride + cell]. */
  rest_frac: Float64Array;
  falling_frac: Float64Array;
  stride: number;
  /** 1 where the fill of a cell rests on a bridge over a void. */
  bridged: Float64Array;
  /** Share of the pores of a cell's fill that cement has entered. */
  clogged_frac: Float64Array;
  /** Grain size of the packs, m, by row; 0 where the fill has no grains to show. */
  grain_m: readonly number[];
}

/** The well under way, as far as the view level allows. */
export interface ShownWell {
  casing: ShownCasing | null;
  annulus: ShownAnnulus | null;
  /** Last sounding, m; drawn where the fill itself is not. */
  sounded_m: number | null;
  /** Litres of pack and of seal put in so far, as the crew counted them. */
  pack_L: number;
  seal_L: number;
  /** Water that is brought out now, m3/s, and its silt and clay by volume. */
  drawn_m3s: number;
  drawnFines_frac: number;
  /** Water that comes in through the screen now, m3/s; 0 where nobody can see it. */
  inflow_m3s: number;
  /** Where the water stands at rest, m; only where the ground is open. */
  rest_m: number | null;
  head: { apron_m: number; drain_m: number; cap: boolean; lift: string } | null;
}

export interface CutawayView {
  level: ViewLevel;
  time_s: number;
  kit: ShownKit;
  crew: ShownCrew;
  sky: 'dry' | 'rain' | 'downpour';
  stem: ShownStem;
  pump: ShownPump;
  returns: ShownReturns;
  pit: ShownPit;
  hole: ShownHole | null;
  well: ShownWell | null;
  /** Number of the present hole, from 1: another hole stands in other ground. */
  holeNumber: number;
  /** The true layers; only where the ground is open. */
  layers: readonly ShownLayer[] | null;
  /** True level of the water in the ground, m; only where the ground is open. */
  waterTable_m: number | null;
  ownLog: readonly ShownOwnLayer[];
  /** Depths that the learner wrote on the samples, m. */
  samples_m: number[];
  /** Shallowest and deepest water level that neighbours tell of, m; null where nobody lives near. */
  neighbours: { top_m: number; bottom_m: number } | null;
}
