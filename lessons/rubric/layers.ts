// The own log against the ground that was met: are the changes where the book has them? Where the tray shows no change none is asked for.

import type { KindWord, SoilKind } from '$sim';
import { acceptedActs, eventsNamed, figure } from './episodes';
import { bandOf, shown, type Bands, type Judged, type RunView } from './item';

/** The word that a tray gives to each kind of ground. */
const WORD_OF: Readonly<Record<SoilKind, KindWord>> = {
  topsoil: 'topsoil',
  lateriticCrust: 'gravel',
  softClay: 'clay',
  firmClay: 'clay',
  stiffClay: 'clay',
  swellingClay: 'clay',
  silt: 'silt',
  siltySand: 'siltySand',
  fineSand: 'fineSand',
  mediumSand: 'mediumSand',
  coarseSand: 'coarseSand',
  fineGravel: 'gravel',
  coarseGravel: 'gravel',
  cobbles: 'gravel',
  peat: 'peat',
  weatheredRock: 'gravel',
};

interface Booked {
  readonly from_m: number;
  readonly to_m: number;
  readonly kind: KindWord;
}

/** The layers as the book has them at the end: a later entry replaces what it covers. */
export function bookedLayers(view: Pick<RunView, 'log' | 'events'>): Booked[] {
  let layers: Booked[] = [];
  for (const [, , payload] of acceptedActs(view, 'logLayer')) {
    const { from_m = 0, to_m = 0, kind = 'unknown' } = payload as Partial<Booked>;
    layers = layers.flatMap((layer) => [
      ...(layer.from_m < from_m ? [{ ...layer, to_m: Math.min(layer.to_m, from_m) }] : []),
      ...(layer.to_m > to_m ? [{ ...layer, from_m: Math.max(layer.from_m, to_m) }] : []),
    ]);
    layers.push({ from_m, to_m, kind });
  }
  return layers.sort((a, b) => a.from_m - b.from_m);
}

/** Depths at which the book has one word above and another below. */
function bookedChanges_m(layers: readonly Booked[], from_m: number): number[] {
  const changes: number[] = [];
  for (let i = 1; i < layers.length; i++)
    if (layers[i]!.kind !== layers[i - 1]!.kind && layers[i]!.from_m > from_m) changes.push(layers[i]!.from_m);
  return changes;
}

/** Depths at which the ground that was met changes as a tray shows it. */
function metChanges_m(view: RunView): number[] {
  const changes: number[] = [];
  let above: KindWord | null = null;
  for (const event of eventsNamed(view, 'layerChanged')) {
    const word = WORD_OF[event.data.kind as SoilKind];
    if (word !== above) changes.push(figure(event, 'depth_m'));
    above = word;
  }
  return changes;
}

/** Takes the booked changes that lie near those met, one for each, the higher ones first; gives back the ones met that found none. */
function matched(met: readonly number[], booked: number[], limit_m: number): number[] {
  return met.filter((at_m) => {
    const near = booked.findIndex((depth_m) => Math.abs(depth_m - at_m) <= limit_m);
    if (near < 0) return true;
    booked.splice(near, 1);
    return false;
  });
}

/** A step too many in the book misleads less than a change that is missing: it counts so much of one. ASSUMED. */
const EXTRA_frac = 0.5;

/** Changes found within the limit, over those that were met and half of those booked beyond them. Bands: from_m (changes above are not asked for), limit_m, unseen_m (nor those in the last of the hole). */
export function changesFound(view: RunView, bands: Bands): Judged {
  const from_m = bandOf(bands, 'from_m');
  const limit_m = bandOf(bands, 'limit_m');
  const booked = bookedChanges_m(bookedLayers(view), from_m);
  if (booked.length === 0)
    return { share_frac: 0, reason: { key: 'reason.changesFound.none', data: {} }, evidence: [] };
  const changes = metChanges_m(view);
  const lowest_m = view.depth_m - bandOf(bands, 'unseen_m');
  const asked = (at_m: number): boolean => at_m > from_m && at_m < lowest_m;
  const met = changes.filter(asked);
  const free = [...booked];
  const missed = matched(met, free, limit_m);
  // Who books what is not asked for is not wrong.
  matched(
    changes.filter((at_m) => !asked(at_m)),
    free,
    limit_m,
  );
  const have = met.length - missed.length;
  const all = met.length + EXTRA_frac * Math.max(0, free.length - missed.length);
  const share_frac = all === 0 ? 1 : have / all;
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.changesFound.full', data: { have, limit_m } }
        : missed.length > 0
          ? { key: 'reason.changesFound.missed', data: { have, all: met.length, depth_m: shown(missed[0]!, 1) } }
          : { key: 'reason.changesFound.many', data: { extra: free.length } },
    evidence: met.map((depth_m) => ({ depth_m: shown(depth_m, 2) })),
  };
}
