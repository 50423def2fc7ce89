// The slots of a screen: how much of the pipe they open, how much they leave of it, how fast water comes in.

/** What a formula on slots needs of a plan. */
export interface Slots {
  readonly slotWidth_mm: number;
  /** Slots side by side at one height, and the length of each round the pipe. */
  readonly slotRows: number;
  readonly slotArc_mm: number;
  /** From one height to the next, middle to middle. */
  readonly slotSpacing_mm: number;
}

/** Fastest entrance, m/s: .1 ft/s (TI 814-01, 1998; Montana ARM 36.21.652). */
export const ENTRANCE_LIMIT_ms = 0.03;
/** Share of the slots that sand and pack leave open: about half (Walton 1962, Driscoll 1986; from memory). */
const LEFT_OPEN_frac = 0.5;

/**
 * Walton 1962 via TI 814-01, p. 5-16: from this conductivity on, this entrance velocity (5000 ... 500 gpd/ft2; 10 ... 3 ft/min);
 * below the last, 2 ft/min.
 */
const WALTON_K_ms = [2.358e-3, 1.8864e-3, 1.4148e-3, 1.179e-3, 9.432e-4, 7.074e-4, 4.716e-4, 2.358e-4];
const WALTON_ENTRANCE_ms = [0.0508, 0.04572, 0.04064, 0.03556, 0.03048, 0.0254, 0.02032, 0.01524];
const WALTON_LEAST_ms = 0.01016;

/** Open area in a metre of screen, m2/m: k c w / s. Worked value: 2 rows of 40 x .8 mm every 10 mm -> .0064. */
export function openPerMetre_m(slots: Slots): number {
  const { slotRows, slotArc_mm, slotWidth_mm, slotSpacing_mm } = slots;
  return (slotRows * slotArc_mm * slotWidth_mm) / slotSpacing_mm / 1000;
}

/** Open area as a share of the pipe's surface: k c w / (s pi D). Worked value: the same on 63 mm -> .03234. */
export const openShare_frac = (slots: Slots, outside_m: number): number =>
  openPerMetre_m(slots) / (Math.PI * outside_m);

/** Share of the pipe's section left at the height of the slots: 1 - k c/(pi D), 0 where they meet. Worked value: 3 slots of 40 mm, 63 mm -> .3937. */
export function sectionLeft_frac(slots: Slots, outside_m: number): number {
  return Math.max(0, 1 - (slots.slotRows * slots.slotArc_mm) / 1000 / (Math.PI * outside_m));
}

/** Entrance velocity, m/s: Q/(open area); area above 0. Worked value: 17 L/min through .019792 m2 -> .01432. */
export const entrance_ms = (flow_m3s: number, openArea_m2: number): number => flow_m3s / openArea_m2;

/** Open area that sand and pack leave, m2: half of it (Walton 1962). Worked value: .02 -> .01. */
export const leftOpen_m2 = (openArea_m2: number): number => LEFT_OPEN_frac * openArea_m2;

/** Entrance velocity that ground of a conductivity allows, m/s: Walton's table by classes. Worked value: 1e-3 -> .03048. */
export function entranceFor_ms(K_ms: number): number {
  for (let i = 0; i < WALTON_K_ms.length; i++) if (K_ms >= WALTON_K_ms[i]) return WALTON_ENTRANCE_ms[i];
  return WALTON_LEAST_ms;
}

/** Shortest screen that keeps within the limit, m: Q/(.03 x open area a metre). Worked value: 17 L/min, 63 mm, 5 % -> .954. */
export const leastScreen_m = (flow_m3s: number, perMetre_m: number): number =>
  flow_m3s / (ENTRANCE_LIMIT_ms * perMetre_m);
