// Items of the way down: joints that had set, a hung casing worked gently, a pack that fell.

import { PACKS } from '$sim';
import { acceptedActs, eventsNamed, leftAt } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** Time that the youngest joint had before the casing went down (row P-F9: five minutes for 50 to 63 mm). Joints glued by a crew before count as set. Bands: set_s. */
export function jointsSet(view: RunView, bands: Bands): Judged {
  const runs = acceptedActs(view, 'runCasing');
  if (runs.length === 0) return { share_frac: 0, reason: { key: 'reason.jointsSet.none', data: {} }, evidence: [] };
  const set_s = bandOf(bands, 'set_s');
  const joints = eventsNamed(view, 'casingJoined').slice(1);
  let least_s = set_s;
  for (const [tick] of runs) {
    const last = joints.filter((event) => event.tick <= tick).at(-1);
    if (last) least_s = Math.min(least_s, tick - last.tick);
  }
  const share_frac = shareBetween(least_s, set_s, 0);
  const data = { had_s: least_s, set_min: shown(set_s / 60, 0) };
  return {
    share_frac,
    reason: { key: share_frac === 1 ? 'reason.jointsSet.full' : 'reason.jointsSet.lost', data },
    evidence: runs.map(([tick]) => ({ tick, value: least_s, unit: 's' })),
  };
}

/** The longest go at a hung casing: strokes grow harder the longer it lasts (common practice, no source). A casing that never hung asked for nothing. Bands: full_s, none_s. */
export function hungGently(view: RunView, bands: Bands): Judged {
  const snapped = eventsNamed(view, 'casingSnapped');
  const goes = acceptedActs(view, 'workCasing');
  let longest_s = 0;
  for (const [, , payload] of goes) longest_s = Math.max(longest_s, (payload as { time_s?: number }).time_s ?? 0);
  const hung = eventsNamed(view, 'casingHung').length > 0;
  const down = view.well?.verdict != null;
  const share_frac =
    snapped.length > 0 || !down ? 0 : shareBetween(longest_s, bandOf(bands, 'full_s'), bandOf(bands, 'none_s'));
  const data = { go_s: longest_s };
  return {
    share_frac,
    reason:
      snapped.length > 0
        ? { key: 'reason.hungGently.snapped', data }
        : !down
          ? { key: 'reason.hungGently.none', data: {} }
          : !hung
            ? { key: 'reason.hungGently.free', data: {} }
            : { key: share_frac === 1 ? 'reason.hungGently.full' : 'reason.hungGently.lost', data },
    evidence: [...goes.map(([tick]) => ({ tick })), ...snapped.map(({ tick }) => ({ tick }))],
  };
}

/** Places where the pack jammed in the ring on its way (row S-25: poured slowly, grains that fit the gap); each costs half. What a crew pours to which the rest was left does not count. No bands. */
export function packFell(view: RunView): Judged {
  const left_tick = leftAt(view);
  const pours = eventsNamed(view, 'packPoured').filter(({ tick }) => tick <= left_tick);
  if (pours.length === 0) return { share_frac: 0, reason: { key: 'reason.packFell.none', data: {} }, evidence: [] };
  const jams = eventsNamed(view, 'packBridged').filter(
    ({ tick, data }) => tick <= left_tick && String(data.fill) in PACKS,
  );
  const at_m = jams.length > 0 ? shown(Number(jams[0]!.data.at_m), 1) : 0;
  return {
    share_frac: Math.max(0, 1 - jams.length / 2),
    reason:
      jams.length === 0
        ? { key: 'reason.packFell.full', data: { pours: pours.length } }
        : { key: 'reason.packFell.lost', data: { at_m, jams: jams.length } },
    evidence: jams.map(({ tick, data }) => ({ tick, depth_m: shown(Number(data.at_m), 1) })),
  };
}
