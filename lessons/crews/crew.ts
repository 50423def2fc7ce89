// What a crew is: it looks at the senses once a second and does one act or none. Its memory is plain data, so that it can be frozen and copied.

import type { ActionName, Senses } from '$sim';
import type { WellJob } from './wellJob';

export interface Deed {
  readonly action: ActionName;
  readonly payload: Readonly<Record<string, string | number | boolean>>;
}

export interface Crew {
  readonly name: string;
  /** Everything the crew remembers; plain JSON. */
  readonly memory: object;
  decide(senses: Senses): Deed | null;
}

/** What a crew is told before it starts: how deep the hole shall be (with a well: may be), and the job second at which its day is over. */
export interface Job {
  readonly depth_m: number;
  readonly time_s: number;
  /** Where the chances of a crew begin that acts by chance; the others never look at it. */
  readonly chance?: number;
  /** A log of the layers is wanted. */
  readonly log?: boolean;
  /** What the pit holds, L; left out: the usual pit. */
  readonly pit_L?: number;
  /** A well is wanted, not only a hole. */
  readonly well?: WellJob;
}

/** Three rods of 1.5 m, drilled to within a hand's breadth, in three hours. */
export const THREE_RODS: Job = { depth_m: 4.4, time_s: 10800 };

/** A crew drills a little deeper than asked, m; to the centimetre, as depths are sensed. */
export const goalOf_m = (job: Job, margin_m: number): number => Math.round((job.depth_m + margin_m) * 100) * 0.01;

export const does = (action: ActionName, payload: Deed['payload'] = {}): Deed => ({ action, payload });
