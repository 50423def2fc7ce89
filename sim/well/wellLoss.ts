// What the slots themselves cost: a loss that grows with the square of the flow.
import { GRAVITY_MS2 } from '../numeric/units';

/** Coefficient of flow of a sawn slot, a sharp-edged opening: .6 (handbook value, from memory). */
const SLOT_FLOW_COEFFICIENT = 0.6;

/**
 * Well loss coefficient of slots, C in C Q^2, s2/m5: 1/(2 g (.6 A)^2). A m2: open area that the grains leave free, above 0.
 * Source: orifice law. Worked value: .003 m2 -> 15731 (4.4 min2/m5).
 */
export function slotLoss_s2m5(openArea_m2: number): number {
  const jets_m2 = SLOT_FLOW_COEFFICIENT * openArea_m2;
  return 1 / (2 * GRAVITY_MS2 * jets_m2 * jets_m2);
}

/** Well loss, m: C Q^2. Source: Jacob 1947. Worked value: 1.45e-7 d2/m5 and 1306 m3/d -> .2473. */
export const wellLoss_m = (coefficient_s2m5: number, flow_m3s: number): number =>
  coefficient_s2m5 * flow_m3s * Math.abs(flow_m3s);
