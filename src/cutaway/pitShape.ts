// The pit seen from the side, in pixels: both chambers, the wall between them with its notch, and the channel.
// Areas are true to the state: a chamber is drawn as long as the side of a square of its area.

import { CHAMBER_GAP_m } from './composition';
import { bankY, halfOf, type Place } from './place';
import type { CutawayView, ShownChamber } from './shown';

export interface ChamberShape {
  left: number;
  right: number;
  rim: number;
  floor: number;
  fluid: number;
  deposit: number;
  /** How much narrower the floor is than the rim, at each side. */
  slant: number;
}

export interface PitShape {
  suction: ChamberShape;
  settling: ChamberShape;
  notch: number;
  channelRight: number;
  channelFloorRight: number;
  channelFloorLeft: number;
  strainer_x: number;
  strainer_y: number;
}

export const sideLength_m = (chamber: ShownChamber): number => Math.sqrt(chamber.area_m2);

function chamberShape(place: Place, chamber: ShownChamber, left: number): ChamberShape {
  const length_px = sideLength_m(chamber) * place.bank_pxm;
  const floor = bankY(place, chamber.depth_m);
  return {
    left,
    right: left + length_px,
    rim: place.ground_y,
    floor,
    fluid: Math.min(floor, bankY(place, chamber.level_m)),
    deposit: floor - Math.min(chamber.depth_m, chamber.deposit_m) * place.bank_pxm,
    slant: length_px * 0.07,
  };
}

/** Left (or right) wall of a chamber at a height: walls lean, the mean length is the true one. */
export function wallX(shape: ChamberShape, y: number, side: -1 | 1): number {
  const down = Math.max(0, Math.min(1, (y - shape.rim) / Math.max(1, shape.floor - shape.rim)));
  const inset = shape.slant * (2 * down - 1);
  return side < 0 ? shape.left + inset : shape.right - inset;
}

export function pitShape(view: CutawayView, place: Place): PitShape {
  const { pit, kit } = view;
  const suction = chamberShape(place, pit.suction, place.pit_x);
  const settling = chamberShape(place, pit.settling, suction.right + CHAMBER_GAP_m * place.bank_pxm);
  return {
    suction,
    settling,
    notch: bankY(place, pit.notch_m),
    channelRight: place.hole_x - halfOf(place, kit.bit_m / 2),
    // The sill at the mouth stands at the full level of the pit: nothing runs back into the hole.
    channelFloorLeft: bankY(place, 0.115),
    channelFloorRight: bankY(place, 0.018),
    strainer_x: suction.left + (suction.right - suction.left) * 0.44,
    strainer_y: suction.floor - pit.strainer_m * place.bank_pxm,
  };
}
