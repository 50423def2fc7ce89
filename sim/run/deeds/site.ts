// Choosing the spot for the hole on the plan of the site.

import { groundOf } from '../ground';
import type { RefusalKey } from '../names';
import type { Run } from '../run';
import { tell } from '../tell';
import type { Deeds } from './deed';

/** Has the present hole been begun with the bit? */
export const holeBegun = ({ state, scenario }: Run): boolean =>
  state.stem.turning || state.hole.depth_m > scenario.opening.starter_m;

/** The first spot is settled with the digging of the pit where the crew digs it, every spot with the first turn of the bit. */
function settled(run: Run): boolean {
  const { state, scenario } = run;
  if (holeBegun(run)) return true;
  const digging = state.site.pitDug || state.tasks.some((task) => task.action === 'setOut');
  return scenario.opening.setOut === true && state.holeNumber === 1 && digging;
}

function spotRefusal(run: Run, spot: string): RefusalKey | null {
  if (!groundOf(run).site.spots.some(({ id }) => id === spot)) return 'noSuchSpot';
  return settled(run) ? 'siteSettled' : null;
}

export const siteDeeds: Deeds = {
  chooseSite: {
    refusal: (run, payload) => spotRefusal(run, payload.spot as string),
    begin: (run, payload) => {
      run.state.site.spot = payload.spot as string;
      tell(run, 'siteChosen', { spot: run.state.site.spot });
    },
  },
};
