// Seeded chance: same seed same draws, exact restore, right spread.
import { expect, test } from 'vitest';
import { createStream, restoreStream } from '../../../sim/numeric/stream';

test('the same text gives the same draws and another text others', () => {
  const draws = (text: string): number[] => {
    const stream = createStream(text);
    return Array.from({ length: 20 }, () => stream.uniform());
  };
  expect(draws('ground/7')).toEqual(draws('ground/7'));
  expect(draws('ground/7')).not.toEqual(draws('ground/8'));
});

test('a stream restored from JSON goes on exactly, also between the two halves of a normal pair', () => {
  const stream = createStream('pair');
  stream.normal();
  const saved = JSON.stringify(stream.state());
  const copy = restoreStream(JSON.parse(saved));
  for (let i = 0; i < 9; i++) {
    expect(copy.normal()).toBe(stream.normal());
    expect(copy.uniform()).toBe(stream.uniform());
  }
  expect(copy.state()).toEqual(stream.state());
});

test('reading the state does not change the draws', () => {
  const a = createStream('a');
  const b = createStream('a');
  a.state();
  expect(a.uniform()).toBe(b.uniform());
});

test('uniform draws fill 0..1 evenly', () => {
  const stream = createStream('even');
  const bins = new Array<number>(10).fill(0);
  for (let i = 0; i < 100_000; i++) {
    const u = stream.uniform();
    expect(u).toBeGreaterThanOrEqual(0);
    expect(u).toBeLessThan(1);
    bins[Math.floor(u * 10)]++;
  }
  for (const n of bins) expect(Math.abs(n - 10_000)).toBeLessThan(500);
});

test('normal draws have mean 0, deviation 1 and the right tails', () => {
  const stream = createStream('bell');
  const n = 100_000;
  let sum = 0;
  let squares = 0;
  let beyond = 0;
  for (let i = 0; i < n; i++) {
    const x = stream.normal();
    sum += x;
    squares += x * x;
    if (Math.abs(x) > 1.96) beyond++;
  }
  expect(Math.abs(sum / n)).toBeLessThan(0.015);
  expect(Math.abs(squares / n - 1)).toBeLessThan(0.02);
  expect(Math.abs(beyond / n - 0.05)).toBeLessThan(0.004);
});
