// Two windows that can send each other messages, as browsers let them: copies only, who has sent it, and no more.
import type { Here, Peer } from '../../../../src/classroom/live/wire';
import type { Stage } from '../../../../src/classroom/live/steered.svelte';

type Hear = (event: MessageEvent) => void;

export class FakeWindow implements Here, Peer, Stage {
  closed = false;
  opener: unknown = null;
  readonly location: { protocol: string; origin: string };
  /** To which origins something was sent to this window. */
  readonly sentTo: string[] = [];
  /** The window that open() gives; null: the browser will not. */
  opens: FakeWindow | null = null;
  readonly #heard = new Set<Hear>();
  readonly #left = new Set<() => void>();
  #from: FakeWindow | null = null;

  constructor(origin = 'http://127.0.0.1:8080') {
    // A page from disk names its scheme as its origin, or nothing; its messages come from "null".
    this.location = origin === 'file' ? { protocol: 'file:', origin: 'null' } : { protocol: 'http:', origin };
  }

  addEventListener(type: 'message' | 'pagehide', hear: Hear | (() => void)): void {
    if (type === 'message') this.#heard.add(hear as Hear);
    else this.#left.add(hear as () => void);
  }

  removeEventListener(type: 'message' | 'pagehide', hear: Hear | (() => void)): void {
    if (type === 'message') this.#heard.delete(hear as Hear);
    else this.#left.delete(hear as () => void);
  }

  open(): FakeWindow | null {
    if (this.opens) this.opens.opener = this;
    return this.opens;
  }

  /** What is sent to this window comes from that one. */
  from(source: FakeWindow): void {
    this.#from = source;
  }

  postMessage(data: unknown, origin: string): void {
    if (this.#from?.closed) return;
    this.sentTo.push(origin);
    const copy: unknown = structuredClone(data);
    for (const hear of this.#heard) hear({ source: this.#from, data: copy, origin: 'null' } as unknown as MessageEvent);
  }

  /** The page in the window goes, and the window with it if it is closed. */
  leave(closes: boolean): void {
    for (const hear of this.#left) hear();
    this.closed = closes;
  }
}

/** The window of a run, and the one it can open. */
export function twoWindows(origin?: string): { hole: FakeWindow; child: FakeWindow } {
  const hole = new FakeWindow(origin);
  const child = new FakeWindow(origin);
  hole.opens = child;
  hole.from(child);
  child.from(hole);
  return { hole, child };
}
