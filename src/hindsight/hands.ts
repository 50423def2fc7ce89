// Who does the looking back: workers, or the page itself in short slices.
import type { Past } from '$lessons';
import { inSlices, inWorker, type Helper, type HelperTalk } from '../app/sideWork';
import { carryOut, type Order, type Report } from './orders';

export { helperCount as handCount } from '../app/sideWork';
export type Hand = Helper<Order>;
export type HandTalk = HelperTalk<Report>;
export type MakeHand = (past: Past, talk: HandTalk) => Hand;

/** A hand in a worker. Throws where the browser has no workers or forbids them. */
export async function workerHand(): Promise<MakeHand> {
  const { default: HindsightWorker } = await import('./worker?worker&inline');
  return (past, talk) => inWorker(new HindsightWorker(), past, talk);
}

/** A hand in the page. */
export const slicedHand: MakeHand = (past, talk) => inSlices((order) => carryOut(past, order), talk);
