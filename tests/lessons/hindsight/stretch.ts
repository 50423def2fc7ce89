// Some job seconds with the stem drawn up off the bottom: nothing is drilled.
import { act, step, type Run } from '$sim';

export function playStretch(run: Run, seconds: number): void {
  act(run, 'setFeed', { feed_frac: 0 });
  act(run, 'lift', { distance_m: 0.3, speed_ms: 0.05 });
  for (let i = 0; i < seconds; i++) step(run);
}
