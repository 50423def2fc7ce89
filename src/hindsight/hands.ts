// Who does the looking back: workers, or the page itself in short slices.
import type { Past } from '$lessons';
import { inSlices, workersHere, type Helper, type HelperTalk } from '../app/sideWork';
import { carryOut, type Order, type Report } from './orders';

export { helperCount as handCount } from '../app/sideWork';
export type Hand = Helper<Order>;
export type HandTalk = HelperTalk<Report>;
export type MakeHand = (past: Past, talk: HandTalk) => Hand;

/** A hand in a worker. Throws where the browser has no workers or forbids them. */
export async function workerHand(): Promise<MakeHand> {
  const inWorker = await workersHere();
  return (past, talk) => inWorker('lookBack', past, talk);
}

/** A hand in the page. */
export const slicedHand: MakeHand = (past, talk) => inSlices((order) => carryOut(past, order), talk);
