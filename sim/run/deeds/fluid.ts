// Acts on the fluid: additives, stirring, the feel between fingers, the funnel.

import { feelWord } from '../../fluid/feel';
import { marshFunnel_s } from '../../fluid/funnel';
import { FUNNEL_VOLUME_m3 } from '../../materials/funnel';
import { chamberDensity_kgm3, chamberRheologyInto } from '../pitSigns';
import { stirPit } from '../../pit/stir';
import { addAdditive } from './additive';
import { NOISE } from '../noise';
import type { Deeds } from './deed';

/** The pit tastes of salt from here on, g/L. From memory: chloride is tasted at 200-300 mg/L (WHO guidelines for drinking-water). */
const TASTED_gL = 0.5;
/** A conductivity pen shows the returns as saltier than the pit from here on, g/L. ASSUMED: some 60 uS/cm, and a pen shows 10. */
const PEN_gL = 0.03;
/** A careful funnel reading still scatters by this share. ASSUMED. */
const FUNNEL_SCATTER_ratio = 0.01;

export const fluidDeeds: Deeds = {
  addAdditive,
  stir: {
    time_s: (_run, payload) => payload.time_s as number,
    during: (run) => stirPit(run.state.pit),
  },
  feelFluid: {
    // The returns are read as the hand goes in.
    begin: (run, _payload, task) => {
      if (task) task.data.salt_gL = run.state.signs.salt_gL;
    },
    end: (run, task) => {
      chamberRheologyInto(run, run.state.pit.suction);
      const { rheology, chamberReading } = run.work;
      const { tick } = run.state;
      run.state.feel = {
        word: feelWord(rheology, chamberReading.soaked_gL),
        salty: chamberReading.salt_gL >= TASTED_gL || task.data.salt_gL - chamberReading.salt_gL >= PEN_gL,
        tick,
      };
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
