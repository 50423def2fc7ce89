// What a test page needs to mount the drawing alone, without the app round it: views made by hand, or of a crew's run.
import { createCrew, isOver, lessonById, scenarioOf } from '$lessons';
import { act, createRun, sensesOf, step, type Run } from '$sim';
import type { Cutaway, CutawayOptions, CutawayView, Description } from '../../../src/cutaway';
import { mountWith } from '../../../src/cutaway/mount';
import { pageHand } from '../../../src/cutaway/pageHand';
import type { ViewLevel } from '../../../src/cutaway/shown';
import { cutawayView } from '../../../src/cutaway/view';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { fixtureView, type FixtureChoice } from './fixture';
import { withWell, type WellChoice } from './wellFixture';

addMessages(laterMessages);

/** The page draws here, so that each order is carried out when it is given. */
export async function show(
  host: HTMLElement,
  options: CutawayOptions,
): Promise<Cutaway & { describeAt(x_px: number, y_px: number): Description | null }> {
  let there: Description | null = null;
  const cutaway = await mountWith(pageHand, host, { ...options, onpoint: (what) => (there = what) });
  return {
    ...cutaway,
    describeAt(x_px, y_px) {
      cutaway.point(x_px, y_px);
      return there;
    },
  };
}

export const handMade = (choice: FixtureChoice, well?: WellChoice): CutawayView =>
  well ? withWell(fixtureView(choice), well) : fixtureView(choice);

/** The first-rods lesson played by a crew up to a moment; what it caught is logged as the crew named it. */
export function playedTo(crewName: string, seed: number, tick: number): Run {
  const lesson = lessonById('first-rods');
  if (!lesson) throw new Error('no such lesson');
  const run = createRun(scenarioOf(lesson, seed));
  const crew = createCrew(crewName);
  while (run.state.tick < tick && !isOver(run, lesson)) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, deed.payload);
    step(run);
  }
  return run;
}

export { act, cutawayView, step, type ViewLevel };
