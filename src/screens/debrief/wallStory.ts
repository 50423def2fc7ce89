// What the wall of the hole did, cause by cause: when and where it began, and how much of it went. For the debrief only:
// at the hole a crew has nothing but the signs.
import { CAUSES, type Cause, type Run, type RunEvent } from '$sim';

export interface WallChapter {
  readonly cause: Cause;
  /** Ground that fell or was washed off, or room that clay took, L. */
  readonly taken_L: number;
  /** Where it began, the first few times. */
  readonly places: readonly WallPlace[];
  readonly more: number;
}

export interface WallPlace {
  readonly time_s: number;
  readonly from_m: number;
  readonly to_m: number;
}

const SHOWN = 3;
/** Less than this is not worth a sentence, L: a cupful. */
const LEAST_L = 0.25;

const placeOf = ({ tick, data }: RunEvent): WallPlace => ({
  time_s: tick,
  from_m: Number(data['from_m']),
  to_m: Number(data['to_m']),
});

/** The causes that took anything, the heaviest first. */
export function wallStory(run: Pick<Run, 'state' | 'record'>): WallChapter[] {
  const told = run.record.events.filter(({ name }) => name === 'wallFails');
  return CAUSES.map((cause, index) => {
    const places = told.filter(({ data }) => data['cause'] === cause).map(placeOf);
    return {
      cause,
      taken_L: 1000 * (run.state.wall.taken_m3[index] ?? 0),
      places: places.slice(0, SHOWN),
      more: Math.max(0, places.length - SHOWN),
    };
  })
    .filter(({ taken_L }) => taken_L >= LEAST_L)
    .sort((a, b) => b.taken_L - a.taken_L);
}
