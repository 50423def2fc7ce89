// The present run as a file even when something broke: as a run file if that still works, else its bare log.
import { current } from './current.svelte';

export function rescueFile(): string {
  const { session, keeper } = current;
  if (!session) return '';
  try {
    if (keeper) return keeper.file(session.run);
  } catch {
    // The run itself is broken: what was done is still in its log.
  }
  const { scenario, log } = session.run;
  return JSON.stringify({ rescued: true, lesson: scenario.id, seed: scenario.seed, log });
}
