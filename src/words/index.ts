// The app's words: every sentence a person reads comes from t().
import { fillSlots, type Lookups, type SlotData } from './fill';
import { currentLanguage, locale } from './language';
import { messages, type Message, type MessageKey } from './messages';
import { bracketed, pseudo } from './pseudo';

export { formatDate, formatDay, formatFixed, formatNumber, formatPercent, formatSize } from './format';
export type { SlotData } from './fill';
export { setLanguage, currentLanguage, type Language } from './language';
export { addMessages, loadLaterMessages, type MessageKey } from './messages';

/** A message from data: the key of a lesson's reason, question or caution, with what fills its slots. */
export interface KeyedMessage {
  key: string;
  data?: SlotData;
}

/**
 * The message in the page's language, slots filled. Plural forms are picked by the slot n.
 * A key that no message file has comes back as it is: ugly, and found by the tests, but never a crash.
 */
export function t(key: MessageKey, data?: SlotData): string {
  return say(key, data);
}

/** The same for a key that comes from data (a lesson, an event, a refusal) and so is not known to the compiler. */
export function say(key: string, data?: SlotData): string {
  const message = messages.get(key);
  if (message === undefined) return key;
  const text = typeof message === 'string' ? message : pluralForm(message, Number(data?.['n'] ?? 0));
  return currentLanguage() === 'pseudo'
    ? bracketed(fillSlots(pseudo(text), data, inner))
    : fillSlots(text, data, inner);
}

export function hasMessage(key: string): boolean {
  return messages.has(key);
}

const inner: Lookups = { word: (key) => say(key), duration: formatDuration };

const rules = new Intl.PluralRules(locale());

function pluralForm(message: Exclude<Message, string>, n: number): string {
  return message[rules.select(n) as 'one'] ?? message.other;
}

/** Seconds in the two largest fitting units: "45 s", "2 min 5 s", "24 min", "1 h 24 min". */
export function formatDuration(time_s: number): string {
  const whole_s = Math.max(0, Math.round(time_s));
  const hours = Math.floor(whole_s / 3600);
  const minutes = Math.floor((whole_s % 3600) / 60);
  const seconds = whole_s % 60;
  if (hours > 0) return say(minutes > 0 ? 'time.hoursMinutes' : 'time.hours', { h: hours, min: minutes });
  if (minutes >= 10 || (minutes > 0 && seconds === 0)) return say('time.minutes', { min: minutes });
  if (minutes > 0) return say('time.minutesSeconds', { min: minutes, s: seconds });
  return say('time.seconds', { s: seconds });
}
