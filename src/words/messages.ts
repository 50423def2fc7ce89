// The table of messages: the union of the app's message files, and of the lessons' words once they are loaded.
import { about } from './en/about';
import { app } from './en/app';
import { briefing } from './en/briefing';
import { cutaway } from './en/cutaway';
import { debrief } from './en/debrief';
import { events } from './en/events';
import { files } from './en/files';
import { help } from './en/help';
import { start } from './en/start';
import { work } from './en/work';

/** Plain text with slots (see fill.ts), or plural forms picked by the slot n. */
export type Message = string | { readonly one?: string; readonly other: string };
export type MessageTable = Readonly<Record<string, Message>>;

const appMessages = {
  ...app,
  ...start,
  ...briefing,
  ...debrief,
  ...events,
  ...files,
  ...help,
  ...about,
  ...work,
  ...cutaway,
};

export type MessageKey = keyof typeof appMessages;

export const messages = new Map<string, Message>(Object.entries(appMessages));

/** The lessons' words come with the lessons, after the first screen; they never replace one of the app's own. */
export function addMessages(table: MessageTable): void {
  for (const [key, message] of Object.entries(table)) {
    if (!messages.has(key)) messages.set(key, message);
  }
}
