// A text drawn as a QR code is read again from its dots: straight, turned, photographed, several at once.
import scan from 'jsqr';
import { describe, expect, it } from 'vitest';
import {
  joinParts,
  lessonOfExercise,
  newExercise,
  packResult,
  playCrew,
  readResult,
  resultOf,
  type LessonId,
} from '$lessons';
import { findCodes } from '../../../../src/classroom/qr/find';
import { resultCodes, SIGNS_L, SIGNS_M } from '../../../../src/classroom/qr/resultCodes';
import { RIM, squaresOf } from '../../../../src/classroom/qr/squares';
import { blank, draw, drawn, photographed, strays, turned } from './raster';

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ+-./:';
/** A text of so many signs by chance. */
function signs(length: number, seed = 1): string {
  const stray = strays(seed);
  return Array.from({ length }, () => SIGNS[Math.floor(stray() * SIGNS.length)]).join('');
}

describe('a code', () => {
  it('is as small as it can be, and none where the text is too long', async () => {
    expect(await squaresOf(signs(SIGNS_M))).toMatchObject({ version: 25, level: 'M', side: 117 });
    expect(await squaresOf(signs(SIGNS_M + 1))).toMatchObject({ version: 22, level: 'L' });
    expect(await squaresOf(signs(SIGNS_L))).toMatchObject({ version: 25, level: 'L' });
    expect(await squaresOf(signs(SIGNS_L + 1))).toBeNull();
    expect(await squaresOf('A')).toMatchObject({ version: 1, level: 'M', side: 21 });
  });

  it.each([
    ['HELLO WELL'],
    ['https://x.test/page.html#/exercise/B7/aZ_-09'],
    ['Tür, 井, ☔ and more'],
    [signs(SIGNS_L)],
  ])('of %s is read as that, whichever way up', async (text) => {
    const picture = drawn((await squaresOf(text))!, 4);
    for (let quarters = 0; quarters < 4; quarters++) expect(findCodes(turned(picture, quarters), scan)).toEqual([text]);
  });

  it.each([
    [580, 4],
    [1000, 4],
    [SIGNS_M, 4],
  ])('of %i signs is read from a photo: askew, soft, unevenly lit, with grain', async (length, dots) => {
    const text = signs(length, length);
    const picture = drawn((await squaresOf(text))!, 6);
    for (const askew_rad of [0.03, -0.2, Math.PI / 2 + 0.1]) {
      const photo = photographed(picture, { askew_rad, scale: dots / 6, grain: 20, stray: strays(length) });
      expect([askew_rad, findCodes(photo, scan)]).toEqual([askew_rad, [text]]);
    }
  });

  it('is found beside others on one sheet', async () => {
    const texts = [signs(300, 1), signs(500, 2), signs(400, 3), signs(120, 4)];
    const page = blank(1100, 1100);
    for (const [i, text] of texts.entries())
      draw(page, (await squaresOf(text))!, 5, (i % 2) * 550, Math.floor(i / 2) * 550);
    for (const picture of [page, photographed(page, { askew_rad: 0.1, scale: 0.8, grain: 15 })])
      expect(findCodes(picture, scan).sort()).toEqual([...texts].sort());
  });

  it('is not found where there is none', () => {
    expect(findCodes(blank(300, 200), scan)).toEqual([]);
    const noise = blank(300, 300);
    const stray = strays(5);
    for (let i = 0; i < noise.data.length; i += 4) noise.data.fill(stray() * 255, i, i + 3);
    expect(findCodes(noise, scan)).toEqual([]);
  });
});

describe('a result', () => {
  it.each<[LessonId, string, number]>([
    ['first-rods', 'careful', 1],
    ['first-rods', 'random', 1],
    ['the-seal', 'careful', 1],
    ['open-well', 'careful', 2],
    ['bad-day', 'careful', 2],
  ])('of %s by the crew %s takes at most %i codes, and comes back from them', async (id, crew, most) => {
    const lesson = lessonOfExercise(newExercise(id, 'exercise-codes', 'Codes'));
    const run = playCrew(lesson, crew, 5);
    const result = resultOf(run, lesson, { who: 'T-12', sitting: { classCode: 'WELL', attempt: 1, spent_s: 1800 } });
    const codes = resultCodes(packResult(result))!;
    expect(codes.length).toBeLessThanOrEqual(most);
    const read: string[] = [];
    for (const code of codes) {
      const squares = (await squaresOf(code))!;
      expect(squares.version).toBeLessThanOrEqual(25);
      expect(squares.side + 2 * RIM).toBeLessThanOrEqual(125);
      read.push(...findCodes(drawn(squares, 3), scan));
    }
    const { whole, open, rest } = joinParts(read.reverse());
    expect([whole.length, open, rest]).toEqual([1, [], []]);
    expect(readResult(whole[0]!)).toEqual({ ok: true, result });
  });
});
