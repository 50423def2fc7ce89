// The clock's controls: pause, the paces, one second. Go takes up the pace that was last chosen.
import type { Session } from '../../app/session.svelte';
import type { Speed } from '../../app/ticker';

export const PACES = [1, 5, 20, 60] as const satisfies readonly Speed[];
export type PaceSpeed = (typeof PACES)[number];

export interface Pace {
  toggle(): void;
  choose(speed: PaceSpeed): void;
  step(): void;
}

export function paceOf(session: Session): Pace {
  let last: PaceSpeed = 1;
  return {
    toggle() {
      if (session.speed === 0) session.speed = last;
      else {
        last = session.speed as PaceSpeed;
        session.speed = 0;
      }
    },
    choose(speed) {
      last = speed;
      session.speed = speed;
    },
    step() {
      session.speed = 0;
      session.stepOnce();
    },
  };
}
