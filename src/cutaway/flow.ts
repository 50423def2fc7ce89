// The clock of the pictures: views and ticks go to the hand one at a time, so that a slow hand is never given more than it can draw. While
// something moves there is a picture for each frame of the page; a page that is hidden has no frames, and nothing moves.

import type { Order } from './orders';
import type { CutawayView } from './shown';

/** Who needs long for a picture rests as long after it, but not longer than this, ms: a device without a graphics chip has its processor for the run as well. */
const MOST_REST_ms = 20;

export interface Flow {
  show(view: CutawayView, pace_ratio: number): void;
  /** The hand has answered. */
  drawn(moving: boolean): void;
  stop(): void;
}

export function createFlow(give: (order: Order) => void): Flow {
  /** The newest view that the hand has not seen. */
  let next: { view: CutawayView; pace_ratio: number } | null = null;
  let moving = false;
  let waiting = false;
  let frame = 0;
  let stopped = false;
  let sent_ms = 0;
  let rested_ms = 0;

  function send(now_ms: number): void {
    if (waiting || stopped) return;
    waiting = true;
    const shown = next;
    next = null;
    sent_ms = performance.now();
    give(shown ? { kind: 'view', ...shown, now_ms } : { kind: 'tick', now_ms });
  }

  function keepGoing(): void {
    if (frame !== 0 || stopped) return;
    frame = requestAnimationFrame((now_ms) => {
      frame = 0;
      if (now_ms < rested_ms) keepGoing();
      else send(now_ms);
    });
  }

  /** What stands is drawn at once, what moves with the next frame, once. */
  function goOn(): void {
    if (next && (!moving || next.pace_ratio === 0)) send(performance.now());
    else if (next || moving) keepGoing();
  }

  return {
    show(view, pace_ratio) {
      next = { view, pace_ratio };
      goOn();
    },
    drawn(stillMoving) {
      waiting = false;
      // After a picture of what stood, the first of all among them, the next need not wait.
      const now_ms = performance.now();
      rested_ms = moving ? now_ms + Math.min(MOST_REST_ms, now_ms - sent_ms) : 0;
      moving = stillMoving;
      goOn();
    },
    stop() {
      stopped = true;
      if (frame !== 0) cancelAnimationFrame(frame);
    },
  };
}
