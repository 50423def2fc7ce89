// Zoom, pan and "follow the bit": three numbers, kept so that the page always fills the picture.

import type { Composition } from './composition';
import type { Camera } from './place';

export const MOST_ZOOM = 10;

export interface CameraDesk extends Camera {
  follow: boolean;
}

export function createCamera(): CameraDesk {
  return { zoom: 1, panX_px: 0, panY_px: 0, follow: true };
}

function keepInside(camera: CameraDesk, page: Composition): void {
  const slackX_px = page.width_px * (camera.zoom - 1);
  const slackY_px = page.height_px * (camera.zoom - 1);
  camera.panX_px = Math.min(0, Math.max(-slackX_px, camera.panX_px));
  camera.panY_px = Math.min(0, Math.max(-slackY_px, camera.panY_px));
}

/** Zooms by a factor; the point (x, y) of the picture stays where it is. */
export function zoomCamera(camera: CameraDesk, page: Composition, factor: number, x_px: number, y_px: number): void {
  const zoom = Math.min(MOST_ZOOM, Math.max(1, camera.zoom * factor));
  const ratio = zoom / camera.zoom;
  camera.panX_px = x_px - (x_px - camera.panX_px) * ratio;
  camera.panY_px = y_px - (y_px - camera.panY_px) * ratio;
  camera.zoom = zoom;
  keepInside(camera, page);
}

export function panCamera(camera: CameraDesk, page: Composition, dx_px: number, dy_px: number): void {
  camera.panX_px += dx_px;
  camera.panY_px += dy_px;
  keepInside(camera, page);
}

/** While it follows, the bit stays two thirds down the picture and the hole in the middle of what the columns leave. */
export function followBit(camera: CameraDesk, page: Composition, bit_m: number): void {
  if (!camera.follow || camera.zoom === 1) return;
  camera.panX_px = page.axis_x * 0.5 - page.hole_x * camera.zoom;
  camera.panY_px = page.height_px * 0.66 - (page.ground_y + bit_m * page.depth_pxm) * camera.zoom;
  keepInside(camera, page);
}
