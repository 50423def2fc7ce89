// Acts on the fluid: additives, stirring, the feel between fingers, the funnel.

import { feelWord } from '../../fluid/feel';
import { marshFunnel_s } from '../../fluid/funnel';
import { FUNNEL_VOLUME_m3 } from '../../materials/funnel';
import { chamberDensity_kgm3, chamberRheologyInto } from '../pitSigns';
import { stirPit } from '../../pit/stir';
import { addAdditive } from './additive';
import { NOISE } from '../noise';
import type { Deeds } from './deed';

/** A careful funnel reading still scatters by this share. ASSUMED. */
const FUNNEL_SCATTER_ratio = 0.01;

export const fluidDeeds: Deeds = {
  addAdditive,
  stir: {
    time_s: (_run, payload) => payload.time_s as number,
    during: (run) => stirPit(run.state.pit),
  },
  feelFluid: {
    end: (run) => {
      chamberRheologyInto(run, run.state.pit.suction);
      run.state.feel = { word: feelWord(run.work.rheology, run.work.chamberReading.soaked_gL), tick: run.state.tick };
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
