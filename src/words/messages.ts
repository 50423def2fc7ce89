// The table of messages: those of the first screens at once, the rest and the lessons' words when the playing part is there.
import { about } from './en/about';
import { app } from './en/app';
import { briefing } from './en/briefing';
import { files } from './en/files';
import { help } from './en/help';
import { start } from './en/start';
import type { classMessages } from './classroom';
import type { laterMessages } from './later';

/** Plain text with slots (see fill.ts), or plural forms picked by the slot n. */
export type Message = string | { readonly one?: string; readonly other: string };
export type MessageTable = Readonly<Record<string, Message>>;

const firstMessages = { ...app, ...start, ...files, ...help, ...about, ...briefing };

export type MessageKey = keyof typeof firstMessages | keyof typeof laterMessages | keyof typeof classMessages;

export const messages = new Map<string, Message>(Object.entries(firstMessages));

/** Messages that come later never replace one that is there. */
export function addMessages(table: MessageTable): void {
  for (const [key, message] of Object.entries(table)) {
    if (!messages.has(key)) messages.set(key, message);
  }
}

/** Fetches the messages that come after the first screens, for a page that shows some of them before the playing part is there. */
export async function loadLaterMessages(): Promise<void> {
  addMessages((await import('./later')).laterMessages);
}
