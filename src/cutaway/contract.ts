// What a page gives to the drawing and what it can ask of it.

import type { Description } from './describe';
import type { LensPower } from './lensPlace';
import type { LensFacts } from './part';
import type { RendererKind } from './renderer';
import type { CutawayView } from './shown';

export interface CutawayOptions {
  renderer: 'auto' | RendererKind;
  reducedMotion: boolean;
  /** Told what is under the pointer or the last tap, and where; null when nothing is. */
  onpoint?(what: Description | null, x_px: number, y_px: number): void;
  /** Told when zoom or "follow the bit" changed. */
  oncamera?(zoom: number, follow: boolean): void;
  /** Told what the lens does when that changed, and whenever it was held or put away (null). */
  onlens?(facts: LensFacts | null): void;
  /** The picture was taken away and has not come back: mount anew, the state is all that is needed. */
  onlost?(): void;
  /** Told how many times wider the hole is drawn, and the least and most that fit, when that changed. */
  onwidth?(widening: number, least: number, most: number): void;
}

export interface Cutaway {
  /** Draws the view. pace: job seconds per second on the wall, 0 when paused; things move by it until the next view. */
  draw(view: CutawayView, pace?: number): void;
  /** Zooms by a factor about a point of the picture, or its middle. */
  zoom(factor: number, x_px?: number, y_px?: number): void;
  pan(dx_px: number, dy_px: number): void;
  /** Back to the whole picture. */
  home(): void;
  followBit(on: boolean): void;
  /** Draws the hole so many times wider than true, as far as it fits; null: as the room suggests. */
  widen(times: number | null): void;
  /** Holds the lens to the bit or the screen (1), to the wall there (2), or puts it away (0). */
  holdLens(power: LensPower): void;
  /** Asks what is there; onpoint has the answer. */
  point(x_px: number, y_px: number): void;
  readonly kind: RendererKind;
  destroy(): void;
}
