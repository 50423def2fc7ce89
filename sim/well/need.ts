// How many people a well serves.

/** People planned for one hand pump, its flow (17 L/min), and the hours of a day it is worked (Sphere, as quoted). */
export const PEOPLE_A_PUMP = 500;
export const HAND_PUMP_M3S = 17 / 60000;
export const PUMPED_A_DAY_s = 8 * 3600;
/** Water for one person and day, m3: 15 L (Sphere 2004/2011). */
export const NEED_m3 = 15 / 1000;

/** Water for each of so many people in a day, m3: Q t/N. N above 0. Worked value: 17 L/min, 8 h, 500 -> .01632. */
export const waterEach_m3 = (flow_m3s: number, pumped_s: number, people: number): number =>
  (flow_m3s * pumped_s) / people;

/** Time to give each of so many people its need, s: N w/Q; Infinity without flow. Worked value: 500, 15 L, 17 L/min -> 26471 (7.35 h). */
export const servingTime_s = (people: number, need_m3: number, flow_m3s: number): number =>
  flow_m3s > 0 ? (people * need_m3) / flow_m3s : Infinity;

/** People who get their need in the hours of pumping, whole ones: Q t/w. Worked value: 17 L/min, 8 h, 15 L -> 544. */
export const peopleServed = (flow_m3s: number, pumped_s: number, need_m3: number): number =>
  Math.floor((Math.max(0, flow_m3s) * pumped_s) / need_m3);
