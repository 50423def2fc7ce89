// The two ways of drilling with care, as plain figures. Both watch and both keep the hole; they differ where the trade leaves a choice. Rules of thumb of the crews, ASSUMED.

export type CareName = 'careful' | 'other';

export interface CareStyle {
  /** Thickens the first water with bentonite where there is some; else powder, so much to begin with, g/L. */
  readonly bentonite: boolean;
  readonly start_gL: number;
  /** Lets the first fluid soak before it drills, s; 0: drills on meanwhile. */
  readonly soak_s: number;
  /** Feels the fluid between two fingers, or counts the funnel; every so many rods. */
  readonly test: 'feelFluid' | 'funnelTest';
  readonly rodsBetween: number;
  /** Where a screen is to be set a sample this often, m; else one a rod, with so much of it still to go, m. */
  readonly sampleEvery_m: number;
  readonly sampleLeft_m: number;
  /** Labels by where the bit was when the grains left it, or by what it has sunk since at its present rate. */
  readonly label: 'trail' | 'rate';
  /** Weight on by feel, a little more each time; or by what the stem sounds like. */
  readonly feeds: 'byFeel' | 'byEar';
  /** Lifted so far before a stop, m; the returns clean for so long, s. */
  readonly lift_m: number;
  readonly cleanFor_s: number;
  /** Poured down a hole that has sunk, L. */
  readonly bucket_L: number;
}

export const CARES: Readonly<Record<CareName, CareStyle>> = {
  careful: {
    bentonite: false,
    // Rather more than half the working dose: it lifts small stones, and the pit still drops its sand.
    start_gL: 0.75,
    soak_s: 0,
    test: 'feelFluid',
    rodsBetween: 4,
    sampleEvery_m: 0.6,
    sampleLeft_m: 0.5,
    label: 'trail',
    feeds: 'byFeel',
    lift_m: 0.25,
    cleanFor_s: 15,
    bucket_L: 10,
  },
  other: {
    bentonite: true,
    start_gL: 1,
    soak_s: 1500,
    test: 'funnelTest',
    rodsBetween: 3,
    sampleEvery_m: 0.75,
    sampleLeft_m: 0.8,
    label: 'rate',
    feeds: 'byEar',
    lift_m: 0.4,
    cleanFor_s: 10,
    bucket_L: 20,
  },
};
