// Items of the category log: a sample from each rod, labels near the truth, grains named by what lies in the tray.

import { eventsNamed, figure } from './episodes';
import { fittingNames } from './grains';
import { bandOf, shown, type Bands, type Judged, type RunView } from './item';

/** Labels are read off rod marks: a sample labelled this little beyond a rod's end still counts for that rod, m. */
const MARK_m = 0.1;

/** Rods that were down already when the learner took over. */
const rodsBefore = (view: RunView, rod_m: number): number => Math.floor(view.startDepth_m / rod_m);

/** Rods that want a sample: as many as the lesson says, or all that were drilled down. Bands: rods or rod_m. */
function rodsExpected(view: RunView, bands: Bands): number {
  if (bands.rods !== undefined) return bands.rods;
  const rod_m = bandOf(bands, 'rod_m');
  return Math.max(1, Math.floor(view.depth_m / rod_m) - rodsBefore(view, rod_m));
}

/** Samples that the learner caught. */
const ownTray = (view: RunView): RunView['tray'] => view.tray.filter(({ time_s }) => time_s >= view.start_tick);

/** Bands: rods (left out: as many as were drilled down), rod_m (length of one). */
export function sampleEachRod(view: RunView, bands: Bands): Judged {
  const rods = rodsExpected(view, bands);
  const rod_m = bandOf(bands, 'rod_m');
  const caught = eventsNamed(view, 'sampleCaught');
  const first = rodsBefore(view, rod_m);
  // A sample speaks for one rod only.
  const labels_m = caught.map((event) => figure(event, 'label_m')).sort((a, b) => a - b);
  let have = 0;
  for (let rod = first; rod < first + rods; rod++) {
    const from_m = rod * rod_m;
    const to_m = from_m + rod_m + MARK_m;
    const own = labels_m.findIndex((label_m) => label_m > from_m && label_m <= to_m);
    if (own < 0) continue;
    have++;
    labels_m.splice(own, 1);
  }
  return {
    share_frac: have / rods,
    reason: { key: have === rods ? 'reason.sampleEachRod.full' : 'reason.sampleEachRod.lost', data: { have, rods } },
    evidence: caught.map((event) => ({ tick: event.tick, depth_m: figure(event, 'label_m') })),
  };
}

/** Share of the samples whose label lies near the depth the grains came from. Bands: rods or rod_m (samples expected), limit_m. */
export function labelsTrue(view: RunView, bands: Bands): Judged {
  const rods = rodsExpected(view, bands);
  const limit_m = bandOf(bands, 'limit_m');
  const caught = eventsNamed(view, 'sampleCaught');
  if (caught.length === 0) return { share_frac: 0, reason: { key: 'reason.labelsTrue.none', data: {} }, evidence: [] };
  let right = 0;
  let worst = caught[0]!;
  const offBy = (event: (typeof caught)[number]): number =>
    Math.abs(figure(event, 'label_m') - figure(event, 'origin_m'));
  for (const event of caught) {
    if (offBy(event) <= limit_m) right++;
    if (offBy(event) > offBy(worst)) worst = event;
  }
  const share_frac = right / Math.max(rods, caught.length);
  const few = { key: 'reason.labelsTrue.few', data: { have: caught.length, rods } } as const;
  const lost = {
    key: 'reason.labelsTrue.lost',
    data: { label_m: shown(figure(worst, 'label_m'), 1), origin_m: shown(figure(worst, 'origin_m'), 1) },
  } as const;
  return {
    share_frac,
    reason:
      share_frac === 1 ? { key: 'reason.labelsTrue.full', data: { limit_m } } : right === caught.length ? few : lost,
    evidence: caught.map((event) => ({
      tick: event.tick,
      depth_m: figure(event, 'origin_m'),
      value: shown(figure(event, 'label_m') - figure(event, 'origin_m'), 2),
      unit: 'm',
    })),
  };
}

/** Share of the samples named by their own grains. Bands: rods or rod_m (samples expected). */
export function namedRight(view: RunView, bands: Bands): Judged {
  const rods = rodsExpected(view, bands);
  const tray = ownTray(view);
  if (tray.length === 0) return { share_frac: 0, reason: { key: 'reason.namedRight.none', data: {} }, evidence: [] };
  let right = 0;
  let firstWrong: (typeof tray)[number] | null = null;
  for (const sample of tray) {
    if (sample.named !== null && fittingNames(sample.shares, sample.label_m).includes(sample.named.main)) right++;
    else if (firstWrong === null) firstWrong = sample;
  }
  const share_frac = right / Math.max(rods, tray.length);
  return {
    share_frac,
    reason:
      firstWrong !== null
        ? {
            key: firstWrong.named === null ? 'reason.namedRight.unnamed' : 'reason.namedRight.lost',
            data: { sample: firstWrong.sample },
          }
        : share_frac === 1
          ? { key: 'reason.namedRight.full', data: {} }
          : { key: 'reason.namedRight.few', data: { have: tray.length, rods } },
    evidence: tray.map((sample) => ({ tick: sample.time_s, depth_m: sample.label_m })),
  };
}
