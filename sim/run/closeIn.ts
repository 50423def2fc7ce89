// The casing is set where it is: from here on the hole is a well, and its arrays stand still.

import { createAnnulus } from '../completion/annulus';
import { beginWell } from './wellBegin';
import type { Run } from './run';
import { tell } from './tell';

/** Closes the hole in round its casing, once. There must be a casing in it. */
export function closeIn(run: Run): void {
  const { state } = run;
  if (state.well) return;
  const { completion, hole } = state;
  const used = Math.max(1, Math.ceil(hole.depth_m / hole.dz_m - 1e-9));
  completion.annulus = createAnnulus(hole.dz_m, hole.cells, used);
  completion.annulus.radius_m.set(hole.radius_m);
  completion.casing.look = 'set';
  beginWell(run);
  tell(run, 'wellClosed', { shoe_m: completion.casing.shoe_m });
}
