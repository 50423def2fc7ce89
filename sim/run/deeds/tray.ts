// Catching a sample at the mouth: a share of what comes up while the hand is under the stream.

import { CLASS_COUNT } from '../../materials/sizes';
import { tell } from '../tell';
import type { Deeds } from './deed';

export const trayDeeds: Deeds = {
  catchSample: {
    refusal: (run) => (run.state.machine.returns === 'none' ? 'noReturns' : null),
    begin: (run, payload, task) => {
      if (!task) return;
      task.data.label_m = payload.label_m as number;
      run.state.caught.solids_m3.fill(0);
      run.state.caught.moment_m4.fill(0);
    },
    end: (run, task) => {
      const { state } = run;
      const solids_m3 = Array.from(state.caught.solids_m3);
      const moment_m4 = Array.from(state.caught.moment_m4);
      const sample = state.samples.length + 1;
      let volume_m3 = 0;
      let moment = 0;
      for (let k = 0; k < CLASS_COUNT; k++) {
        volume_m3 += solids_m3[k];
        moment += moment_m4[k];
      }
      state.samples.push({
        sample,
        tick: state.tick,
        label_m: task.data.label_m,
        solids_m3,
        moment_m4,
        colour: state.signs.colour,
        named: null,
      });
      tell(run, 'sampleCaught', {
        sample,
        label_m: task.data.label_m,
        origin_m: volume_m3 > 0 ? moment / volume_m3 : -1,
        volume_L: volume_m3 * 1000,
      });
    },
  },
};
