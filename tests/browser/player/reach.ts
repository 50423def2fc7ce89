// What the hands on the screen can set: a deed of a crew, which knows finer figures, as a finger would do it.
import type { Deed, Lesson } from '../../../lessons';
import { sensesOf, type Run } from '../../../sim';

/** The steps of the hands: feed in tenths, throttle in quarters, powder by 50 g, a label to a tenth of a metre. */
const FEED_STEPS = 10;
const THROTTLE_STEPS = 4;
const POWDER_g = 50;
const WATER_L = 50;
const DEPTH_m = 0.1;
/** What the question for back-washing starts with. */
const BACK_WASH_Lmin = 20;
/** The gear that the question of setting out starts with, which a crew that says nothing has too. */
const GEAR = { bit_mm: 100, pump: 'small' } as const;
/** How long the waits of the clock last at most: while drilling, and at the closed well. */
const TASK_CAP_s = 14_400;
const LONG_CAP_s = 259_200;

const hundredth = (value: number): number => Math.round(value * 100) / 100;
const toStep = (value: number, step: number): number => hundredth(Math.round(value / step) * step);

/** The nearest step of a stepper; what is to be on stays on. */
const shareTo = (wanted: number, steps: number): number =>
  wanted > 0 ? Math.max(1, Math.round(wanted * steps)) / steps : 0;

/** A wait as the clock offers it: with the crew's word, and the clock's own limit. */
function waitOf(run: Run, { until, ...rest }: Deed['payload']): Deed['payload'] {
  if (until === undefined || until === 'morning') return until ? { until } : rest;
  const closed = sensesOf(run).well?.casing.look === 'set';
  return { until, cap_s: closed ? LONG_CAP_s : TASK_CAP_s };
}

/** The deed as the hands can do it; null where they have nothing to do. */
export function asHandsCan(run: Run, { hands }: Lesson, deed: Deed): Deed | null {
  const { action, payload } = deed;
  const one = (field: string, value: number): Deed => ({ action, payload: { ...payload, [field]: value } });
  const number = (field: string): number => Number(payload[field]);
  switch (action) {
    // The cautions are read in the briefing.
    case 'readCaution':
      return null;
    case 'setOut':
      return { action, payload: { ...GEAR, ...payload } };
    case 'setFeed': {
      const share = shareTo(number('feed_frac'), FEED_STEPS);
      return share === run.state.stem.feed_frac ? null : one('feed_frac', share);
    }
    case 'setThrottle': {
      const share = shareTo(number('throttle_frac'), THROTTLE_STEPS);
      return share === run.state.pump.throttle_frac ? null : one('throttle_frac', share);
    }
    case 'addAdditive':
      return one('mass_g', Math.max(POWDER_g, toStep(number('mass_g'), POWDER_g)));
    case 'fillPit':
      return one('water_L', toStep(number('water_L'), WATER_L));
    case 'catchSample':
      // A lesson without a tray is about something else.
      return hands.includes('tray') ? one('label_m', toStep(number('label_m'), DEPTH_m)) : null;
    case 'logLayer': {
      const [from_m, to_m] = [toStep(number('from_m'), DEPTH_m), toStep(number('to_m'), DEPTH_m)];
      return from_m < to_m ? { action, payload: { ...payload, from_m, to_m } } : null;
    }
    case 'develop':
      return payload.method === 'backWash' && payload.rate_Lmin === undefined ? one('rate_Lmin', BACK_WASH_Lmin) : deed;
    case 'waitFor':
      return { action, payload: waitOf(run, payload) };
    default:
      return deed;
  }
}
