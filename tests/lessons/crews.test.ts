// Crews read only the senses, keep plain memories, and go on from any moment.

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { act, createRun, sensesOf, step, type Senses } from '$sim';
import { CREWS, createCrew, isCrewName, isOver, lessonById, outcomeOf, playOn, scenarioOf } from '$lessons';

const lesson = lessonById('first-rods')!;

/** The senses behind a guard: reading what is not there, or writing, fails. */
function guarded<T extends object>(value: T, path = 'senses'): T {
  return new Proxy(value, {
    get(target, key) {
      const found = Reflect.get(target, key);
      if (typeof key === 'string' && !Object.hasOwn(target, key) && !Array.isArray(target))
        throw new Error(`${path}.${key} is not a sense`);
      if (typeof found === 'function') return found.bind(target);
      return typeof found === 'object' && found !== null ? guarded(found as object, `${path}.${String(key)}`) : found;
    },
    set(_target, key) {
      throw new Error(`${path}.${String(key)} was written`);
    },
  });
}

test('crew files know the simulator only by its types', () => {
  for (const name of readdirSync('lessons/crews').filter((file) => file.endsWith('.ts'))) {
    const text = readFileSync(`lessons/crews/${name}`, 'utf8');
    for (const [line, from] of text.matchAll(/^import .* from '([^']+)';$/gm)) {
      if (from === '$sim') expect([name, line.startsWith('import type')]).toEqual([name, true]);
      else expect([name, from!.startsWith('./') || from === '../hazards']).toEqual([name, true]);
    }
    for (const [, names] of text.matchAll(/^import type \{([^}]+)\} from '\$sim'/gm)) {
      for (const type of names!.split(',').map((part) => part.trim()))
        expect([
          name,
          ['Senses', 'ActionName', 'KindWord', 'MendWord', 'WellPlan', 'Site', 'Contamination'].includes(type),
        ]).toEqual([name, true]);
    }
  }
});

test.each(CREWS.map((name) => [name]))(
  '%s reads only what is a sense, writes none, and keeps a plain memory',
  (name) => {
    const run = createRun(scenarioOf(lesson, 3));
    const crew = createCrew(name);
    while (!isOver(run, lesson) && run.state.tick < 3000) {
      const deed = crew.decide(guarded(sensesOf(run)));
      if (deed !== null) expect(['done', 'refused']).toContain(act(run, deed.action, deed.payload).kind);
      step(run);
    }
    expect(JSON.parse(JSON.stringify(crew.memory))).toEqual(crew.memory);
  },
);

test.each(CREWS.map((name) => [name]))('%s does the same for the same senses', (name) => {
  const run = createRun(scenarioOf(lesson, 5));
  const seen: Senses[] = [];
  const crew = createCrew(name);
  const deeds: unknown[] = [];
  while (run.state.tick < 600) {
    const senses = sensesOf(run);
    seen.push(structuredClone(senses));
    const deed = crew.decide(senses);
    deeds.push(deed);
    if (deed !== null) act(run, deed.action, deed.payload);
    step(run);
  }
  const again = createCrew(name);
  expect(seen.map((senses) => again.decide(senses))).toEqual(deeds);
});

test('a crew asks for little: refused acts are left alone for a while; of what is done by chance at least half is accepted', () => {
  for (const name of CREWS) {
    const run = createRun(scenarioOf(lesson, 9));
    const crew = createCrew(name);
    while (!isOver(run, lesson)) {
      const deed = crew.decide(sensesOf(run));
      if (deed !== null) act(run, deed.action, deed.payload);
      step(run);
    }
    const refused = run.record.events.filter((event) => event.name === 'refused').length;
    expect([name, refused < run.log.length / (name === 'random' ? 2 : 4)]).toEqual([name, true]);
  }
});

test.each([
  ['no petrol', { petrol_L: 0 }],
  ['petrol for a quarter of an hour', { petrol_L: 0.2 }],
  ['a pit a third full and no water', { pit_L: 300, water_L: 0 }],
  ['one rod only', { rodsInAll: 1 }],
])('with %s every crew still ends the job by their own act', (_name, opening) => {
  for (const name of CREWS) {
    const poor = { ...lesson, opening: { ...lesson.opening, ...opening } };
    const run = playOn(createRun(scenarioOf(poor, 2)), poor, createCrew(name));
    expect([name, outcomeOf(run, poor).key]).not.toEqual([name, 'outcome.timeUp']);
    expect(['pullingOut', 'abandoned']).toContain(run.state.machine.job);
  }
});

test('an unknown crew is turned away', () => {
  expect(isCrewName('toString')).toBe(false);
  expect(() => createCrew('toString')).toThrow(RangeError);
});
