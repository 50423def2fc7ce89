// The grounds of open-well. Medium and coarse sand always go on for more than 4 m below the lowest water and above 15 m; clay, silt or salt
// water lies under them, for those who drill on.

import type { Lesson } from '../schema';

export const openWellGround: Lesson['ground'] = {
  by: 'recipe',
  recipes: [
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.6] },
        { kind: 'silt', thickness_m: [1, 1.8] },
        { kind: 'fineSand', thickness_m: [2.5, 3.5] },
        { kind: 'mediumSand', thickness_m: [2, 3] },
        { kind: 'coarseSand', thickness_m: [4.5, 6] },
        { kind: 'firmClay', thickness_m: [3, 5] },
        { kind: 'fineSand', thickness_m: [15, 20] },
      ],
      waterTable_m: [2, 3.5],
      swing_m: [1, 2],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.6] },
        { kind: 'firmClay', thickness_m: [1.2, 2] },
        { kind: 'siltySand', thickness_m: [1.5, 2.5] },
        { kind: 'mediumSand', thickness_m: [2.5, 3.5] },
        { kind: 'coarseSand', thickness_m: [4.5, 5.5] },
        { kind: 'silt', thickness_m: [2, 3] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [2, 3.5],
      swing_m: [1, 2],
      confinedRise_m: [0, 0.5],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.6] },
        { kind: 'silt', thickness_m: [1.2, 1.8] },
        { kind: 'siltySand', thickness_m: [1, 1.6] },
        { kind: 'softClay', thickness_m: [0.4, 0.8] },
        { kind: 'fineSand', thickness_m: [1.5, 2.5] },
        { kind: 'mediumSand', thickness_m: [1.5, 2.5] },
        { kind: 'coarseSand', thickness_m: [4, 5] },
        { kind: 'stiffClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [1.5, 3],
      swing_m: [1, 2],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.6] },
        { kind: 'siltySand', thickness_m: [1.5, 2.5] },
        { kind: 'fineSand', thickness_m: [2, 3] },
        { kind: 'mediumSand', thickness_m: [3, 4] },
        { kind: 'coarseSand', thickness_m: [9, 11] },
        { kind: 'fineSand', thickness_m: [15, 20] },
      ],
      waterTable_m: [1.5, 3],
      swing_m: [1, 2],
      salt: { brackish_m: [15.2, 16], brackish_gL: [2, 4], salt_m: [2, 4], salt_gL: [10, 20] },
    },
  ],
};
