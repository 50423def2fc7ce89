// The centrifugal pump.

/**
 * Head of the pump, m of the fluid pumped: H0 k^2 (1 - (Q/(k Q0))^2) = H0 (k^2 - (Q/Q0)^2).
 * shutOff_m H0 and free_m3s Q0 at full speed; speed_frac k, 0-1 (affinity: flow as speed, head as speed squared);
 * below zero where the flow is more than the pump can give. Worked value: 32 m, 600 L/min, k 1, 300 L/min -> 24.0.
 */
export function pumpHead_m(shutOff_m: number, free_m3s: number, speed_frac: number, flow_m3s: number): number {
  const share = flow_m3s / free_m3s;
  return shutOff_m * (speed_frac * speed_frac - share * share);
}
