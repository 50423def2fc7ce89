// Filling a hole in that shall not become a well.

import { fillIndex, type FillName } from '../../completion/fills';
import { fillCost_marks } from '../../completion/amounts';
import { bedTop_m } from '../../hole/hole';
import { DURATION_s } from '../../materials/durations';
import { fillTop_m } from '../casing';
import type { Run } from '../run';
import { stemPlace } from '../stem';
import type { Deed } from './deed';

/** The hole is full when what stands in it reaches this near the ground level, m. */
const FULL_m = 0.05;

const isOpen = (run: Run): boolean => fillTop_m(run, bedTop_m(run.state.hole, stemPlace(run))) > FULL_m;

export const openBackfill: Deed = {
  refusal: (run, payload) => {
    const { machine, stem } = run.state;
    const { well } = run.scenario;
    const fill = payload.material as string;
    if (!well || machine.job === 'siteSetup' || machine.job === 'drilling')
      return well ? 'stillDrilling' : 'casingNotIn';
    if (stem.rods > 0) return 'stemInHole';
    const all: readonly string[] = [...well.packs, ...well.seals];
    if (!all.includes(fill)) return 'notOffered';
    return isOpen(run) ? null : 'annulusFull';
  },
  time_s: (_run, payload) => Math.ceil((payload.volume_L as number) * DURATION_s.backfill_L),
  begin: (_run, payload, task) => {
    if (!task) return;
    task.word = payload.material as string;
    task.data.each_m3 = 1 / (1000 * DURATION_s.backfill_L);
    task.data.poured_m3 = 0;
  },
  during: (run, task) => {
    const f = fillIndex(task.word as FillName);
    if (!isOpen(run)) {
      task.endTick = run.state.tick;
      return;
    }
    run.state.completion.openFill_m3[f] += task.data.each_m3;
    task.data.poured_m3 += task.data.each_m3;
  },
  end: (run, task) => {
    const fill = task.word as FillName;
    const { poured_m3 } = task.data;
    run.state.completion.poured.push({ fill, volume_m3: poured_m3 });
    run.state.stocks.wellSpent_marks += fillCost_marks(fill, poured_m3);
  },
};
