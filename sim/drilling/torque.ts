// Torque on the stem.

/** Friction coefficient of the drag bit on the ground. ASSUMED. */
export const BIT_FRICTION = 0.4;

/** Torque of the stem turning free, N m, and of a bed round it, N m/m and N m/m2. ASSUMED. */
const FREE_Nm = 0.5;
const BED_Nm_m = 25;
const BED_Nm_m2 = 40;

/** Torque of the bit on the bottom, N m: mu W D / 3 (rubbing disc). Worked value: 250 N, .1 m -> 3.33. */
export const bitTorque_Nm = (weightOnBit_N: number, bit_m: number): number =>
  (BIT_FRICTION * weightOnBit_N * bit_m) / 3;

/** Torque of the stem turning in a bed bed_m high round it, N m: .5 + 25 h + 40 h^2. ASSUMED. Worked value: h .5 -> 23. */
export const bedTorque_Nm = (bed_m: number): number => FREE_Nm + BED_Nm_m * bed_m + BED_Nm_m2 * bed_m * bed_m;

/** Torque of a wall that grips the bit all round, N m: the grip's force at the bit's radius, pi D L .3 su D/2. Worked value: 500 N, .1 m -> 25. */
export const gripTorque_Nm = (grip_N: number, bit_m: number): number => (grip_N * bit_m) / 2;
