// Two runs side by side: which can be, that they are played to the same end again, one scale for both, and where they part.
import { describe, expect, it } from 'vitest';
import {
  createRun,
  hashRun,
  type ActionName,
  type LogEntry,
  type Payload,
  type Run,
  type RunEvent,
} from '../../../../sim';
import {
  atOnce,
  lessonById,
  lessonOfExercise,
  newExercise,
  playCrew,
  readRunFile,
  runAtMark,
  runFileOf,
  scenarioOf,
  type Lesson,
  type RunFile,
} from '../../../../lessons';
import type { SavedRun } from '../../../../src/app/records';
import { alongside, scalesOf } from '../../../../src/classroom/live/beside/alongside';
import { doingsOf, firstDifference } from '../../../../src/classroom/live/beside/difference';
import { panelsFor } from '../../../../src/classroom/live/beside/panels';
import { carefullyPlayed, playedAgain } from '../../../../src/classroom/live/beside/playedAgain';
import { besides, candidatesOf, carefulMay } from '../../../../src/classroom/live/beside/sameGround';

const lesson = lessonById('first-rods')!;
const careful = playCrew(lesson, 'careful', 7);
const green = playCrew(lesson, 'green', 7);

const kept = (id: string, run: Run, of: Lesson = lesson, more: Partial<SavedRun> = {}): SavedRun =>
  ({ id, name: id, who: 'T-01', finished: true, file: JSON.stringify(runFileOf(run, of)), ...more }) as SavedRun;

const fileOf = (run: Run, of: Lesson = lesson): RunFile => {
  const read = readRunFile(JSON.stringify(runFileOf(run, of)));
  if (!read.ok) throw new Error(read.problem);
  return read.file;
};

describe('which runs', () => {
  it('are those of the same job on the same ground, and no others', () => {
    const exercise = { ...newExercise('first-rods', 'exercise-abc123', 'Rods') };
    const ofExercise = lessonOfExercise(exercise);
    const changed = lessonOfExercise({ ...exercise, edition: 2, cap_s: 3000 });
    const all = atOnce(
      candidatesOf([
        kept('one', careful),
        kept('two', green),
        kept('elsewhere', playCrew(lesson, 'green', 8)),
        kept('exercise', createRun(scenarioOf(ofExercise, 7)), ofExercise),
        kept('edition', createRun(scenarioOf(changed, 7)), changed),
        { ...kept('older', careful), file: kept('older', careful).file.replace(/"sim":"[^"]*"/, '"sim":"0.0.1"') },
        { ...kept('broken', careful), file: '{' },
      ]),
    );
    expect(all.map(({ saved }) => saved.id)).toEqual(['one', 'two', 'elsewhere', 'exercise', 'edition']);
    const ids = (i: number): string[] => besides(all[i]!, all).map(({ saved }) => saved.id);
    expect([ids(0), ids(1), ids(2), ids(3), ids(4)]).toEqual([['two'], ['one'], [], [], []]);
  });

  it('a careful crew plays on no ground that is still being drilled', () => {
    const [over, open] = atOnce(candidatesOf([kept('one', careful), kept('two', green, lesson, { finished: false })]));
    expect([carefulMay(over!), carefulMay(open!)]).toEqual([true, false]);
  });
});

describe('played again', () => {
  it('a run comes to the same end, with marks that it can be taken up at', () => {
    const played = atOnce(playedAgain(fileOf(green), lesson))!;
    expect(hashRun(played.run)).toBe(hashRun(green));
    expect(played.marks.length).toBeGreaterThan(3);
    const mark = played.marks[2]!;
    expect(runAtMark(played.past, mark).state.tick).toBe(mark.tick);
  });

  it('a run that does not come out as its file says is none', () => {
    const file = fileOf(green);
    expect(atOnce(playedAgain({ ...file, hash: '0'.repeat(16) }, lesson))).toBeNull();
    const late = [...file.log].reverse();
    expect(atOnce(playedAgain({ ...file, log: late }, lesson))).toBeNull();
  });

  it('a careful crew plays on the same ground as it would have from the start', () => {
    expect(hashRun(atOnce(carefullyPlayed(fileOf(green), lesson)).run)).toBe(hashRun(careful));
  });
});

describe('one scale for both', () => {
  it('by time: each run at the same second, and at its end once that is over', () => {
    const { at, time_s, columns } = alongside([careful, green], 'time');
    const ends = [careful, green].map(({ record }) => record.trace.columns.time_s[record.trace.length - 1]!);
    const last = at.length - 1;
    expect(at[last]! * 60).toBeGreaterThanOrEqual(Math.max(...ends) - 10);
    expect(time_s.map((column) => column[last])).toEqual(expect.arrayContaining([Math.min(...ends)]));
    const shorter = ends[0]! < ends[1]! ? 0 : 1;
    expect(columns[`${shorter}.hole_m`]![last]).toBeNull();
    expect(columns[`${1 - shorter}.hole_m`]![last - 1]).not.toBeNull();
  });

  it('by depth: the moment at which each had first reached it, never earlier for a greater depth', () => {
    const runs = [careful, green] as const;
    const { at, time_s, columns } = alongside(runs, 'depth');
    for (const i of [0, 1] as const) {
      const { trace } = runs[i].record;
      for (let place = 1; place < at.length; place++) {
        expect(time_s[i][place]!).toBeGreaterThanOrEqual(time_s[i][place - 1]!);
        if (columns[`${i}.hole_m`]![place] === null) continue;
        const row = Array.from(trace.columns.time_s.subarray(0, trace.length)).indexOf(time_s[i][place]!);
        expect(trace.columns.depth_m[row]!).toBeGreaterThanOrEqual(at[place]! - 1e-6);
        if (row > 0) expect(Math.max(...trace.columns.depth_m.subarray(0, row))).toBeLessThan(at[place]! + 1e-6);
      }
    }
  });

  it('has a column for every line of its charts, and a well’s scale only where there is one', () => {
    expect(scalesOf([careful, green])).toEqual(['time', 'depth']);
    for (const scale of ['time', 'depth'] as const) {
      const { at, columns } = alongside([careful, green], scale);
      for (const { lines } of panelsFor(scale))
        for (const { column } of lines) expect(columns[column], column).toHaveLength(at.length);
    }
  });

  it('follows a well in hours', { timeout: 60_000 }, () => {
    const well = playCrew(lessonById('clear-water')!, 'careful', 1);
    expect(scalesOf([well, well])).toEqual(['time', 'depth', 'well']);
    const { at, columns, time_s } = alongside([well, well], 'well');
    expect(at[at.length - 1]!).toBeGreaterThan(at[0]!);
    expect(time_s[0][0]! / 3600).toBeCloseTo(at[0]!, 1);
    for (const { lines } of panelsFor('well'))
      for (const { column } of lines) expect(columns[column], column).toHaveLength(at.length);
    expect(columns['0.well_m']!.some((value) => value !== null && value > 0)).toBe(true);
  });
});

describe('where they part', () => {
  const of = (...entries: (readonly [number, ActionName, Payload?])[]) => {
    const log = entries.map(([tick, action, payload = {}]): LogEntry => [tick, action, payload]);
    return { log, record: { ...careful.record, events: [] as RunEvent[] }, state: careful.state };
  };

  it('does not part for the time, for words about it, or for how finely something is done', () => {
    const one = of(
      [0, 'readCaution', { caution: 'rods' }],
      [5, 'prime'],
      [90, 'setThrottle', { throttle_frac: 0.25 }],
      [91, 'setThrottle', { throttle_frac: 1 }],
      [100, 'lift', { distance_m: 0.1, speed_ms: 0.1 }],
    );
    const other = of(
      [7, 'prime'],
      [70, 'note', { text: 'x' }],
      [95, 'setThrottle', { throttle_frac: 1 }],
      [100, 'lift', { distance_m: 0.1, speed_ms: 0.1 }],
      [102, 'lift', { distance_m: 0.3, speed_ms: 0.1 }],
    );
    expect(firstDifference(one, other)).toBeNull();
  });

  it('parts at another act, at another amount where that is a decision, and where one does no more', () => {
    const powder = (mass_g: number) =>
      [60, 'addAdditive', { additive: 'polymer', mass_g, manner: 'sprinkled' }] as const;
    expect(firstDifference(of([5, 'prime'], powder(500)), of([9, 'prime'], powder(250)))).toEqual({
      alike: 1,
      first: { time_s: 60, action: 'addAdditive', payload: powder(500)[2] },
      second: { time_s: 60, action: 'addAdditive', payload: powder(250)[2] },
    });
    expect(firstDifference(of([5, 'prime']), of([5, 'prime'], [8, 'setTurning', { on: true }]))).toMatchObject({
      alike: 1,
      first: null,
      second: { action: 'setTurning' },
    });
  });

  it('leaves out what was refused', () => {
    const run = of([5, 'addRod'], [9, 'prime']);
    run.record.events.push({ tick: 5, name: 'refused', data: { action: 'addRod', reason: 'rodNotDown' } });
    expect(doingsOf(run).map(({ action }) => action)).toEqual(['prime']);
  });

  it('finds it between two whole runs', () => {
    const { alike, first, second } = firstDifference(careful, green)!;
    expect(first).toEqual(doingsOf(careful)[alike]);
    expect(second).toEqual(doingsOf(green)[alike]);
    expect([first!.action, first!.payload]).not.toEqual([second!.action, second!.payload]);
    expect(firstDifference(careful, careful)).toBeNull();
  });
});
