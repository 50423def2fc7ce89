// Where the gear above ground stands, in pixels: pump on the bank, top of the stem, drive and swivel on it, tripod.
// Gear is drawn in units of gear_px, its own scale: it must be told apart on a small screen too.

import { halfOf, type Place } from './place';
import type { CutawayView } from './shown';
import { pipeTop_px } from './wellShape';

export interface GearShape {
  /** Left foot of the pump's skid. */
  pump_x: number;
  pump_y: number;
  inlet_x: number;
  inlet_y: number;
  outlet_x: number;
  outlet_y: number;
  /** Top of the uppermost rod. */
  stemTop_y: number;
  drive_px: number;
  swivel_px: number;
  gooseneck_x: number;
  gooseneck_y: number;
  hook_y: number;
  apex_y: number;
  legLeft_x: number;
  legRight_x: number;
  winch_x: number;
  winch_y: number;
}

export const PUMP_UNITS = 66;

/** Radius of the winch's drum, m: one turn pays out half a metre. */
const DRUM_m = 0.08;

const topOfStem_y = ({ stem, kit }: CutawayView, place: Place, bit_m: number): number =>
  place.ground_y + (bit_m - stem.rods * kit.rodLength_m) * place.depth_pxm;

/** Where the hook hangs when the stem is out: at the casing's upper end while that is on its way down, else over the mouth. */
function hung_y({ well }: CutawayView, place: Place): number {
  const idle_y = place.ground_y - 26 * place.gear_px;
  const casing = well?.casing;
  return casing && casing.look !== 'set' ? Math.min(idle_y, pipeTop_px(place, casing)) : idle_y;
}

export function gearShape(view: CutawayView, place: Place, bit_m: number): GearShape {
  const u = place.gear_px;
  const pump_x = place.pit_x - (PUMP_UNITS + 4) * u;
  const pump_y = place.ground_y - 2 * u;
  const { out } = view.stem;
  const stemTop_y = out ? hung_y(view, place) : topOfStem_y(view, place, bit_m);
  const drive_px = out ? 0 : 25 * u;
  const swivel_px = out ? 0 : 19 * u;
  const spread = Math.max(60 * u, halfOf(place, view.kit.bit_m / 2) * 1.75);
  const apex_y = place.ground_y - place.sky_px + 14 * u;
  const legRight_x = place.hole_x + spread * (place.compact ? 0.92 : 1.1);
  const down = 0.7;
  return {
    pump_x,
    pump_y,
    inlet_x: pump_x + 60 * u,
    inlet_y: pump_y - 17 * u,
    outlet_x: pump_x + 46 * u,
    outlet_y: pump_y - 32 * u,
    stemTop_y,
    drive_px,
    swivel_px,
    gooseneck_x: place.hole_x - 17 * u,
    gooseneck_y: stemTop_y - drive_px - swivel_px * 0.5,
    hook_y: stemTop_y - drive_px - swivel_px - 8 * u,
    apex_y,
    legLeft_x: place.hole_x - spread,
    legRight_x,
    winch_x: place.hole_x + (legRight_x - place.hole_x) * down + 3 * u,
    winch_y: apex_y + (place.ground_y - apex_y) * down,
  };
}

/** Where the crank's handle is: it stands where the paid-out rope has it. */
export function winchHandle(view: CutawayView, place: Place, bit_m: number): [x: number, y: number] {
  const { winch_x, winch_y } = gearShape(view, place, bit_m);
  const hung_m = view.stem.out ? (view.well?.casing?.top_m ?? -1) : bit_m;
  const reach = 14 * place.gear_px;
  return [winch_x + reach * Math.cos(hung_m / DRUM_m), winch_y + reach * Math.sin(hung_m / DRUM_m)];
}
