// A moment that has passed is shown as it was, whether a mark lies before it or not.
import { expect, it, vi } from 'vitest';
import { hashRun, replayRun, type Run } from '../../../sim';
import { isOver, lessonById, markOf, startRun, type Past } from '../../../lessons';
import { pastRun } from '../../../src/screens/debrief/pastRun';

// A drill that begins where another crew leaves off.
const lesson = lessonById('the-seal')!;
const run = startRun(lesson, 1);
const past: Past = { lesson, scenario: run.scenario, log: run.log, record: run.record };
const relieved = markOf(run);

async function at(tick: number, marks: (typeof relieved)[]): Promise<Run> {
  let reached: Run | null = null;
  const shown = pastRun(
    past,
    () => marks,
    (now) => (reached = now),
  );
  shown.to(tick);
  await vi.waitFor(() => expect(reached).not.toBeNull(), { timeout: 30_000 });
  shown.stop();
  return reached!;
}

it('before the learner took over, from the beginning; after a mark, from there', { timeout: 60_000 }, async () => {
  expect(isOver(run, lesson)).toBe(false);
  expect(relieved.tick).toBeGreaterThan(1000);
  for (const [tick, marks] of [
    [0, [relieved]],
    [1000, [relieved]],
    [1000, []],
    [2500, []],
  ] as const)
    expect(hashRun(await at(tick, [...marks])), `${tick}`).toBe(hashRun(replayRun(past.scenario, past.log, tick)));
});
