// The tray as a crew sees it. A sample looks the same at each look, so its view is kept in the scratch memory beside what it was made of.

import type { ColourWord } from './names';
import { roundTo } from './roundTo';
import type { RunState, Sample } from './state';

export interface TraySample {
  readonly sample: number;
  readonly time_s: number;
  readonly label_m: number;
  /** Share of each size class as the eye takes it, to the nearest twentieth. */
  readonly shares: readonly number[];
  readonly colour: ColourWord;
  readonly named: Sample['named'];
}

/** What a sample held, and its view: good as long as it is the same sample, grain by grain. */
export interface SeenSample {
  readonly solids_m3: readonly number[];
  readonly view: TraySample;
}

function isSeen(sample: Sample, seen: SeenSample | undefined): boolean {
  if (seen === undefined) return false;
  const { solids_m3, view } = seen;
  if (view.named !== sample.named || view.sample !== sample.sample || view.time_s !== sample.tick) return false;
  if (view.label_m !== sample.label_m || view.colour !== sample.colour) return false;
  for (let k = 0; k < solids_m3.length; k++) if (solids_m3[k] !== sample.solids_m3[k]) return false;
  return solids_m3.length === sample.solids_m3.length;
}

function viewOf(sample: Sample): TraySample {
  let total = 0;
  for (const v of sample.solids_m3) total += v;
  const shares = sample.solids_m3.map((v) => (total > 0 ? roundTo(v / total, 0.05) : 0));
  return {
    sample: sample.sample,
    time_s: sample.tick,
    label_m: sample.label_m,
    shares,
    colour: sample.colour,
    named: sample.named,
  };
}

/** The samples caught up to now, as seen; kept: views of earlier looks, in the order of the samples. */
export function trayOf({ samples, tick }: RunState, kept: SeenSample[]): TraySample[] {
  const tray: TraySample[] = [];
  for (let i = 0; i < samples.length; i++) {
    const sample = samples[i];
    if (sample.tick > tick) continue;
    if (!isSeen(sample, kept[i])) kept[i] = { solids_m3: [...sample.solids_m3], view: viewOf(sample) };
    tray.push(kept[i].view);
  }
  return tray;
}
