// The start of a lesson that another crew begins: made in parts, told how far it is, and nobody has to wait for it.
import { describe, expect, it } from 'vitest';
import { hashRun } from '../../../sim';
import { lessonById, startRun, type Lesson } from '../../../lessons';
import { startOf, takeStart } from '../../../src/app/startOf';

const lesson: Lesson = { ...lessonById('first-rods')!, prologue: { crew: 'careful', until: { depth_m: 1.2 } } };

describe('a start under way', () => {
  it('is the run that is made without a page, and whoever takes it has it alone', async () => {
    const shares: number[] = [];
    const run = await takeStart(lesson, 2, { onShare: (share_frac) => shares.push(share_frac) });
    expect(hashRun(run!)).toBe(hashRun(startRun(lesson, 2)));
    expect(shares.length).toBeGreaterThan(1);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(await takeStart(lesson, 2)).not.toBe(run);
  });

  it('leaves the page its turn', async () => {
    let turns = 0;
    const timer = setInterval(() => turns++, 1);
    await startOf(lesson, 4);
    clearInterval(timer);
    expect(turns).toBeGreaterThan(3);
  });

  it('need not be waited for, and is there for who asks again', async () => {
    const going = startOf(lesson, 3);
    const leave = new AbortController();
    const waited = takeStart(lesson, 3, { signal: leave.signal });
    leave.abort();
    expect(await waited).toBeNull();
    expect(await takeStart(lesson, 3)).toBe(await going);
  });
});
