// The item that judges what was done when something broke: how long engine or hose stood useless.

import { eventsNamed } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** What breaks, by the event that tells of it, and what mends it. */
const BREAKS = { engineStopped: 'engine', hoseBurst: 'hose' } as const;

/** The longest that a broken engine or hose stood before it was mended; what was never mended counts to the end. Bands: full_s, none_s. */
export function mendedSoon(view: RunView, bands: Bands): Judged {
  const mended = eventsNamed(view, 'mended');
  const stood = Object.entries(BREAKS).flatMap(([name, what]) =>
    eventsNamed(view, name as keyof typeof BREAKS).map(({ tick }) => {
      const end = mended.find(({ tick: later, data }) => later > tick && data.what === what)?.tick ?? view.ticks;
      return { tick, stood_s: end - tick };
    }),
  );
  if (stood.length === 0) return { share_frac: 0, reason: { key: 'reason.mendedSoon.none', data: {} }, evidence: [] };
  const longest_s = Math.max(...stood.map(({ stood_s }) => stood_s));
  const share_frac = shareBetween(longest_s, bandOf(bands, 'full_s'), bandOf(bands, 'none_s'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.mendedSoon.full' : 'reason.mendedSoon.lost',
      data: { time_min: shown(longest_s / 60, 0) },
    },
    evidence: stood.map(({ tick, stood_s }) => ({ tick, value: stood_s, unit: 's' })),
  };
}
