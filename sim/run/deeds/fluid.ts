// Acts on the fluid: powder, stirring, the feel between fingers, the funnel.

import { feelWord } from '../../fluid/feel';
import { marshFunnel_s } from '../../fluid/funnel';
import { SOAKING } from '../../fluid/substances';
import { DURATION_s } from '../../materials/durations';
import { FUNNEL_VOLUME_m3 } from '../../materials/funnel';
import { CLUMPS_WHEN_DUMPED_frac } from '../../materials/polymer';
import { chamberDensity_kgm3, chamberRheologyInto } from '../pitSigns';
import { stirPit } from '../../pit/stir';
import { NOISE } from '../noise';
import type { Run } from '../run';
import type { Task } from '../state';
import type { Deeds } from './deed';

/** A careful funnel reading still scatters by this share. ASSUMED. */
const FUNNEL_SCATTER_ratio = 0.01;

function addShare(run: Run, task: Task): void {
  const share_kg = task.data.perTick_kg;
  const clumps_kg = share_kg * task.data.clumps_frac;
  const { suction } = run.state.pit;
  suction.clumps_kg += clumps_kg;
  suction.dissolved_kg[SOAKING] += share_kg - clumps_kg;
  run.state.boundary.dissolvedIn_kg[SOAKING] += share_kg - clumps_kg;
  run.state.boundary.polymerIn_kg += share_kg;
}

export const fluidDeeds: Deeds = {
  addAdditive: {
    refusal: (run, payload) =>
      run.state.stocks.powder_kg * 1000 < (payload.mass_g as number) - 1e-6 ? 'noPowder' : null,
    time_s: (_run, payload) => {
      if (payload.manner === 'dumped') return DURATION_s.addDumped;
      const slow_s = ((payload.mass_g as number) / 100) * DURATION_s.addSprinkled_100g;
      return Math.min(DURATION_s.addMost, Math.max(DURATION_s.addDumped, Math.ceil(slow_s)));
    },
    begin: (run, payload, task) => {
      const mass_kg = (payload.mass_g as number) / 1000;
      run.state.stocks.powder_kg = Math.max(0, run.state.stocks.powder_kg - mass_kg);
      run.state.stocks.powderUsed_kg += mass_kg;
      if (!task) return;
      task.data.perTick_kg = mass_kg / Math.max(1, task.endTick - run.state.tick);
      task.data.clumps_frac = payload.manner === 'dumped' ? CLUMPS_WHEN_DUMPED_frac : 0;
    },
    during: addShare,
  },
  stir: {
    time_s: (_run, payload) => payload.time_s as number,
    during: (run) => stirPit(run.state.pit),
  },
  feelFluid: {
    end: (run) => {
      chamberRheologyInto(run, run.state.pit.suction);
      run.state.feel = { word: feelWord(run.work.rheology), tick: run.state.tick };
    },
  },
  funnelTest: {
    end: (run) => {
      const { rheology } = run.work;
      const { suction } = run.state.pit;
      chamberRheologyInto(run, suction);
      const true_s = marshFunnel_s(
        rheology.K_Pasn,
        rheology.n_ratio,
        chamberDensity_kgm3(run, suction),
        FUNNEL_VOLUME_m3,
      );
      const read_s = true_s * (1 + FUNNEL_SCATTER_ratio * run.state.noise[NOISE.sound]);
      run.state.funnel = { seconds_s: Math.round(read_s), tick: run.state.tick };
    },
  },
};
