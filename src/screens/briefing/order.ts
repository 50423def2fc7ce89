// What is asked of a practice: the depth as it is typed, and the order as the device keeps it.
import { DEPTH_LIMITS_m, SETTINGS, type Asked } from '../../app/catalogue';

/** The depth typed, in metres to a tenth, with point or comma; null where it is none, or beyond the limits. */
export function depthOf(text: string): number | null {
  const trimmed = text.trim().replace(',', '.');
  if (!/^\d{1,2}(\.\d)?$/.test(trimmed)) return null;
  const depth_m = Number(trimmed);
  return depth_m >= DEPTH_LIMITS_m.least && depth_m <= DEPTH_LIMITS_m.most ? depth_m : null;
}

/** The order kept on the device, if it is still one that can be asked; else the usual one. */
export function keptOrder(kept: Asked | undefined, usual: Asked): Asked {
  const known = kept !== undefined && depthOf(String(kept.depth_m)) !== null && SETTINGS.includes(kept.setting);
  return known ? kept : usual;
}
