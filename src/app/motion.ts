// Whether things may move: the learner's choice first, then the device's own wish.
import type { Settings } from './records';

export function setMotion(motion: Settings['motion']): void {
  if (motion === 'device') delete document.documentElement.dataset['motion'];
  else document.documentElement.dataset['motion'] = motion;
}

/** True where pictures should stand still except for what the run itself changes. */
export function motionReduced(): boolean {
  const chosen = document.documentElement.dataset['motion'];
  if (chosen) return chosen === 'still';
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}
