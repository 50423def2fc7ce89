// Why a crew that knows the trade does what it does now: one sentence from the act and what can be seen, heard and felt.

import type { ActionName, Senses } from '$sim';
import type { Deed } from '../crews/crew';
import type { WordKey } from '../words/index';

/** Returns with so much sand in them are thick, to the eye. */
const THICK_frac = 0.9;
/** Less than this comes back: the ground drinks. */
const FEW_RETURNS_frac = 0.7;
/** A rod is down when no more than this is left, m. */
const ROD_END_m = 0.05;

type Reason = WordKey | ((deed: Deed, senses: Senses) => WordKey);

const drags = ({ stem }: Senses): boolean => stem.pull !== 'normal';
const rodDown = ({ stem }: Senses): boolean => stem.left_m <= ROD_END_m;

function feedReason({ payload }: Deed, senses: Senses): WordKey {
  const { stem, returns, pump } = senses;
  const feed_frac = payload.feed_frac as number;
  const heavy = stem.torque === 'heavy' || stem.torque === 'stalled';
  if (feed_frac === 0) {
    if (drags(senses)) return 'why.feedOff.drags';
    if (heavy) return 'why.feedOff.heavy';
    if (!pump.primed || !returns.running) return 'why.feedOff.noFlow';
    if (returns.share_frac < FEW_RETURNS_frac) return 'why.feedOff.lost';
    return rodDown(senses) ? 'why.feedOff.rodDown' : 'why.feedOff.hand';
  }
  if (stem.feed_frac === 0) return 'why.feedOn';
  if (feed_frac > stem.feed_frac) return 'why.feedMore';
  if (heavy || drags(senses)) return 'why.feedLess.heavy';
  if (returns.cloudiness_frac > THICK_frac) return 'why.feedLess.thick';
  return stem.sound === 'sticky' ? 'why.feedLess.sticky' : 'why.feedLess';
}

const liftReason = (_deed: Deed, senses: Senses): WordKey =>
  !senses.pump.primed
    ? 'why.lift.dry'
    : drags(senses)
      ? 'why.lift.drags'
      : rodDown(senses)
        ? 'why.lift.clear'
        : 'why.lift';

const off = (name: string, whenOff: WordKey, whenOn: WordKey): Reason => {
  return ({ payload }) => (payload[name] === 0 || payload[name] === false ? whenOff : whenOn);
};

const washReasons: Readonly<Record<string, WordKey>> = {
  bail: 'why.develop.bail',
  surge: 'why.develop.surge',
  overPump: 'why.develop.overPump',
  backWash: 'why.develop.backWash',
};
const rinses = ({ well }: Senses): boolean => well?.smellsOfChlorine === true;

const pitIsLow = ({ pit }: Senses): boolean => pit.look === 'low' || pit.look === 'empty';

const REASONS: Readonly<Partial<Record<ActionName, Reason>>> = {
  readCaution: 'why.readCaution',
  chooseSite: 'why.chooseSite',
  setOut: 'why.setOut',
  fillPit: 'why.fillPit',
  prime: 'why.prime',
  setThrottle: off('throttle_frac', 'why.flowOff', 'why.flowOn'),
  setTurning: off('on', 'why.turnOff', 'why.turnOn'),
  setFeed: feedReason,
  lift: liftReason,
  lower: 'why.lower',
  addRod: 'why.addRod',
  removeRod: 'why.removeRod',
  workStem: 'why.workStem',
  catchSample: 'why.catchSample',
  nameSample: 'why.nameSample',
  addAdditive: (_deed, senses) => (senses.time_s < 600 ? 'why.addAdditive.start' : 'why.addAdditive.keep'),
  stir: 'why.stir',
  feelFluid: 'why.feelFluid',
  readStick: 'why.readStick',
  funnelTest: 'why.funnelTest',
  addWater: (_deed, senses) => (pitIsLow(senses) ? 'why.addWater.low' : 'why.addWater'),
  topUp: 'why.topUp',
  digOutPit: 'why.digOutPit',
  clearStrainer: 'why.clearStrainer',
  setStrainer: 'why.setStrainer',
  logLayer: 'why.logLayer',
  waitFor: 'why.waitFor',
  stopDrilling: 'why.stopDrilling',
  planWell: 'why.planWell',
  pullOut: 'why.pullOut',
  joinCasing: 'why.joinCasing',
  runCasing: 'why.runCasing',
  workCasing: 'why.workCasing',
  pourPack: 'why.pourPack',
  sound: 'why.sound',
  placeSeal: ({ payload }) => (payload.seal === 'cuttings' ? 'why.backfill' : 'why.placeSeal'),
  backfill: 'why.backfill',
  develop: ({ payload }, senses) =>
    rinses(senses) && payload.method === 'overPump'
      ? 'why.develop.rinse'
      : (washReasons[payload.method as string] ?? 'why.develop.surge'),
  breakPolymer: 'why.breakPolymer',
  dipWell: 'why.dipWell',
  yieldTest: 'why.yieldTest',
  disinfect: 'why.disinfect',
  headWorks: 'why.headWorks',
  record: 'why.record',
  handOver: 'why.handOver',
  abandon: 'why.abandon',
};

/** The sentence for an act about to be done; null for an act that explains itself. Senses are those of the moment before it. */
export function whyOf(deed: Deed, senses: Senses): WordKey | null {
  const reason = REASONS[deed.action];
  return typeof reason === 'function' ? reason(deed, senses) : (reason ?? null);
}
