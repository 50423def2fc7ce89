// How many people a well serves.

/** People planned for one hand pump, its flow (17 L/min), and the hours of a day it is worked (Sphere, as quoted). */
export const PEOPLE_A_PUMP = 500;
export const HAND_PUMP_M3S = 17 / 60000;
export const PUMPED_A_DAY_s = 8 * 3600;
/** Water for one person and day, m3: 15 L (Sphere 2004/2011). */
export const NEED_m3 = 15 / 1000;

/** People who get their need in the hours of pumping, whole ones: Q t/w. Worked value: 17 L/min, 8 h, 15 L -> 544. */
export const peopleServed = (flow_m3s: number, pumped_s: number, need_m3: number): number =>
  Math.floor((Math.max(0, flow_m3s) * pumped_s) / need_m3);
