// What lies at a depth, and how much of its pore space holds water.
import type { Ground } from './ground';
import type { Layer } from './layer';

/** The layer at a depth in m; above the ground the first, below the profile the last. A boundary belongs to the layer under it. */
export function layerAt(ground: Ground, depth_m: number): Layer {
  const { layers } = ground;
  for (const layer of layers) if (depth_m < layer.bottom_m) return layer;
  return layers[layers.length - 1];
}

/**
 * Share of the pore space filled with water at a depth in m: 1 at and below the water table; above it what gravity
 * leaves behind, (n - Sy)/n, from the identity porosity = specific yield + specific retention (Heath 1983, from memory).
 * That the ground above has drained to just this is ASSUMED. Worked value: n .42, Sy .21 above the table -> .5.
 */
export function saturationAt(ground: Ground, depth_m: number): number {
  if (depth_m >= ground.waterTable_m) return 1;
  const { porosity_frac, Sy_frac } = layerAt(ground, depth_m);
  return (porosity_frac - Sy_frac) / porosity_frac;
}
