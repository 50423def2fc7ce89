// Items that judge the loop of pump, pit and strainer: water kept by the pump, strainer open, pit full enough, sand kept out of the pump. An unfinished hole earns in the measure of its depth.

import { inMeasure } from './economy';
import { eventsNamed } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';
import type { WordKey } from '../words/index';

const nothing = (key: WordKey): Judged => ({ share_frac: 0, reason: { key, data: {} }, evidence: [] });

const everFlowed = (view: RunView): boolean => eventsNamed(view, 'flowStarted').length > 0;

/** The row at which a column was highest while fluid flowed, or -1. */
function highestFlowing(view: RunView, column: 'strainerBlocked_frac' | 'suctionLevel_m' | 'heap_frac'): number {
  const { flow_m3s, [column]: values } = view.trace.columns;
  let row = -1;
  for (let i = 0; i < view.trace.length; i++) {
    // The row after the flow has ended shows what ended it.
    if (!(flow_m3s[i]! > 0) && !(i > 0 && flow_m3s[i - 1]! > 0)) continue;
    if (row < 0 || values[i]! > values[row]!) row = i;
  }
  return row;
}

/** How often the pump lost its water, would not take it, or burnt its seal. Bands: none (times that cost the item). */
export function pumpKeptWater(view: RunView, bands: Bands): Judged {
  if (!everFlowed(view)) return nothing('reason.pumpKeptWater.none');
  const faults = view.events.filter(
    ({ name }) => name === 'primeLost' || name === 'primeFailed' || name === 'sealBurnt',
  );
  const burnt = faults.some(({ name }) => name === 'sealBurnt');
  const { share_frac, key } = inMeasure(view, Math.max(0, 1 - faults.length / bandOf(bands, 'none')), {
    full: 'reason.pumpKeptWater.full',
    lost: burnt ? 'reason.pumpKeptWater.burnt' : 'reason.pumpKeptWater.lost',
    unfinished: 'reason.pumpKeptWater.unfinished',
  });
  return {
    share_frac,
    reason: { key, data: key === 'reason.pumpKeptWater.lost' ? { times: faults.length } : {} },
    evidence: faults.map(({ tick }) => ({ tick })),
  };
}

/** How far the strainer was ever shut while the pump drew through it. Bands: full_frac, none_frac (share of its area). */
export function strainerOpen(view: RunView, bands: Bands): Judged {
  if (!everFlowed(view)) return nothing('reason.strainerOpen.none');
  const row = highestFlowing(view, 'strainerBlocked_frac');
  const { strainerBlocked_frac, time_s } = view.trace.columns;
  const most_frac = row < 0 ? 0 : strainerBlocked_frac[row]!;
  const { share_frac, key } = inMeasure(
    view,
    shareBetween(most_frac, bandOf(bands, 'full_frac'), bandOf(bands, 'none_frac')),
    {
      full: 'reason.strainerOpen.full',
      lost: 'reason.strainerOpen.lost',
      unfinished: 'reason.strainerOpen.unfinished',
    },
  );
  return {
    share_frac,
    reason: { key, data: { shut_pct: shown(most_frac * 100, 0) } },
    evidence: row < 0 ? [] : [{ tick: time_s[row]!, value: shown(most_frac, 2), unit: '' }],
  };
}

/** How low the fluid of the suction chamber ever stood while the pump drew from it. Bands: full_m, none_m (below the rim). */
export function pitStood(view: RunView, bands: Bands): Judged {
  if (!everFlowed(view)) return nothing('reason.pitStood.none');
  const row = highestFlowing(view, 'suctionLevel_m');
  const { suctionLevel_m, time_s } = view.trace.columns;
  const low_m = row < 0 ? 0 : suctionLevel_m[row]!;
  const { share_frac, key } = inMeasure(view, shareBetween(low_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m')), {
    full: 'reason.pitStood.full',
    lost: 'reason.pitStood.lost',
    unfinished: 'reason.pitStood.unfinished',
  });
  return {
    share_frac,
    reason: { key, data: { low_cm: shown(low_m * 100, 0) } },
    evidence: row < 0 ? [] : [{ tick: time_s[row]!, value: shown(low_m, 2), unit: 'm' }],
  };
}

/** How high the heap in the settling chamber ever stood while fluid ran over it. Bands: full_frac, none_frac (share of the chamber's depth). */
export function heapDug(view: RunView, bands: Bands): Judged {
  if (!everFlowed(view)) return nothing('reason.heapDug.none');
  const row = highestFlowing(view, 'heap_frac');
  const { heap_frac, time_s } = view.trace.columns;
  const most_frac = row < 0 ? 0 : heap_frac[row]!;
  const { share_frac, key } = inMeasure(
    view,
    shareBetween(most_frac, bandOf(bands, 'full_frac'), bandOf(bands, 'none_frac')),
    { full: 'reason.heapDug.full', lost: 'reason.heapDug.lost', unfinished: 'reason.heapDug.unfinished' },
  );
  return {
    share_frac,
    reason: { key, data: { heap_pct: shown(most_frac * 100, 0) } },
    evidence: row < 0 ? [] : [{ tick: time_s[row]!, value: shown(most_frac, 2), unit: '' }],
  };
}

/** Head that the pump lost to sand and to bubbles. Bands: full_frac, none_frac (share of its head), least_m (drilled less: nothing shows). */
export function pumpSpared(view: RunView, bands: Bands): Judged {
  const { pumpWorn_frac, depth_m } = view.trace.columns;
  const last = view.trace.length - 1;
  if (!everFlowed(view) || last < 0 || view.depth_m - depth_m[0]! < bandOf(bands, 'least_m'))
    return nothing('reason.pumpSpared.none');
  const worn_frac = pumpWorn_frac[last]! - pumpWorn_frac[0]!;
  const { share_frac, key } = inMeasure(
    view,
    shareBetween(worn_frac, bandOf(bands, 'full_frac'), bandOf(bands, 'none_frac')),
    { full: 'reason.pumpSpared.full', lost: 'reason.pumpSpared.lost', unfinished: 'reason.pumpSpared.unfinished' },
  );
  return {
    share_frac,
    reason: { key, data: { worn_pct: shown(worn_frac * 100, 1) } },
    evidence: [{ value: shown(worn_frac, 4), unit: '' }],
  };
}
