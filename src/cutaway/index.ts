// Door of the drawing: mounts it in an element, draws views into it, answers what is where. Load it with import(),
// so that Pixi stays out of the first screen.

import type { Cutaway, CutawayOptions } from './contract';
import { mountWith } from './mount';
import { workerHand, workersDraw } from './workerHand';

export type { Cutaway, CutawayOptions } from './contract';
export type { CutawayView, ViewLevel } from './shown';
export type { Description } from './describe';
export type { LensPower } from './lensPlace';
export type { LensFacts } from './part';

/** A worker draws where it can, else the page itself. */
export async function mountCutaway(host: HTMLElement, options: CutawayOptions): Promise<Cutaway> {
  if (workersDraw()) {
    try {
      return await mountWith(workerHand, host, options);
    } catch {
      // The page can do it too.
    }
  }
  const { pageHand } = await import('./pageHand');
  return mountWith(pageHand, host, options);
}
