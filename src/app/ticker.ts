// Turns the time between two pictures into whole job seconds that fall due, at a chosen speed.

export type Speed = 0 | 1 | 5 | 20 | 60;
export const SPEEDS: readonly Speed[] = [0, 1, 5, 20, 60];

/** Longest real time that one picture may make up for; more than this is a page that slept, not one that is slow. */
const LONGEST_FRAME_ms = 250;

export interface Ticker {
  /** Job seconds due at this picture. */
  due(now_ms: number, speed: Speed): number;
  /** Forget what is left over, so that nothing is made up for after a pause. */
  reset(): void;
}

export function createTicker(): Ticker {
  let last_ms: number | null = null;
  let left_s = 0;
  return {
    due(now_ms, speed) {
      const passed_ms = last_ms === null ? 0 : Math.min(LONGEST_FRAME_ms, Math.max(0, now_ms - last_ms));
      last_ms = now_ms;
      left_s += (passed_ms / 1000) * speed;
      const whole_s = Math.floor(left_s);
      left_s -= whole_s;
      return whole_s;
    },
    reset() {
      last_ms = null;
      left_s = 0;
    },
  };
}
