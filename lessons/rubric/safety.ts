// Items of the category safety: cautions read before the act they warn of, rods handled at rest, the bit free before the flow stops.

import type { ActionName } from '$sim';
import { actsWarnedOf } from '../hazards';
import { acceptedActs, eventsNamed, leftAt, stopsOf } from './episodes';
import { bandOf, shown, type Bands, type Judged, type RunView } from './item';

/** First accepted act of the ones named, or null; the stem counts from its first turn. */
function firstOf(view: RunView, actions: readonly ActionName[]): number | null {
  let first: number | null = null;
  for (const action of actions)
    for (const [tick, , payload] of acceptedActs(view, action)) {
      if (action === 'setTurning' && (payload as { on?: boolean }).on !== true) continue;
      if (action === 'addAdditive' && (payload as { additive?: string }).additive !== 'chlorine') continue;
      if (first === null || tick < first) first = tick;
    }
  return first;
}

/** Share of the lesson's cautions read before the act they warn of was first done (or by the end, if it never was). No bands. */
export function cautionsRead(view: RunView): Judged {
  const read = new Map<string, number>();
  const begun: number[] = [];
  const left_tick = leftAt(view);
  for (const [tick, , payload] of acceptedActs(view, 'readCaution')) {
    const caution = (payload as { caution?: string }).caution ?? '';
    if (!view.hazards.includes(caution) || read.has(caution) || tick > left_tick) continue;
    const first = firstOf(view, actsWarnedOf(caution));
    if (first !== null && !begun.includes(first)) begun.push(first);
    if (first === null || tick <= first) read.set(caution, tick);
  }
  const all = view.hazards.length;
  const have = read.size;
  return {
    share_frac: all === 0 ? 1 : have / all,
    reason: { key: have === all ? 'reason.cautionsRead.full' : 'reason.cautionsRead.lost', data: { have, all } },
    evidence: [...read.values(), ...begun].map((tick) => ({ tick })),
  };
}

/** Tries to change a rod with the flow on or the stem turning; the simulator refuses them, the real rod does not. Bands: none (tries that cost the item). */
export function rodsHandledStill(view: RunView, bands: Bands): Judged {
  const tries = eventsNamed(view, 'refused').filter(
    ({ data }) =>
      (data.action === 'addRod' || data.action === 'removeRod') &&
      (data.reason === 'flowOn' || data.reason === 'turningOn'),
  );
  const handled = view.events.some((event) => event.name === 'rodAdded' || event.name === 'rodRemoved');
  if (!handled && tries.length === 0)
    return { share_frac: 0, reason: { key: 'reason.rodsHandledStill.none', data: {} }, evidence: [] };
  return {
    share_frac: Math.max(0, 1 - tries.length / bandOf(bands, 'none')),
    reason:
      tries.length === 0
        ? { key: 'reason.rodsHandledStill.full', data: {} }
        : { key: 'reason.rodsHandledStill.lost', data: { times: tries.length } },
    evidence: tries.map((event) => ({ tick: event.tick })),
  };
}

/** Share of the stops at which the bit hung free of the bottom. Bands: lift_m. */
export function liftedBeforeStop(view: RunView, bands: Bands): Judged {
  const stops = stopsOf(view);
  if (stops.length === 0)
    return { share_frac: 0, reason: { key: 'reason.liftedBeforeStop.none', data: {} }, evidence: [] };
  const lift_m = bandOf(bands, 'lift_m');
  const onBottom = stops.filter((stop) => stop.depth_m - stop.bit_m < lift_m);
  return {
    share_frac: (stops.length - onBottom.length) / stops.length,
    reason:
      onBottom.length === 0
        ? { key: 'reason.liftedBeforeStop.full', data: { stops: stops.length } }
        : { key: 'reason.liftedBeforeStop.lost', data: { times: onBottom.length, stops: stops.length } },
    evidence: stops.map((stop) => ({
      tick: stop.tick,
      depth_m: stop.depth_m,
      value: shown(stop.depth_m - stop.bit_m, 2),
      unit: 'm',
    })),
  };
}
