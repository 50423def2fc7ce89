// The verb lint of the headless command.
import { describe, expect, test } from 'vitest';
import { newExercise, writeExercise } from '$lessons';
import { call, files } from './headlessCall';

describe('lint', () => {
  test('says of an exercise, in any of its forms, whether it can be given out', () => {
    const exercise = newExercise('round-the-loop', 'exercise-file', 'A file');
    files.set('plain.json', JSON.stringify(exercise));
    files.set('covered.json', writeExercise(exercise));
    for (const file of ['plain.json', 'covered.json']) {
      const { code, err, json } = call('lint', file, '--grounds', '1');
      expect([code, err]).toEqual([0, '']);
      expect(json).toMatchObject({
        id: 'exercise-file',
        edition: 1,
        title: 'A file',
        lesson: 'round-the-loop',
        fit: true,
      });
      expect(json).toMatchObject({
        seeds: [1],
        careful_points: [expect.any(Number)],
        green_points: [expect.any(Number)],
      });
      expect(json.findings).toContainEqual({
        level: 'good',
        key: 'lint.careful.passes',
        text: expect.stringMatching(/^The careful crew can do it\. Points: \d/),
      });
    }
  });

  test('ends with 1 where something is wrong, with the sentence, why, and where', () => {
    const bands = { depthReached: { from_m: 0.6, goal_m: 9 } };
    files.set(
      'wrong.json',
      JSON.stringify({ ...newExercise('round-the-loop', 'exercise-file', 'A file'), bands, pass_points: 100 }),
    );
    const { code, json } = call('lint', 'wrong.json', '--grounds=1');
    expect([code, json.fit]).toEqual([1, false]);
    expect(json.findings).toContainEqual({
      level: 'wrong',
      key: 'lint.item.loses',
      text: expect.stringMatching(
        /^Here it loses [\d.]+ of 12 points: Depth reached\. The hole reached 2\.\d+ m of 9 m\.$/,
      ),
      field: 'weights.depthReached',
    });
  });

  test('takes no other file, and no odd number of grounds', () => {
    files.set('run-like.json', '{"format":"hand-jetting-run"}');
    expect(call('lint', 'run-like.json')).toMatchObject({ code: 2, out: '' });
    expect(call('lint', 'huge.json')).toMatchObject({ code: 2, out: '', err: expect.stringContaining('64 kB') });
    expect(call('lint', 'nothing.json')).toMatchObject({ code: 2, out: '' });
    for (const grounds of ['0', '201', 'all']) expect(call('lint', 'plain.json', '--grounds', grounds).code).toBe(2);
  });
});
