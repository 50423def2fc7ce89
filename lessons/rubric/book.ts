// Items of the category log that judge the book: own layers against own samples, and the record of the finished well.

import { acceptedActs } from './episodes';
import { fittingNames } from './grains';
import { bookedLayers } from './layers';
import { bandOf, type Bands, type Judged, type RunView } from './item';

/** Rod length by which samples are expected, m. */
const ROD_m = 1.5;

/** Share of the samples that lie in a layer of the book with a name that fits their own grains. The true ground is not looked at. No bands. */
export function ownLogTrue(view: RunView): Judged {
  const layers = view.well?.ownLog ?? bookedLayers(view);
  if (layers.length === 0 || view.tray.length === 0)
    return { share_frac: 0, reason: { key: 'reason.ownLogTrue.none', data: {} }, evidence: [] };
  let right = 0;
  let wrong_m = -1;
  for (const { label_m, shares } of view.tray) {
    const layer = layers.find(({ from_m, to_m }) => label_m >= from_m && label_m <= to_m);
    if (layer !== undefined && fittingNames(shares, label_m).includes(layer.kind)) right++;
    else if (wrong_m < 0) wrong_m = label_m;
  }
  const wanted = Math.max(view.tray.length, Math.floor(view.depth_m / ROD_m));
  const share_frac = right / wanted;
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.ownLogTrue.full', data: { layers: layers.length } }
        : wrong_m >= 0
          ? { key: 'reason.ownLogTrue.lost', data: { depth_m: wrong_m } }
          : { key: 'reason.ownLogTrue.few', data: { have: view.tray.length, wanted } },
    evidence: layers.map(({ from_m, to_m }) => ({ depth_m: from_m, value: to_m, unit: 'm' })),
  };
}

/** Fields of the driller's record that were filled in by hand (reference section 11: what such records always ask). Bands: fields. */
export function recordKept(view: RunView, bands: Bands): Judged {
  const wanted = bandOf(bands, 'fields');
  const filled = new Map<string, number>();
  for (const [tick, , payload] of acceptedActs(view, 'record')) {
    const { field, text } = payload as { field?: string; text?: string };
    if (field === undefined) continue;
    if ((text ?? '').trim() === '') filled.delete(field);
    else filled.set(field, tick);
  }
  const have = filled.size;
  return {
    share_frac: Math.min(1, have / wanted),
    reason: { key: have >= wanted ? 'reason.recordKept.full' : 'reason.recordKept.lost', data: { have, wanted } },
    evidence: [...filled.values()].map((tick) => ({ tick })),
  };
}
