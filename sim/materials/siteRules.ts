// Rules of thumb for where a well may stand. They are told beside the plan of the site; nothing is judged by them, local code decides.

/**
 * Latrine: 30 m and a floor 1.5 m above the water (Sphere 2018, from memory); older: 15 to 30 m (Wagner and Lanoix 1958, as
 * reviewed by Strauss 2000); California asks 45.7 m of a pit privy and 30.5 m of animals (Bulletin 74-90, section 8, via local codes).
 * Refuse: over 50 m, national rules vary (from memory). Overhead line: common practice, no source: three times
 * the height that the steel is raised to. Flood: casing .3 m above the ground (EPA-570/9-75-001 via a US Navy manual).
 */
export const SITE_RULE_m = {
  latrine: 30,
  latrineStrict: 45.7,
  latrineOld: 15,
  latrineFloorAboveWater: 1.5,
  animalPen: 30.5,
  refusePit: 50,
  overheadLine: 10,
  casingAboveGround: 0.3,
} as const;
