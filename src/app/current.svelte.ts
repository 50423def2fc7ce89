// The run being played or looked back on. The playing part fills it in; the first screen only asks whether it is there.
import type { Steered } from '../classroom/live/steered.svelte';
import type { Worked } from './example.svelte';
import type { Keeper } from './keeper';
import type { Session } from './session.svelte';

class Current {
  session: Session | null = $state.raw(null);
  keeper: Keeper | null = $state.raw(null);
  /** The worked example that the session is, or was until the learner took over. */
  worked: Worked | null = $state.raw(null);
  /** The talk with the steering window, while the work screen stands. */
  steered: Steered | null = $state.raw(null);

  close(): void {
    this.session?.keep();
    this.session?.dispose();
    this.session = null;
    this.keeper = null;
    this.worked = null;
  }

  /** Puts the run away without keeping it: it was deleted. */
  drop(): void {
    this.session?.dispose();
    this.session = null;
    this.keeper = null;
    this.worked = null;
  }
}

export const current = new Current();
