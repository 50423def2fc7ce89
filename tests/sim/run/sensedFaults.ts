// Whether a crew may sense what goes wrong: the fields of faults, and of the salt that only a tongue finds.

export const FAULTS_SENSED: readonly string[] = [
  // What is broken is seen, and who is there. Rain wets everybody; a ditch was dug by the crew. Steel knocks under the bit.
  'faults.engineDead',
  'faults.hoseLost_frac',
  'faults.rain_mmh',
  'faults.ditch',
  'faults.tool',
  'faults.helperBack_tick',
];

export const FAULTS_HIDDEN: readonly string[] = [
  'signs.salt_gL',
  // What is still to come, and for how long; that the powder is weak shows in the fluid only.
  'faults.due[]',
  'faults.left',
  'faults.rainEnd_tick',
  'faults.rainTold',
  'faults.powder_frac',
];
