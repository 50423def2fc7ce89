// The one transform of the drawing: from metres of the ground to pixels of the picture, with the camera's zoom and pan.
// The ruler and the own log follow the depth only, so that they stay in sight however far one looks aside.

import type { Composition } from './composition';

export interface Camera {
  zoom: number;
  panX_px: number;
  panY_px: number;
}

export interface Place extends Composition {
  zoom: number;
  /** Pixels per metre across the hole: depth_pxm times the widening. */
  across_pxm: number;
  /** Height of the page above ground. */
  sky_px: number;
}

/** The composition seen through the camera. */
export function placeOf(page: Composition, camera: Camera): Place {
  const z = camera.zoom;
  return {
    ...page,
    zoom: z,
    depth_pxm: page.depth_pxm * z,
    ground_y: page.ground_y * z + camera.panY_px,
    hole_x: page.hole_x * z + camera.panX_px,
    sky_px: page.ground_y * z,
    across_pxm: page.depth_pxm * page.widening * z,
    bank_pxm: page.bank_pxm * z,
    pit_x: page.pit_x * z + camera.panX_px,
    gear_px: page.gear_px * z,
  };
}

export const yOf = (place: Place, depth_m: number): number => place.ground_y + depth_m * place.depth_pxm;

export const depthAt = (place: Place, y_px: number): number => (y_px - place.ground_y) / place.depth_pxm;

/** Half the drawn width of something round with that radius, standing in the hole. */
export const halfOf = (place: Place, radius_m: number): number => radius_m * place.across_pxm;

/** Depth below the bank's rim, at the scale of pit and gear. */
export const bankY = (place: Place, below_m: number): number => place.ground_y + below_m * place.bank_pxm;

/** Where the page of ruler and log begins, over opened ground and in a close look. */
export const scalesLeft = (place: Place): number => place.axis_x - (place.compact ? 2.3 : 3.2) * place.text_px;
