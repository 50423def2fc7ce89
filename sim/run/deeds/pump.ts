// Acts on the pump and its strainer.

import { DURATION_s } from '../../materials/durations';
import { suctionHeadAtRest_m } from '../../hydraulics/flow';
import { levelBelowRim_m } from '../../pit/level';
import { clearStrainer, strainerCovered } from '../../pit/strainer';
import { chamberDensity_kgm3 } from '../pitSigns';
import { tell } from '../tell';
import type { Deeds } from './deed';

/** Filling the line through a burnt seal takes so much longer. ASSUMED. */
const BURNT_SEAL_ratio = 2;

export const pumpDeeds: Deeds = {
  prime: {
    refusal: (run) =>
      run.state.pump.primed ? 'alreadyPrimed' : run.state.pump.throttle_frac > 0 ? 'pumpRunning' : null,
    time_s: (run) =>
      Math.round(
        (DURATION_s.primeLeast + (DURATION_s.primeMost - DURATION_s.primeLeast) * run.streams.prime.uniform()) *
          (run.state.pump.sealBurnt ? BURNT_SEAL_ratio : 1),
      ),
    end: (run) => {
      const { pit } = run.state;
      const uncovered = !strainerCovered(pit);
      const density_kgm3 = chamberDensity_kgm3(run, pit.suction);
      // Higher than the air can push it no water comes, however often the line is filled.
      if (uncovered || suctionHeadAtRest_m(run.kit, density_kgm3, levelBelowRim_m(pit.suction)) <= 0) {
        tell(run, 'primeFailed', { cause: uncovered ? 'air' : 'lift' });
        return;
      }
      run.state.pump.primed = true;
      tell(run, 'primed', {});
    },
  },
  setThrottle: {
    refusal: (run, payload) => {
      if (payload.throttle_frac === 0) return null;
      if (run.state.faults.engineDead) return 'engineDead';
      if (!run.state.pump.primed) return 'pumpDry';
      return run.state.stocks.petrol_L <= 0 ? 'noPetrol' : null;
    },
    begin: (run, payload) => {
      run.state.pump.throttle_frac = payload.throttle_frac as number;
    },
  },
  clearStrainer: {
    end: (run) => {
      const { pump, pit } = run.state;
      clearStrainer(pit);
      // Lifting the strainer out while the pump draws lets air in.
      if (pump.throttle_frac > 0 && pump.primed) {
        pump.primed = false;
        tell(run, 'primeLost', { cause: 'strainerLifted' });
      }
    },
  },
  setStrainer: {
    begin: (run, payload, task) => {
      if (task) task.data.height_m = Math.min(payload.height_m as number, run.state.pit.suction.depth_m);
    },
    end: (run, task) => {
      run.state.pit.strainer_m = task.data.height_m;
    },
  },
};
