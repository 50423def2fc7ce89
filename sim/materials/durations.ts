// How long the acts of a crew take, in job seconds. All ASSUMED; a rod change of 90 s and a dose sprinkled in minutes
// are what practised crews need.

export const DURATION_s = {
  /** Priming takes a seeded time between these. */
  primeLeast: 60,
  primeMost: 180,
  /** Digging the pit, per m3 with its channel; backfilling a hole that is given up and carrying the gear on. */
  setOut_m3: 3600,
  backfill: 3600,
  addRod: 90,
  /** Without the pull itself. */
  removeRod: 60,
  catchSample: 20,
  /** Adding powder: dumped, and sprinkled per 100 g within the limits. */
  addDumped: 30,
  addSprinkled_100g: 30,
  addMost: 300,
  /** Bentonite and clay by the kilogram, crumbled and stirred in (a bag of 25 kg in ten minutes), up to addBagMost; chlorine is dissolved in a bucket first. */
  addBentonite_kg: 24,
  addClay_kg: 15,
  addBagMost: 600,
  addChlorine: 180,
  feelFluid: 5,
  readStick: 5,
  funnelTest: 60,
  clearStrainer: 40,
  setStrainer: 10,
  /** Plug and filter of the engine; cutting and clamping the hose; a ditch round the pit; one try with the hook on a line in the open hole. */
  mendEngine: 600,
  mendHose: 300,
  digDitch: 300,
  fishTool: 600,
  /** Per litre: from stock into the empty pit, carried in buckets (30 L/min), dug out. */
  fillPit_L: 0.5,
  addWater_L: 2,
  topUp_L: 2,
  digOut_L: 4,
  /** Glueing one casing joint, without the wait until it has set; sawing one slot; drawing a sleeve on, per metre of screen. */
  joinCasing: 300,
  sawSlot: 12,
  drawCloth_m: 300,
  /** Sounding the annulus with a weighted line; dipping the level in the casing; shovelling backfill, per litre; apron, drain and cap. */
  sound: 60,
  dipWell: 30,
  backfill_L: 2,
  headWorks: 14400,
} as const;
