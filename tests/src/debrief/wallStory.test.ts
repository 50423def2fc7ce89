// What the wall did, cause by cause, with words for each.
import { expect, it } from 'vitest';
import { CAUSES, type Run } from '$sim';
import { hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { addMessages } from '../../../src/words/messages';
import { wallStory } from '../../../src/screens/debrief/wallStory';

addMessages(laterMessages);

const told = (tick: number, cause: string) => ({
  tick,
  name: 'wallFails' as const,
  data: { cause, from_m: 2, to_m: 2.5, level_m: 1 },
});

function runWith(taken_L: Record<string, number>, events: ReturnType<typeof told>[]): Pick<Run, 'state' | 'record'> {
  const taken_m3 = Float64Array.from(CAUSES, (cause) => (taken_L[cause] ?? 0) / 1000);
  return { state: { wall: { taken_m3 } }, record: { events } } as unknown as Run;
}

it('tells the heaviest cause first, with its first places and a count of the rest; what took next to nothing is left out', () => {
  const events = [100, 500, 900, 1300].map((tick) => told(tick, 'level'));
  const story = wallStory(runWith({ level: 12, swab: 30, washout: 0.1 }, [...events, told(50, 'swab')]));
  expect(story.map(({ cause }) => cause)).toEqual(['swab', 'level']);
  expect(story[1]!.taken_L).toBeCloseTo(12, 9);
  expect(story[1]!.places).toHaveLength(3);
  expect(story[1]!.more).toBe(1);
  expect(story[0]!.places).toEqual([{ time_s: 50, from_m: 2, to_m: 2.5 }]);
});

it('has a sentence and advice for every cause', () => {
  for (const cause of CAUSES)
    for (const key of [`wall.${cause}`, `wall.${cause}.next`]) expect(hasMessage(key), key).toBe(true);
});
