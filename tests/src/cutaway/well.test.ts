// What the drawing shows of a well: its fill cell by cell where the hole is seen, only what was measured where it is not.
import { describe, expect, it } from 'vitest';
import { act, step, type Run } from '$sim';
import { describeWell, WELL_THINGS } from '../../../src/cutaway/describeWell';
import { cutawayView, type ViewLevel } from '../../../src/cutaway/view';
import { bandsOf, voidsOf } from '../../../src/cutaway/wellShape';
import { addMessages, hasMessage, say } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { packedAndSealed, setWell } from '../../setWell';
import { fixtureView } from '../../browser/cutaway/fixture';
import { withWell, type WellChoice } from '../../browser/cutaway/wellFixture';

addMessages(laterMessages);

const LEVELS: readonly ViewLevel[] = ['open', 'hole', 'blind'];
const shown = (run: Run, level: ViewLevel) => cutawayView(run, level).well!;
const made = (choice: WellChoice, level: ViewLevel = 'open') =>
  withWell(fixtureView({ level, flowing: false, bed_m: 0 }), choice);

describe('the view of a well', () => {
  it('holds no fill, no level and no inflow in a blind lesson, and no rest level unless the ground is open', () => {
    const run = setWell({ fill: packedAndSealed() });
    expect(shown(run, 'blind').annulus).toBeNull();
    expect(shown(run, 'blind').casing!.level_m).toBeNull();
    expect(shown(run, 'blind').rest_m).toBeNull();
    expect(shown(run, 'hole').annulus).not.toBeNull();
    expect(shown(run, 'hole').rest_m).toBeNull();
    expect(shown(run, 'open').rest_m).toBeCloseTo(run.state.well!.rest_m, 9);
  });

  it('knows the level in a blind lesson once it is dipped', () => {
    const run = setWell({ fill: packedAndSealed() });
    expect(act(run, 'dipWell', {}).kind).toBe('done');
    for (let i = 0; i < 60; i++) step(run);
    const { casing } = shown(run, 'blind');
    expect(casing!.level_m).toBe(run.state.well!.dip!.level_m);
    expect(casing!.dipped).toBe(true);
  });

  it('does not change with what stands unseen round the casing in a blind lesson', () => {
    const run = setWell({ fill: packedAndSealed() });
    const before = JSON.stringify(cutawayView(run, 'blind'));
    run.state.completion.annulus!.fill_m3.fill(0);
    run.state.completion.casing.snapped = true;
    run.state.well!.level_m += 1;
    expect(JSON.stringify(cutawayView(run, 'blind'))).toBe(before);
  });

  it('fills each cell as far as the state does', () => {
    const run = setWell({ fill: [{ from_m: 4, to_m: 14.5, with: 'pack1' }] });
    const { annulus, casing } = shown(run, 'hole');
    const pack = annulus!.fills.indexOf('pack1');
    const inside = Math.floor(10 / annulus!.dz_m);
    expect(annulus!.rest_frac[pack * annulus!.stride + inside]).toBeCloseTo(1, 6);
    expect(bandsOf(annulus!)[0]!.from_m).toBeCloseTo(4, 6);
    expect(casing!.screen!.to_m).toBeLessThanOrEqual(casing!.shoe_m);
  });

  it('moves the screen up with a casing that hangs', () => {
    const run = setWell();
    const down = shown(run, 'hole').casing!.screen!;
    run.state.completion.casing.shoe_m -= 2;
    const hung = shown(run, 'hole').casing!.screen!;
    expect(hung.from_m).toBeCloseTo(down.from_m - 2, 9);
  });

  it('shows no stem and no grains of the drilling once the casing is set', () => {
    const run = setWell();
    run.state.stem.rods = 0;
    const view = cutawayView(run, 'hole');
    expect(view.stem.out).toBe(true);
    expect(view.hole!.solids_frac.every((share) => share === 0)).toBe(true);
    expect(view.hole!.bed_m).toBe(0);
  });
});

describe('the fill round the casing', () => {
  it('is told as bands from above, and the voids between them', () => {
    const { annulus } = made({
      fills: [
        ['bentonitePellets', 0.5, 3.5],
        ['pack07', 4.5, 5.75],
        ['pack07', 6.5, 8.35],
      ],
    }).well!;
    const bands = bandsOf(annulus!);
    expect(bands.map((band) => annulus!.fills[band.fill])).toEqual(['bentonitePellets', 'pack07', 'pack07']);
    expect(voidsOf(annulus!).map(([from_m, to_m]) => [from_m, to_m])).toEqual([
      [3.5, 4.5],
      [5.75, 6.5],
    ]);
  });

  it('ends at the bottom of the hole', () => {
    const { annulus } = made({}).well!;
    expect(bandsOf(annulus!).at(-1)!.to_m).toBeLessThanOrEqual(annulus!.depth_m + 1e-9);
  });
});

describe('what is told of a well', () => {
  const choices: WellChoice[] = [
    { look: 'air' },
    { look: 'free' },
    { look: 'hung' },
    { look: 'floating' },
    { look: 'landed' },
    { snapped: true },
    { drawn_m: 1.2, sounded_m: 4.5, head: true },
    {
      fills: [
        ['cement', 1, 4.5],
        ['pack07', 4.5, 6],
        ['ground', 6.5, 8.35],
      ],
      clogged: true,
    },
  ];

  it('has words for every thing at every level, with every slot filled', () => {
    const seen = new Set<string>();
    for (const level of LEVELS)
      for (const choice of choices)
        for (const thing of WELL_THINGS) {
          const one = describeWell(made(choice, level), thing);
          if (!one) continue;
          expect(hasMessage(one.key), one.key).toBe(true);
          expect(say(one.key, one.data)).not.toMatch(/[{}]|cutaway\.|work\./);
          seen.add(one.thing);
        }
    expect([...seen].sort()).toEqual([...WELL_THINGS].sort());
  });

  it('says nothing in a blind lesson of what nobody can see', () => {
    const told = choices.flatMap((choice) =>
      WELL_THINGS.filter((thing) => describeWell(made(choice, 'blind'), thing) !== null),
    );
    for (const hidden of ['pack', 'seal', 'cavedIn', 'void', 'inflow', 'cone']) expect(told).not.toContain(hidden);
  });
});
