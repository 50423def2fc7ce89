// The run as it stood at a moment that has passed: from the nearest snapshot, or from its beginning where there is none before it (the
// work of a crew that was relieved has none), played on in short slices so that the page stays alive.
import { runAtMark, type Mark, type Past } from '$lessons';
import { createRun, playLog, type Run } from '$sim';

/** Job seconds played at a time, and the rest between, ms. */
const SLICE_s = 300;
const REST_ms = 4;

export interface PastRun {
  /** Goes to a moment; a moment asked for later replaces it. */
  to(tick: number): void;
  stop(): void;
}

/** The mark to play from: the last before the moment, for a run that has not taken a step shows nothing of its flow. */
const markBefore = (marks: readonly (Mark | undefined)[], tick: number): Mark | undefined =>
  marks.findLast((mark) => mark !== undefined && mark.tick < Math.max(1, tick));

/** `marks` is asked anew each time: they come while the run is replayed. `onreach` hears of the run, null while it is on its way. */
export function pastRun(
  past: Past,
  marks: () => readonly (Mark | undefined)[],
  onreach: (run: Run | null) => void,
): PastRun {
  let run: Run | null = null;
  let wanted = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function begin(): void {
    const mark = markBefore(marks(), wanted);
    const goesOn = run !== null && run.state.tick <= wanted && run.state.tick >= (mark?.tick ?? 0);
    const from = goesOn ? run! : mark ? runAtMark(past, mark) : createRun(past.scenario);
    run = from;
    onreach(null);
    go(from);
  }

  function go(from: Run): void {
    playLog(from, past.log, from.log.length, Math.min(wanted, from.state.tick + SLICE_s));
    if (from.state.tick < wanted) timer = setTimeout(() => go(from), REST_ms);
    else onreach(from);
  }

  return {
    to(tick) {
      clearTimeout(timer);
      wanted = tick;
      timer = setTimeout(begin, REST_ms);
    },
    stop: () => clearTimeout(timer),
  };
}
