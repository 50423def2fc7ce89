// Drilling pumps and bits that a kit can be made of.

export const DRILLING_PUMP_NAMES = ['small', 'middle', 'large'] as const;
export type DrillingPumpName = (typeof DRILLING_PUMP_NAMES)[number];

export interface DrillingPump {
  /** At full throttle at sea level: head at no flow, flow at no head. */
  readonly shutOff_m: number;
  readonly free_m3s: number;
  /** Petrol it burns beside that of the small one. */
  readonly petrol_ratio: number;
}

/** ASSUMED: petrol centrifugal pumps with ports of 2, 2 and 3 inches; the small one is that of the demo kit. */
export const DRILLING_PUMPS: Readonly<Record<DrillingPumpName, DrillingPump>> = {
  small: { shutOff_m: 28, free_m3s: 0.006, petrol_ratio: 1 },
  middle: { shutOff_m: 32, free_m3s: 0.009, petrol_ratio: 1.5 },
  large: { shutOff_m: 30, free_m3s: 0.015, petrol_ratio: 2.2 },
};

/** Bits on offer, m. ASSUMED: usual sizes. */
export const BITS_m = [0.075, 0.1, 0.125, 0.15] as const;
