// Types of the playing part for screens that must not load it.
export type { Play } from './loadPlay';
export type { Grade, Opened } from './play';
