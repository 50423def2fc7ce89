// What is told of the signs: what has changed and stands, one thing at a time, and only what the lesson lets one notice.
import { describe, expect, it } from 'vitest';
import { sensesOf, type Senses } from '../../../sim';
import { lessonById, startRun } from '../../../lessons';
import { Narrator } from '../../../src/senses/narration';

const still = sensesOf(startRun(lessonById('first-rods')!, 1));

function at(time_s: number, sinking_mmin: number, cloudiness_frac = 0): Senses {
  return {
    ...still,
    time_s,
    stem: { ...still.stem, turning: true, feed_frac: 0.5, torque: 'free', sinking_mmin },
    returns: { ...still.returns, running: true, share_frac: 1, cloudiness_frac, murk_frac: 0 },
  };
}

/** All that is told, with its second. */
function told(narrator: Narrator, senses: (time_s: number) => Senses, to_s: number): [number, string][] {
  const lines: [number, string][] = [];
  for (let time_s = 0; time_s <= to_s; time_s++) {
    const line = narrator.hear(senses(time_s));
    if (line) lines.push([time_s, line.key.split('.').slice(1, 3).join('.')]);
  }
  return lines;
}

describe('the narrator', () => {
  it('tells each sign once it stands, twenty seconds apart, and the stem again after ten minutes', () => {
    expect(told(new Narrator(['stem', 'returns', 'pit']), (time_s) => at(time_s, 0.2), 1300)).toEqual([
      [10, 'rope.sentenceSinking'],
      [30, 'returns.sentence'],
      [50, 'pit.sentence'],
      [610, 'rope.sentenceSinking'],
      [1210, 'rope.sentenceSinking'],
    ]);
  });

  it('tells what a lesson hides to nobody', () => {
    expect(told(new Narrator(['pit']), (time_s) => at(time_s, 0.2), 100)).toEqual([[10, 'pit.sentence']]);
    expect(told(new Narrator([]), (time_s) => at(time_s, 0.2), 100)).toEqual([]);
  });

  it('tells a change that stands, not one that comes and goes', () => {
    const slower = told(new Narrator(['stem']), (time_s) => at(time_s, time_s < 100 ? 0.2 : 0.05), 200);
    expect(slower.map(([time_s]) => time_s)).toEqual([10, 110]);
    const restless = told(new Narrator(['stem']), (time_s) => at(time_s, time_s % 8 < 4 ? 0.2 : 0.05), 200);
    expect(restless).toEqual([]);
    const often = told(new Narrator(['returns']), (time_s) => at(time_s, 0.2, time_s % 40 < 20 ? 0 : 0.5), 200);
    expect(often.length).toBeGreaterThan(1);
    for (let i = 1; i < often.length; i++) expect(often[i]![0] - often[i - 1]![0]).toBeGreaterThanOrEqual(60);
  });

  it('holds its tongue when asked, and begins anew when the clock is set back', () => {
    const narrator = new Narrator(['stem']);
    for (let time_s = 0; time_s <= 60; time_s++) expect(narrator.hear(at(time_s, 0.2), true)).toBeNull();
    expect(narrator.hear(at(61, 0.2))?.key).toBe('work.rope.sentenceSinking');
    narrator.forget();
    expect(told(narrator, (time_s) => at(time_s, 0.2), 20)).toEqual([[10, 'rope.sentenceSinking']]);
  });
});
