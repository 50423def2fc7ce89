// What a crew reads off the finished well: the jar, the dipper, the test sheet, the smell of chlorine.

import type { WellPumpName } from '../materials/wellPumps';
import type { TestRow, TestStop } from '../well/wellTest';
import type { Run } from './run';
import type { Amount } from './senses';

export type JarLook = 'none' | 'clear' | 'hazy' | 'cloudy' | 'muddy';

export interface TestReading {
  readonly lift: WellPumpName;
  readonly rows: readonly TestRow[];
  readonly static_m: number;
  readonly lowest_m: number;
  /** null: not read yet. */
  readonly recovered_m: number | null;
  readonly refusal: TestStop | null;
  readonly over: boolean;
}

export interface WellWater {
  /** The last water that was brought out. */
  readonly water: { readonly jar: JarLook; readonly sand: Amount; readonly time_s: number } | null;
  readonly dip: { readonly level_m: number; readonly time_s: number } | null;
  readonly test: TestReading | null;
  readonly smellsOfChlorine: boolean;
  readonly headWorks: {
    readonly apron_m: number;
    readonly drain_m: number;
    readonly cap: boolean;
    readonly lift: WellPumpName;
  } | null;
}

/** Cloudiness from which a jar looks hazy, cloudy, muddy, NTU: seen from about 4 (WHO 2017, from memory), the others ASSUMED. */
const JAR_NTU = [4, 20, 200];
/** Sand in a litre that is few, some, many grains at the bottom of the jar, g/L. ASSUMED: 5 mg is a pinch that can be counted. */
const SAND_gL = [0.002, 0.02, 0.2];
/** Free chlorine that is smelt, g/L. ASSUMED: about 1 mg/L. */
const SMELT_gL = 0.001;

function jarLook(turbidity_NTU: number): JarLook {
  const [hazy, cloudy, muddy] = JAR_NTU;
  return turbidity_NTU < hazy ? 'clear' : turbidity_NTU < cloudy ? 'hazy' : turbidity_NTU < muddy ? 'cloudy' : 'muddy';
}

function sandLook(sand_gL: number): Amount {
  const [few, some, many] = SAND_gL;
  return sand_gL < few ? 'none' : sand_gL < some ? 'few' : sand_gL < many ? 'some' : 'many';
}

const NOTHING: WellWater = { water: null, dip: null, test: null, smellsOfChlorine: false, headWorks: null };

/** The water half of what is sensed of a well; all of it nothing before the casing is set. */
export function wellWaterOf(run: Run): WellWater {
  const { well } = run.state;
  if (!well) return NOTHING;
  const { jar, dip, test, headWorks } = well;
  return {
    water: jar && { jar: jarLook(jar.turbidity_NTU), sand: sandLook(jar.sand_gL), time_s: jar.tick },
    dip: dip && { level_m: dip.level_m, time_s: dip.tick },
    test: test && {
      lift: test.lift,
      rows: test.rows,
      static_m: test.static_m,
      lowest_m: test.lowest_m,
      recovered_m: test.recovered_m,
      refusal: test.refusal,
      over: test.over,
    },
    smellsOfChlorine: well.water_m3 > 0 && well.chlorine_kg / well.water_m3 > SMELT_gL,
    headWorks: headWorks && {
      apron_m: headWorks.apron_m,
      drain_m: headWorks.drain_m,
      cap: headWorks.cap,
      lift: headWorks.lift,
    },
  };
}
