// Torque on the stem.

/** Torque that a bed of this height asks for, and the turning stem itself, N m. */
export function bedTorque_Nm(_bed_m: number): number {
  throw new Error('not filled in yet');
}
