// The grounds of blind-well: river plain, delta, dune and terrace. Each has more than 4 m of medium sand and coarser below the lowest water and above
// 16 m; two begin with sand that only looks like enough.

import type { Lesson } from '../schema';

export const blindWellGround: Lesson['ground'] = {
  by: 'recipe',
  recipes: [
    // Thick clay on top, water under pressure below it.
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.6] },
        { kind: 'firmClay', thickness_m: [2.2, 3.2] },
        { kind: 'siltySand', thickness_m: [1.5, 2.5] },
        { kind: 'mediumSand', thickness_m: [2.5, 3.5] },
        { kind: 'coarseSand', thickness_m: [5, 6] },
        { kind: 'stiffClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [3, 4],
      swing_m: [0.8, 1.5],
      confinedRise_m: [0, 0.5],
    },
    // A first sand that is too thin and falls dry, clay, then the sand that lasts.
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.6] },
        { kind: 'silt', thickness_m: [1, 1.6] },
        { kind: 'mediumSand', thickness_m: [1.2, 1.8] },
        { kind: 'softClay', thickness_m: [0.8, 1.4] },
        { kind: 'fineSand', thickness_m: [1, 1.8] },
        { kind: 'mediumSand', thickness_m: [2, 3] },
        { kind: 'coarseSand', thickness_m: [5, 6] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [1.8, 3],
      swing_m: [1, 2],
    },
    // Fine for long, then coarse; salt under it.
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'fineSand', thickness_m: [4, 5] },
        { kind: 'mediumSand', thickness_m: [3, 4] },
        { kind: 'coarseSand', thickness_m: [8, 10] },
        { kind: 'fineSand', thickness_m: [15, 20] },
      ],
      waterTable_m: [1.5, 2.5],
      swing_m: [0.5, 1.2],
      salt: { brackish_m: [15.2, 16], brackish_gL: [2, 4], salt_m: [2, 4], salt_gL: [10, 20] },
    },
    // Sand from near the top, and water that falls far below it in the dry season.
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.6] },
        { kind: 'siltySand', thickness_m: [1.2, 2] },
        { kind: 'mediumSand', thickness_m: [4, 5] },
        { kind: 'coarseSand', thickness_m: [5, 6] },
        { kind: 'silt', thickness_m: [2, 3] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [2.5, 3.5],
      swing_m: [1.5, 2.5],
    },
  ],
};
