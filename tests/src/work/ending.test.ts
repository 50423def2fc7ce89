// Every lesson can be ended at the hole by its own hands, and a pit that is to be filled has its hand.
import { beforeAll, describe, expect, it } from 'vitest';
import { createRun } from '$sim';
import { LESSONS, PRACTICES, scenarioOf, type Lesson } from '$lessons';
import { Session } from '../../../src/app/session.svelte';
import { Desk } from '../../../src/hands/desk.svelte';
import { handsOffered } from '../../../src/screens/work/offer';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

beforeAll(() => addMessages(laterMessages));

function handsAtFirst(lesson: Lesson): string[] {
  const run = createRun(scenarioOf(lesson, 7));
  const session = new Session({ lesson, run, frames: { request: () => 1, cancel: () => undefined } });
  return handsOffered(lesson, new Desk(session), false).flatMap((set) => set.hands.map((hand) => hand.id));
}

describe('the hands while it is drilled', () => {
  it.each([...LESSONS, ...PRACTICES].map((lesson) => [lesson.id, lesson] as const))(
    'can stop the drilling, once: %s',
    (_id, lesson) => {
      expect(handsAtFirst(lesson).filter((id) => id === 'stopDrilling')).toHaveLength(1);
    },
  );

  it('fill the pit where it is dug or begins low, and only there', () => {
    const filling = LESSONS.filter((lesson) => handsAtFirst(lesson).includes('fillPit')).map(({ id }) => id);
    const expected = LESSONS.filter(({ id, opening }) => opening.setOut === true || id === 'round-the-loop');
    expect(filling).toEqual(expected.map(({ id }) => id));
  });
});
