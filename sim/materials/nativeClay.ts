// Clay of the site itself, dug, crumbled and stirred in, or cut by the bit: the cheapest mud. All ASSUMED.

export const NATIVE_CLAY = {
  /** Share of its grains that is clay; the rest is silt. A fat field clay. */
  clay_frac: 0.6,
  /** Share of the solids in the filter cake of clay and silt, by volume: a void ratio of 1. */
  cakeSolids_frac: 0.5,
  /** Hydraulic conductivity of that cake: between silt (2e-7) and firm clay (5e-10). */
  cakeConductivity_ms: 1e-8,
  /** Clay clots in the water: a grain thickens like so many times its volume, as its sediment stands 5 to 10 times as high (textbooks, from memory). */
  floc_ratio: 5,
  /** Volume fraction of suspended clay and silt that a crew calls a good clay mud: about 1080 kg/m3. */
  working_frac: 0.05,
} as const;

/** Share of the clay that stays in lumps when it is thrown in by the bucket; lumps sink, and stirring works them loose. ASSUMED. */
export const CLAY_LUMPS_WHEN_DUMPED_frac = 0.6;
