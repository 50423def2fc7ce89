// Crews that follow each other: one is relieved by whoever plays, who may leave the rest to another.

import { jobOver } from '../jobOver';
import { tell } from '../tell';
import type { Deeds } from './deed';

export const crewDeeds: Deeds = {
  relieveCrew: {
    refusal: ({ scenario, state }) => (scenario.relieves && !state.relief ? null : 'notOffered'),
    begin: (run) => {
      const { tick, hole, stocks } = run.state;
      const { waterUsed_L, powderUsed_kg } = stocks;
      run.state.relief = { tick, depth_m: hole.depth_m, waterUsed_L, powderUsed_kg };
      tell(run, 'crewRelieved', {});
    },
  },
  leaveToCrew: {
    refusal: (run) => {
      const { scenario, state } = run;
      if (jobOver(run)) return 'ended';
      if (!scenario.leavesFrom || state.leaving === 'left') return 'notOffered';
      return state.leaving === 'offered' ? null : 'tooSoonToLeave';
    },
    begin: (run) => {
      run.state.leaving = 'left';
      tell(run, 'leftToCrew', {});
    },
  },
};
