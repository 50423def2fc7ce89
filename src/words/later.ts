// The messages that the first screen does not need: they come with the playing part.
import { briefing } from './en/briefing';
import { cutaway } from './en/cutaway';
import { debrief } from './en/debrief';
import { events } from './en/events';
import { work } from './en/work';

export const laterMessages = { ...briefing, ...debrief, ...events, ...work, ...cutaway };
