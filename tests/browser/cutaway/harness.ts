// What a test page needs to mount the drawing alone, without the app round it: views made by hand, or of a crew's run.
import { createCrew, isOver, lessonById, scenarioOf } from '$lessons';
import { act, createRun, sensesOf, step, type Run } from '$sim';
import { mountCutaway, type Cutaway, type CutawayOptions, type CutawayView } from '../../../src/cutaway';
import type { ViewLevel } from '../../../src/cutaway/shown';
import { cutawayView } from '../../../src/cutaway/view';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { fixtureView, type FixtureChoice } from './fixture';
import { withWell, type WellChoice } from './wellFixture';

addMessages(laterMessages);

export async function show(host: HTMLElement, options: CutawayOptions): Promise<Cutaway> {
  return mountCutaway(host, options);
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
