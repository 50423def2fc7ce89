// The one live region: what a screen reader says without being asked. At most one message every 3 s; danger at once.

const PAUSE_ms = 3000;
/** More than this many waiting are stale; only the newest are still worth hearing. */
const KEPT = 3;

export class Announcer {
  text = $state('');
  #waiting: string[] = [];
  #timer: ReturnType<typeof setTimeout> | null = null;

  say(text: string, urgent = false): void {
    if (urgent) {
      this.#waiting = [];
      this.#speak(text);
      return;
    }
    this.#waiting = [...this.#waiting, text].slice(-KEPT);
    if (this.#timer === null) this.#next();
  }

  #next(): void {
    this.#timer = null;
    if (this.#waiting.length === 0) return;
    const all = this.#waiting.join(' ');
    this.#waiting = [];
    this.#speak(all);
  }

  #speak(text: string): void {
    // The same words twice would be no change and so not be read; a thin space at the end makes them one.
    this.text = text === this.text ? `${text}\u2009` : text;
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#next(), PAUSE_ms);
  }
}

export const announcer = new Announcer();
