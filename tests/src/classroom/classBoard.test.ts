// The class board without a page: results come in, each is told rightly; they are there again when the board is opened anew; all can be forgotten.
import { beforeAll, expect, it, vi } from 'vitest';
import { packResult, readResult, resultParts } from '$lessons';
import { device } from '../../../src/app/device.svelte';
import { ClassBoard } from '../../../src/classroom/board/board.svelte';
import { sorted } from '../../../src/classroom/board/came';
import { aClass, EXERCISE, handedIn, type Handed } from '../../lessons/results/aClass';

let handed: Handed[];

beforeAll(async () => {
  await device.putExercise({ id: EXERCISE.id, exercise: EXERCISE, saved_ms: 1, own: true, classCode: null });
  handed = aClass({ good: 4, altered: 4, cut: 2, older: 2, again: 2 });
});

async function judged(board: ClassBoard): Promise<void> {
  await vi.waitFor(() => expect(board.progress.done).toBe(board.progress.all), { timeout: 60_000, interval: 50 });
}

it('tells results rightly, keeps them, and forgets them', async () => {
  const board = new ClassBoard(EXERCISE.id);
  const told = await board.take(handed);
  const count = (wanted: Handed['wanted']): number => handed.filter((one) => one.wanted === wanted).length;
  const alteredRead = handed.filter(({ wanted, text }) => wanted === 'altered' && readResult(text).ok).length;
  expect(told.again).toBe(count('again'));
  expect(told.refused.length).toBe(count('refused') + count('altered') - alteredRead);
  expect(told.taken).toBe(count('reproduced') + count('otherVersion') + alteredRead);
  await judged(board);
  for (const { from, judgement } of board.entries) {
    const { wanted } = handed.find((one) => one.from === from)!;
    const verdict = wanted === 'altered' ? 'notReproduced' : wanted;
    expect([from, judgement!.verdict]).toEqual([from, verdict]);
    expect((judgement!.problem === null) === (verdict === 'reproduced')).toBe(true);
    if (verdict === 'reproduced') expect(judgement!.ownSeed).toBe(true);
  }
  expect(board.board.counted).toHaveLength(count('reproduced'));
  board.close();

  const anew = new ClassBoard(EXERCISE.id);
  await anew.open();
  await judged(anew);
  expect(anew.entries.map(({ id }) => id)).toEqual(board.entries.map(({ id }) => id));
  expect(anew.board).toEqual(board.board);
  await anew.removeAll();
  expect(anew.entries).toEqual([]);
  expect(await device.storage.all('results')).toEqual([]);
  anew.close();
}, 120_000);

it('waits for the parts of a result, in whatever order they come', async () => {
  const result = handedIn(3);
  const parts = resultParts(packResult(result), 300)!;
  expect(parts.length).toBeGreaterThan(1);
  const board = new ClassBoard(EXERCISE.id);
  const [last, ...others] = [...parts].reverse();
  expect(await board.take([{ from: 'a.jpg', text: last! }])).toMatchObject({
    taken: 0,
    refused: [],
    open: [{ there: 1, of: parts.length }],
  });
  expect(await board.take(others.map((text) => ({ from: 'b.jpg', text })))).toMatchObject({ taken: 1, open: [] });
  expect(board.entries[0]!.result).toEqual(result);
  await board.removeAll();
  board.close();
});

it('finds results in a pasted message, and says of one without any what is wrong', () => {
  const letters = [handedIn(3), handedIn(4)].map(packResult);
  const found = sorted(`Here is mine:\n${letters[0]}\n\nand his: ${letters[1]}`, []).found;
  expect(found.map(({ text }) => text)).toEqual(letters);
  expect(sorted('hello, this is no result at all', []).found).toMatchObject([
    { read: { ok: false, problem: 'problem.result.notOne' } },
  ]);
  expect(sorted('', []).found).toMatchObject([{ read: { problem: 'problem.result.empty' } }]);
});
