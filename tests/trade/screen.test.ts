// Where the screen stands and what its slots let by: water, sand, or nothing.
import { expect, it } from 'vitest';
import { act, verdictOf, type Run } from '../../sim';
import { packedAndSealed, seconds, setWell, type SetWell } from '../setWell';

const yieldOf = (options: SetWell): number => verdictOf(setWell(options))!.yield.dry_Lmin;
const layer = (kind: 'firmClay' | 'mediumSand' | 'fineSand', thick_m: number) => ({
  kind,
  thickness_m: [thick_m, thick_m] as [number, number],
});

/** Draws at 15 L/min for so long and tells what the jar held at its end, g/L. */
function sandAfter(run: Run, time_s: number): number {
  expect(act(run, 'yieldTest', { lift: 'suction', rate1_Lmin: 15, step_s: time_s, recovery_s: 0 }).kind).toBe('done');
  seconds(run, time_s + 40);
  return run.state.well!.sand_gL;
}

it('a screen in clay yields nothing', () => {
  const sand = yieldOf({ layers: [layer('firmClay', 8), layer('mediumSand', 30)], fill: packedAndSealed() });
  const clay = yieldOf({ layers: [layer('mediumSand', 8), layer('firmClay', 30)], fill: packedAndSealed() });
  expect(sand).toBeGreaterThan(20);
  expect(clay).toBeLessThan(0.1);
});

it('half the screen above the lowest level loses yield then, not now', () => {
  const wet = verdictOf(setWell({ waterTable_m: 8, swing_m: 0, fill: packedAndSealed() }))!;
  const half = verdictOf(setWell({ waterTable_m: 8, swing_m: 5, fill: packedAndSealed() }))!;
  expect(half.screen.belowLowest_frac).toBeCloseTo(0.5, 6);
  expect(half.yield.now_Lmin).toBeCloseTo(wet.yield.now_Lmin, 9);
  expect(half.yield.dry_Lmin).toBeLessThan(0.5 * wet.yield.dry_Lmin);
  expect(half.yield.dry_Lmin).toBeGreaterThan(0);
  const dry = verdictOf(setWell({ waterTable_m: 8, swing_m: 7, fill: packedAndSealed() }))!;
  expect(dry.yield).toMatchObject({ dry_Lmin: 0, limitedBy: 'dry' });
});

it('slots wider than the sand pump sand for ever', () => {
  const run = setWell({ layers: [layer('fineSand', 40)], plan: { pack: 'none', slotWidth_mm: 0.8 } });
  const first = sandAfter(run, 3600);
  const later = sandAfter(run, 8 * 3600);
  expect(first).toBeGreaterThan(0.05);
  expect(later).toBeGreaterThan(0.9 * first);
  expect(verdictOf(run)!.sand_mgL).toBeGreaterThan(50);
});

it.each([
  ['fine cloth', { layers: [layer('fineSand', 40)], plan: { pack: 'none', slotWidth_mm: 0.8, cloth: 'fine' } }],
  [
    'the right pack',
    { layers: [layer('fineSand', 40)], plan: { slotWidth_mm: 0.4 }, fill: packedAndSealed(15, 'pack04') },
  ],
] as [string, SetWell][])('%s stops it: the sand goes within a surging, and stays away', (_what, options) => {
  const run = setWell(options);
  act(run, 'develop', { method: 'surge', time_s: 7200 });
  seconds(run, 7201);
  expect(sandAfter(run, 3600)).toBeLessThan(0.005);
  expect(verdictOf(run)!.sand_mgL).toBeLessThan(5);
});

it('a pack too coarse for its sand lets it through', () => {
  const run = setWell({ layers: [layer('fineSand', 40)], fill: packedAndSealed(15, 'pack4') });
  act(run, 'develop', { method: 'surge', time_s: 7200 });
  seconds(run, 7200);
  expect(verdictOf(run)!.sand_mgL).toBeGreaterThan(50);
});

it('a snapped pipe and an open end give sand for ever, whatever the pack', () => {
  for (const change of [{ cap: false }, {}]) {
    const run = setWell({ plan: change, fill: packedAndSealed(15, 'pack07') });
    if (!('cap' in change)) run.state.completion.casing.snapped = true;
    act(run, 'develop', { method: 'surge', time_s: 7200 });
    seconds(run, 7200);
    expect(verdictOf(run)!.sand_mgL).toBeGreaterThan(50);
  }
});

it('cement against the screen shuts it', () => {
  const packed = yieldOf({ fill: packedAndSealed() });
  const shut = yieldOf({ fill: [{ from_m: 0, to_m: 15, with: 'cement' }] });
  expect(shut).toBeLessThan(0.001 * packed);
});
