// The finished well as state: the water in its casing, the ring round its screen, what has been done to it.
import type { CasingName } from '../materials/pipes';
import type { WellPumpName } from '../materials/wellPumps';
import type { RateSteps } from './rateSteps';
import type { ScreenRing } from './ring';
import type { WellTest } from './wellTest';
import type { Intake } from './yield';

/** Water brought to the surface, as a jar of it was. */
export interface Jar {
  tick: number;
  turbidity_NTU: number;
  sand_gL: number;
}

export interface HeadWorks {
  tick: number;
  apron_m: number;
  drain_m: number;
  cap: boolean;
  lift: WellPumpName;
}

/** Chlorine put in to disinfect: what it has worked so far. */
export interface Disinfection {
  tick: number;
  dose_gL: number;
  /** Seconds it has stood, and dose times time. */
  contact_s: number;
  ct_mgminL: number;
  /** Cloudiness of the water when it went in. */
  turbidity_NTU: number;
}

export interface WellState {
  /** The casing is set: the hole is a well from here on. */
  closed: boolean;
  /** Job second at which it was; the rates count from here. */
  closedTick: number;
  casing: CasingName;
  /** Section of the bore, and depth of the lower end of the water in it. */
  section_m2: number;
  bottom_m: number;
  /** Water in the casing, and how deep below ground it stands. */
  water_m3: number;
  level_m: number;
  /** Chlorine in the water of casing and ring, and how much water that is: what it was put into. */
  chlorine_kg: number;
  chlorineIn_m3: number;
  ring: ScreenRing;
  /** What ground, ring and slots give as they are now, and where the water stands at rest. Brought up to date while the well is worked. */
  intake: Intake;
  rest_m: number;
  /** What the ground has given, and gives now; what is being drawn now (negative: poured in). */
  rates: RateSteps;
  ground_m3s: number;
  drawn_m3s: number;
  /** The water has come to rest: nothing moves until somebody acts. */
  still: boolean;
  /** Somebody has drawn or poured since it last was. */
  stirred: boolean;
  /** Of the water that comes out, or last came out. */
  sand_gL: number;
  turbidity_NTU: number;
  /** Share of that sand in each size class. */
  sandClass_frac: Float64Array;
  /** Seconds of washing so far by method, in the order of DEVELOP_WORDS. */
  washed_s: Float64Array;
  /** Drawn out and poured in so far; sand that came out with it. */
  out_m3: number;
  in_m3: number;
  sand_kg: number;
  clearTold: boolean;
  brokenTold: boolean;
  jar: Jar | null;
  dip: { level_m: number; tick: number } | null;
  test: WellTest | null;
  disinfection: Disinfection | null;
  headWorks: HeadWorks | null;
}
