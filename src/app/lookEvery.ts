// How often the senses are read anew while the clock runs; when something happens they are read at once.

import type { Speed } from './ticker';

/** ASSUMED: nobody reads faster, and what is written on the screen changes at each reading. */
const LOOK_EVERY_ms = 200;
/** Where the clock runs fast each reading says something else, so it stands longer. */
const FAST_LOOK_EVERY_ms = 400;
const FAST: Speed = 20;

export const lookEvery_ms = (speed: Speed): number => (speed >= FAST ? FAST_LOOK_EVERY_ms : LOOK_EVERY_ms);
