// What the page tells the painter, and what the painter tells the page: plain data, so that the painter may sit in a worker.

import type { Language } from '../words/language';
import type { Description } from './describe';
import type { LensPower } from './lensPlace';
import type { Room } from './page';
import type { LensFacts } from './part';
import type { RendererKind } from './renderer';
import type { CutawayView } from './shown';

/** What the page offers the drawing: its room, colours, letters and language. */
export interface Surroundings {
  readonly room: Room;
  readonly theme: string;
  readonly font: string;
  readonly language: Language;
  /** Dots of the screen for each pixel of the page; the first one told holds. */
  readonly resolution: number;
}

export interface Beginning {
  readonly renderer: 'auto' | RendererKind;
  /** Nothing moves between two states. */
  readonly still: boolean;
  readonly around: Surroundings;
}

export type Order =
  /** Draw this view; pace: job seconds per second on the wall. now_ms: the clock of the page. */
  | { readonly kind: 'view'; readonly view: CutawayView; readonly pace_ratio: number; readonly now_ms: number }
  /** Time for the next picture of what moves. */
  | { readonly kind: 'tick'; readonly now_ms: number }
  | { readonly kind: 'around'; readonly around: Surroundings }
  | { readonly kind: 'zoom'; readonly factor: number; readonly x_px?: number; readonly y_px?: number }
  | { readonly kind: 'pan'; readonly dx_px: number; readonly dy_px: number }
  | { readonly kind: 'home' }
  | { readonly kind: 'follow'; readonly on: boolean }
  | { readonly kind: 'widen'; readonly times: number | null }
  | { readonly kind: 'lens'; readonly power: LensPower }
  /** What is there? */
  | { readonly kind: 'point'; readonly x_px: number; readonly y_px: number };

export type News =
  /** The answer to each view and each tick: whether something goes on moving. */
  | { readonly kind: 'drawn'; readonly moving: boolean }
  | { readonly kind: 'width'; readonly now: number; readonly least: number; readonly most: number }
  | { readonly kind: 'camera'; readonly zoom: number; readonly follow: boolean }
  | { readonly kind: 'lens'; readonly facts: LensFacts | null }
  | { readonly kind: 'point'; readonly what: Description | null; readonly x_px: number; readonly y_px: number }
  /** The picture was taken away and has not come back. */
  | { readonly kind: 'lost' };

export type Tell = (news: News) => void;

/** Who carries the orders out: the page itself, or a worker. */
export interface Hand {
  readonly kind: RendererKind;
  give(order: Order): void;
  stop(): void;
}

/** Takes the canvas over for good. */
export type MakeHand = (canvas: HTMLCanvasElement, beginning: Beginning, tell: Tell) => Promise<Hand>;
