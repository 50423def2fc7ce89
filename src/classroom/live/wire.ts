// The line between two windows of this page. Who has sent something is told by the window itself: a page opened from disk has no origin to ask for.
import { letterOf, type Order, type Telling } from './talk';

/** As much of another window as may be seen of it whatever its origin. */
export interface Peer {
  readonly closed: boolean;
  readonly opener: unknown;
  postMessage(data: unknown, origin: string): void;
}

/** As much of our own window as the line needs. */
export interface Here {
  readonly location: { readonly protocol: string; readonly origin: string };
  addEventListener(type: 'message', hear: (event: MessageEvent) => void): void;
  addEventListener(type: 'pagehide', hear: () => void): void;
  removeEventListener(type: 'message', hear: (event: MessageEvent) => void): void;
  removeEventListener(type: 'pagehide', hear: () => void): void;
}

export interface WireOptions<Content> {
  readonly here: Here;
  /** The window at the other end, where it is known from the beginning. */
  readonly peer?: Peer | null;
  /** Whether a window that has sent something is the one at the other end. */
  readonly isPeer: (source: Peer) => boolean;
  /** Hears of what it has sent. */
  readonly hear: (data: unknown) => void;
  /** What is told when this page goes. */
  readonly goodbye: Content;
}

export class Wire<Content extends Order | Telling> {
  #peer: Peer | null;
  readonly #options: WireOptions<Content>;
  readonly #origin: string;

  constructor(options: WireOptions<Content>) {
    const { here, peer = null } = options;
    this.#options = options;
    this.#peer = peer;
    // Only a page of our own may read what is sent; on disk all that can be said is: whoever is in that window.
    this.#origin = here.location.protocol === 'file:' ? '*' : here.location.origin;
    here.addEventListener('message', this.#heard);
    here.addEventListener('pagehide', this.#leaves);
  }

  /** The other window is there, as far as one can see from here. */
  get open(): boolean {
    return this.#peer !== null && !this.#peer.closed;
  }

  join(peer: Peer): void {
    this.#peer = peer;
  }

  send(content: Content): void {
    if (this.open) this.#peer!.postMessage(letterOf(content), this.#origin);
  }

  /** Ends the listening. Tells nothing. */
  close(): void {
    const { here } = this.#options;
    here.removeEventListener('message', this.#heard);
    here.removeEventListener('pagehide', this.#leaves);
  }

  readonly #leaves = (): void => this.send(this.#options.goodbye);

  readonly #heard = ({ source, data }: MessageEvent): void => {
    const peer = source as unknown as Peer | null;
    if (peer === null || !this.#options.isPeer(peer)) return;
    this.#peer = peer;
    this.#options.hear(data);
  };
}
