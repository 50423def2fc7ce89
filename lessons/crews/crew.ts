// What a crew is: it looks at the senses once a second and does one act or none. Its memory is plain data, so that it can be frozen and copied.

import type { ActionName, Senses } from '$sim';

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

export const does = (action: ActionName, payload: Deed['payload'] = {}): Deed => ({ action, payload });
