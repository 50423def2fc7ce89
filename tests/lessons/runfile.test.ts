// The run file at its boundary: what was written comes back and is reproduced; whatever was done to it is said in a sentence, and nothing throws.

import { beforeAll, describe, expect, test } from 'vitest';
import { act, createRun, createStream, hashOf, SIM_VERSION, step, type Run } from '$sim';
import {
  format,
  lessonById,
  playCrew,
  readRunFile,
  replayFile,
  RUN_FILE_LIMIT,
  runFileOf,
  scenarioOf,
  writeRunFile,
  type RunFile,
} from '$lessons';

const lesson = lessonById('first-rods')!;
let run: Run;
let text: string;
let file: RunFile;

beforeAll(() => {
  run = playCrew(lesson, 'careful', 11);
  text = writeRunFile(run, lesson, {
    who: 'T-01',
    name: 'Low Ferry, first try',
    answers: { 'firstRods.ask.stop': ['a', 'b'], 'firstRods.ask.next': 'slower' },
  });
  file = JSON.parse(text) as RunFile;
});

/** The problem that a text meets, with its sentence shown to be whole. */
function problemOf(given: string): string {
  const read = readRunFile(given);
  if (read.ok) return 'none';
  const sentence = format(read.problem, read.data);
  expect(sentence).not.toMatch(/[{}]/);
  return read.problem.replace('problem.file.', '');
}

const changed = (change: Record<string, unknown>): string => JSON.stringify({ ...file, ...change });

test('what is written is read, unchanged, and reproduced with hash and score', () => {
  const read = readRunFile(text);
  expect(read).toEqual({ ok: true, file, otherVersion: false });
  const replayed = replayFile(file);
  expect(replayed).toMatchObject({ reproduced: true, hash: file.hash, score: file.claimed.score, problem: null });
  expect(replayed.run!.record.events).toEqual(run.record.events);
});

test('an unfinished run is saved and reproduced at the tick where it stood', () => {
  const half = createRun(scenarioOf(lesson, 12, false));
  act(half, 'readCaution', { caution: 'rods' });
  act(half, 'prime', {});
  for (let i = 0; i < 100; i++) step(half);
  const saved = runFileOf(half, lesson);
  expect(saved).toMatchObject({ finished: false, ticks: 100, practice: false, who: '', name: '' });
  expect(replayFile(JSON.parse(JSON.stringify(saved)) as RunFile).reproduced).toBe(true);
});

describe('a broken file', () => {
  test('cut off at any place it is said to break off', () => {
    const whole = text.trim();
    const step = Math.max(1, Math.floor(whole.length / 400));
    for (let end = 1; end < whole.length; end += step)
      expect([end, problemOf(whole.slice(0, end))]).toEqual([end, 'truncated']);
    expect(problemOf(whole.slice(0, -1))).toBe('truncated');
  });

  test.each([
    ['', 'empty'],
    ['  \n', 'empty'],
    ['hello', 'notJson'],
    ['<html></html>', 'notJson'],
    ['{"a":1}}', 'notJson'],
    ['null', 'wrongFormat'],
    ['[]', 'wrongFormat'],
    ['42', 'wrongFormat'],
    ['{}', 'wrongFormat'],
    ['{"format":"something-else","version":1}', 'wrongFormat'],
    ['{"format":"hand-jetting-run","version":2}', 'newerFormat'],
    ['{"format":"hand-jetting-run"}', 'badField'],
  ])('%j', (given, problem) => {
    expect(problemOf(given)).toBe(problem);
  });

  test('a text of 100 MB is turned away by its size, quickly and unread', () => {
    const huge = '{"format":"hand-jetting-run",'.padEnd(100 * 1024 * 1024, ' ');
    const read = readRunFile(huge);
    expect(read).toEqual({
      ok: false,
      problem: 'problem.file.tooLarge',
      data: { size_MB: 100, limit_MB: RUN_FILE_LIMIT / 1048576 },
    });
  });

  test.each([
    ['seed', -1, 'seed'],
    ['seed', 4294967296, 'seed'],
    ['seed', '7', 'seed'],
    ['ticks', 1.5, 'ticks'],
    ['ticks', 1e9, 'ticks'],
    ['hash', 'xyz', 'hash'],
    ['claimed', { score: 101 }, 'claimed.score'],
    ['claimed', undefined, 'claimed'],
    ['finished', 'yes', 'finished'],
    ['who', 'x'.repeat(100), 'who'],
    ['log', {}, 'log'],
    ['log', [[0, 'prime']], 'log.0.2'],
    ['log', [['0', 'prime', {}]], 'log.0.0'],
    ['ground', null, 'ground'],
    ['ground', { layers: [] }, 'ground.version'],
    ['answers', { q: 3 }, 'answers.q'],
    ['extra', 1, 'extra'],
  ])('a wrong %s (%j) is named', (name, value, field) => {
    expect(readRunFile(changed({ [name]: value }))).toEqual({
      ok: false,
      problem: 'problem.file.badField',
      data: { field },
    });
  });

  test('acts that no run can hold', () => {
    const act = (...entries: unknown[]) => changed({ log: entries });
    expect(problemOf(act([0, 'fly', {}]))).toBe('badAct');
    expect(problemOf(act([0, 'setFeed', { feed_frac: 7 }]))).toBe('badAct');
    expect(problemOf(act([0, 'setFeed', { feed_frac: '1' }]))).toBe('badAct');
    expect(problemOf(act([0, 'prime', { extra: 1 }]))).toBe('badAct');
    expect(problemOf(act([9, 'prime', {}], [8, 'prime', {}]))).toBe('badAct');
    expect(problemOf(act([file.ticks + 1, 'note', { text: 'late' }]))).toBe('badAct');
  });

  test('a lesson that is not here', () => {
    expect(problemOf(changed({ lesson: 'toString' }))).toBe('unknownLesson');
  });
});

describe('a file of another version', () => {
  test('opens for reading, is never called reproduced, and its acts need not be known', () => {
    const read = readRunFile(changed({ sim: '0.0.0', log: [[0, 'dance', {}]] }));
    expect(read).toMatchObject({ ok: true, otherVersion: true });
    expect(replayFile((read as { file: RunFile }).file)).toMatchObject({
      reproduced: false,
      run: null,
      problem: { problem: 'problem.file.otherVersion' },
    });
  });

  test('another version of the lesson counts as well', () => {
    expect(readRunFile(changed({ lessonVersion: lesson.version + 1 }))).toMatchObject({ ok: true, otherVersion: true });
    expect(file.sim).toBe(SIM_VERSION);
  });
});

describe('an altered file is not reproduced', () => {
  const reasonOf = (change: Record<string, unknown>): string => {
    const read = readRunFile(changed(change));
    if (!read.ok) return read.problem;
    const replayed = replayFile(read.file);
    expect(replayed.reproduced).toBe(false);
    return replayed.problem!.problem;
  };

  test('another score', () => {
    expect(reasonOf({ claimed: { score: file.claimed.score! - 0.1 } })).toBe('problem.file.otherScore');
  });
  test('another hash, tick or seed', () => {
    expect(reasonOf({ hash: '0123456789abcdef' })).toBe('problem.file.otherHash');
    expect(reasonOf({ ticks: file.ticks - 1, log: file.log.filter(([tick]) => tick < file.ticks) })).toBe(
      'problem.file.otherHash',
    );
    expect(reasonOf({ seed: 12 })).toBe('problem.file.otherGround');
  });
  test('another ground', () => {
    const ground = structuredClone(file.ground);
    ground.layers[1]!.bottom_m += 0.1;
    expect(reasonOf({ ground })).toBe('problem.file.otherGround');
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    const read = readRunFile(text.replace('"ground":{', `"ground":{"deep":${deep},`));
    expect(read.ok && replayFile(read.file).problem?.problem).toBe('problem.file.otherGround');
  });
  test('one act less, one act moved by a second, one figure changed', () => {
    const feeds = file.log.findIndex(
      ([, action, payload]) => action === 'setFeed' && (payload.feed_frac as number) > 0,
    );
    const [tick, action] = file.log[feeds]!;
    expect(reasonOf({ log: file.log.filter((_entry, i) => i !== feeds) })).toBe('problem.file.otherHash');
    expect(
      reasonOf({ log: file.log.map((entry, i) => (i === feeds ? [tick, action, { feed_frac: 0.9 }] : entry)) }),
    ).toBe('problem.file.otherHash');
    const lift = file.log.findIndex(([, name]) => name === 'lift');
    const [at, name, payload] = file.log[lift]!;
    expect(
      reasonOf({
        log: file.log
          .map((entry, i) => (i === lift ? [at + 1, name, payload] : entry))
          .sort((a, b) => (a[0] as number) - (b[0] as number)),
      }),
    ).toBe('problem.file.otherHash');
  });
  test('a caution slipped in afterwards', () => {
    expect(reasonOf({ log: [[0, 'note', { text: 'I was careful' }], ...file.log] })).toBe('problem.file.otherHash');
  });
});

test('1,000 files with bits flipped, bytes cut, doubled or swapped: never a throw, never a wrong "reproduced"', () => {
  const stream = createStream('mutated run files');
  const whole = text.trim();
  const at = (length: number): number => Math.floor(stream.uniform() * length);
  let readable = 0;
  let replayed = 0;
  for (let i = 0; i < 1000; i++) {
    let given = whole;
    for (let change = 0; change <= at(3); change++) {
      const place = at(given.length);
      const length = 1 + at(40);
      const kind = at(4);
      if (kind === 0)
        given =
          given.slice(0, place) + String.fromCharCode(given.charCodeAt(place) ^ (1 << at(7))) + given.slice(place + 1);
      else if (kind === 1) given = given.slice(0, place) + given.slice(place + length);
      else if (kind === 2) given = given.slice(0, place) + given.slice(place, place + length) + given.slice(place);
      else
        given =
          given.slice(0, place) +
          given.slice(place + length, place + 2 * length) +
          given.slice(place, place + length) +
          given.slice(place + 2 * length);
    }
    const read = readRunFile(given);
    if (!read.ok) {
      expect(format(read.problem, read.data)).not.toMatch(/[{}]/);
      continue;
    }
    readable++;
    // Replays take a while; a few dozen of the readable ones are enough to meet each reason.
    if (replayed >= 12) continue;
    replayed++;
    const result = replayFile(read.file);
    // By content: the order of keys in a JSON object says nothing.
    const same = ['seed', 'log', 'ticks', 'hash', 'claimed', 'ground', 'lesson', 'practice'].every(
      (name) => hashOf(read.file[name as keyof RunFile]) === hashOf(file[name as keyof RunFile]),
    );
    if (!same && !read.otherVersion) expect([i, result.reproduced]).toEqual([i, false]);
    if (result.reproduced) expect(same).toBe(true);
  }
  expect(readable).toBeGreaterThan(20);
});
