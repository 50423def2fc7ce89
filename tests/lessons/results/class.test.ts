// A class of sixty results: what is good is reproduced; what was altered in one byte, cut off, or made with another version is told as that; a copy as a copy.
import { beforeAll, describe, expect, it } from 'vitest';
import {
  atOnce,
  boardOf,
  format,
  judging,
  readResult,
  writeResult,
  type JudgedResult,
  type Judgement,
  type Result,
} from '$lessons';
import { aClass, byteChanged, EXERCISE, handedIn, type Handed } from './aClass';

function judged(result: Result): Judgement {
  const number = Number(/^T-(\d+)$/.exec(result.who)?.[1] ?? 0);
  return atOnce(judging(result, EXERCISE, number > 0 ? { number } : null, 1e6));
}

/** What becomes of a text, and its sentence where there is one. */
function toldOf(text: string): { what: string; field: string } {
  const read = readResult(text);
  if (!read.ok) {
    expect(format(read.problem, read.data)).not.toMatch(/[{}]/);
    return { what: 'refused', field: read.field };
  }
  const { verdict, problem } = judged(read.result);
  if (problem) expect(format(problem.key, problem.data)).not.toMatch(/[{}]/);
  return { what: verdict, field: '' };
}

describe('sixty results', () => {
  let handed: Handed[];
  const entries: (JudgedResult & { readonly from: string })[] = [];

  beforeAll(() => {
    handed = aClass();
    for (const { from, text } of handed) {
      const read = readResult(text);
      if (read.ok) entries.push({ id: from, from, result: read.result, judgement: judged(read.result) });
    }
  }, 120_000);

  it('are told rightly, one by one', () => {
    expect(handed).toHaveLength(60);
    for (const { from, text, wanted } of handed) {
      const entry = entries.find((one) => one.from === from);
      const verdict = entry?.judgement.verdict ?? 'refused';
      const right = { altered: ['refused', 'notReproduced'], again: ['reproduced'] } as Partial<
        Record<string, string[]>
      >;
      expect([from, right[wanted] ?? [wanted]]).toEqual([from, expect.arrayContaining([verdict])]);
      if (!entry) expect(toldOf(text).what).toBe('refused');
    }
  });

  it('make one board: the latest attempt counts, copies are named, what is not reproduced counts for nothing', () => {
    const board = boardOf(entries);
    expect(board.rows).toHaveLength(entries.length);
    expect(board.counted).toHaveLength(25);
    expect(board.counted.filter(({ attempt }) => attempt === 2)).toHaveLength(10);
    expect(board.counted.every(({ judgement }) => judgement.ownSeed === true)).toBe(true);
    expect(board.rows.filter(({ duplicateOf }) => duplicateOf).map(({ id }) => id)).toEqual(
      expect.arrayContaining(['again-0.json', 'again-4.json']),
    );
    expect(board.rows.filter(({ duplicateOf }) => duplicateOf)).toHaveLength(5);
    const lost = board.counted.flatMap(({ judgement }) => judgement.grade!.items);
    for (const { item, points, learners } of board.lost) {
      const short = lost.filter(({ id, points: got, max }) => id === item && got < max);
      expect(short).toHaveLength(learners);
      expect(points).toBeCloseTo(
        short.reduce((sum, { points: got, max }) => sum + max - got, 0),
        5,
      );
    }
    expect(board.lost.map(({ points }) => points)).toEqual(
      board.lost.map(({ points }) => points).sort((a, b) => b - a),
    );
    expect(board.spent_s).toBe(board.counted.reduce((sum, { spent_s }) => sum + spent_s!, 0));
    for (const { drill, who } of board.drills)
      for (const one of who) expect(board.counted.find((row) => row.who === one)!.needs).toContain(drill);
  });
});

describe('one byte of a file, wherever it is', () => {
  it('changed makes it refused, with its field, or not reproduced', () => {
    const text = writeResult(handedIn(2));
    const told: Record<string, number> = {};
    for (let at = 0; at < text.length - 1; at += 3) {
      const changed = byteChanged(text, at);
      if (JSON.stringify(plain(changed)) === JSON.stringify(plain(text))) continue;
      const { what } = toldOf(changed);
      expect([at, changed.slice(at - 5, at + 5), what]).toEqual([
        at,
        expect.anything(),
        expect.stringMatching(/^(refused|notReproduced)$/),
      ]);
      told[what] = (told[what] ?? 0) + 1;
    }
    expect(Object.keys(told).sort()).toEqual(['notReproduced', 'refused']);
  });

  it('where a text only says another thing of whose or when it is, says so', () => {
    const result = handedIn(2);
    const text = writeResult(result);
    const problemOf = (from: string, to: string): unknown => {
      const read = readResult(text.replace(from, to));
      return read.ok && judged(read.result).problem?.key;
    };
    expect(problemOf('"slower"', '"faster"')).toBe('problem.result.altered');
    expect(problemOf('"T-02"', '"T-03"')).toBe('problem.result.altered');
    expect(problemOf(`"spent_s": ${result.spent_s}`, '"spent_s": 9')).toBe('problem.result.altered');
    expect(problemOf(`"score": ${result.claimed.score}`, '"score": 100')).toBe('problem.file.otherScore');
    expect(problemOf(`"hash": "${result.hash}"`, '"hash": "0123456789abcdef"')).toBe('problem.file.otherHash');
    expect(problemOf('"finished": true', '"finished": false')).toBe('problem.result.otherEnd');
  });
});

describe('a result written anew with another claim', () => {
  it('is still played again', () => {
    const result = handedIn(2);
    const anew = (change: Partial<Result>): Judgement => {
      const read = readResult(writeResult({ ...result, ...change }));
      if (!read.ok) throw new Error(read.problem);
      expect(read.result.altered).toBeUndefined();
      return judged(read.result);
    };
    expect(anew({}).verdict).toBe('reproduced');
    expect(anew({ claimed: { score: 100 } }).verdict).toBe('notReproduced');
    expect(anew({ seed: result.seed + 1 }).verdict).toBe('notReproduced');
    expect(anew({ log: result.log.slice(1) }).verdict).toBe('notReproduced');
    expect(anew({ ticks: 600000 }).problem?.key).toBe('problem.result.otherEnd');
    expect(anew({ start_tick: 0 }).problem?.key).toBe('problem.file.otherStart');
    // Another learner's run is reproduced, but on a ground that is not one's own.
    expect(anew({ who: 'T-03' })).toMatchObject({ verdict: 'reproduced', ownSeed: false });
    expect(anew({ who: 'fish' })).toMatchObject({ verdict: 'reproduced', ownSeed: null });
  });
});

function plain(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
