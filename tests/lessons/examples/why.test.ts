// Worked examples: each act of the careful crew has its sentence, and the sentence fits what can be seen.

import { expect, test } from 'vitest';
import { act, createRun, sensesOf, step, type Senses } from '$sim';
import { createCrew, isOver, isWordKey, jobOf, lessonById, scenarioOf, whyOf, type Deed, type WordKey } from '$lessons';

/** What the careful crew did in a lesson, each with its senses and its sentence. */
function explained(id: string, seed: number): { deed: Deed; senses: Senses; why: WordKey | null }[] {
  const lesson = lessonById(id)!;
  const scenario = scenarioOf(lesson, seed);
  const run = createRun(scenario);
  const crew = createCrew('careful', jobOf(lesson, scenario));
  const found = [];
  while (!isOver(run, lesson)) {
    const senses = sensesOf(run);
    const deed = crew.decide(senses);
    if (deed !== null) {
      found.push({ deed, senses, why: whyOf(deed, senses) });
      act(run, deed.action, deed.payload);
    }
    do step(run);
    while (run.state.wait !== null && !isOver(run, lesson));
  }
  return found;
}

test('every act of the careful crew in the first rods and in a whole well has a sentence', () => {
  for (const id of ['first-rods', 'open-well']) {
    const found = explained(id, 1);
    expect(found.length).toBeGreaterThan(20);
    for (const { deed, why } of found)
      expect([deed.action, why !== null && isWordKey(why)]).toEqual([deed.action, true]);
  }
}, 120_000);

test('more and less weight are told apart by what comes back and by the handle', () => {
  const found = explained('first-rods', 2).filter(({ deed }) => deed.action === 'setFeed');
  for (const { deed, senses, why } of found) {
    const feed_frac = deed.payload.feed_frac as number;
    if (feed_frac > 0 && senses.stem.feed_frac === 0) expect(why).toBe('why.feedOn');
    else if (feed_frac > senses.stem.feed_frac) expect(why).toBe('why.feedMore');
    else if (feed_frac > 0) expect(why).toMatch(/^why\.feedLess/);
    else expect(why).toMatch(/^why\.feedOff/);
  }
  expect(new Set(found.map(({ why }) => why)).size).toBeGreaterThan(2);
}, 60_000);

test('an act that nobody has a sentence for says nothing', () => {
  const senses = sensesOf(createRun(scenarioOf(lessonById('first-rods')!, 1)));
  expect(whyOf({ action: 'note', payload: { text: 'x' } }, senses)).toBeNull();
});
