// The Marsh funnel and its cup: the one field instrument for the fluid.

/** Geometry after Marsh 1931 and API RP 13B-1: cone 152 mm wide and 305 mm high, tube 50.8 mm long, bore 4.76 mm. */
export const FUNNEL = {
  top_m: 0.152,
  cone_m: 0.305,
  tube_m: 0.0508,
  bore_m: 0.00476,
  /** Filled to the screen, m3. */
  filled_m3: 1.5e-3,
} as const;

/** The cup catches one US quart, m3. */
export const FUNNEL_VOLUME_m3 = 946e-6;
