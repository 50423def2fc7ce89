// Seals in the ring, on whole runs. Trade rules are common practice, no source, unless one is named.
import { describe, expect, it } from 'vitest';
import { act, FILL_NAMES, sensesOf, type FillName, type Run } from '../../sim';
import { does, steps } from '../rig';
import { idle, keptFull, landed } from '../wellRig';
import { expectBalanced, told } from './site';

const annulus = (run: Run) => run.state.completion.annulus!;

/** Cells in which a fill stands, and how much of it is spoilt there. */
function cellsOf(run: Run, fill: FillName): { cell: number; spoilt: number }[] {
  const { cells, used, fill_m3, spoilt_frac } = annulus(run);
  const f = FILL_NAMES.indexOf(fill);
  const out = [];
  for (let i = 0; i < used; i++) if (fill_m3[f * cells + i] > 1e-5) out.push({ cell: i, spoilt: spoilt_frac[i] });
  return out;
}

function packed(run: Run, volume_L = 20, pack = 'pack1', rate_Lmin = 2): Run {
  does(run, 'pourPack', { pack, volume_L, rate_Lmin });
  // Until the last of the pack has come down.
  keptFull(run, 180);
  expect(told(run, 'packBridged')).toBe(0);
  return run;
}

function sealed(run: Run, seal: string, volume_L: number, rate_Lmin = 1): Run {
  does(run, 'placeSeal', { seal, volume_L, rate_Lmin });
  keptFull(run);
  return run;
}

describe('bentonite', () => {
  it('is ready when it has swollen, and waiting for it stops then', () => {
    const run = sealed(packed(landed()), 'bentoniteGranules', 8);
    expect(sensesOf(run).well!.seals).toMatchObject([{ seal: 'bentoniteGranules', set: false }]);
    const { tick } = run.state;
    does(run, 'waitFor', { until: 'set', cap_s: 20000 });
    while (run.state.wait) steps(run, 1);
    // An hour from the last handful on.
    expect(run.state.tick - tick).toBeGreaterThan(3000);
    expect(run.state.tick - tick).toBeLessThan(3700);
    expect(told(run, 'sealSet')).toBe(1);
    expect(sensesOf(run).well!.seals[0].set).toBe(true);
    expect(sensesOf(run).well!.seals[0].volume_L).toBeCloseTo(8, 6);
    expectBalanced(run);
  });

  it('is sound under water and in clay that stays moist, and spoilt near the top, where it dries out (Bulletin 74-90)', () => {
    const run = sealed(packed(landed(), 25), 'bentoniteGranules', 20);
    steps(run, 4000);
    const cells = cellsOf(run, 'bentoniteGranules');
    expect(cells[0].cell).toBe(0);
    for (const { cell, spoilt } of cells) expect([cell, spoilt]).toEqual([cell, cell < 2 ? 1 : 0]);
  });

  it('is spoilt in dry sand', () => {
    const layers = [
      { kind: 'siltySand' as const, thickness_m: [3, 3] as [number, number] },
      { kind: 'firmClay' as const, thickness_m: [1, 1] as [number, number] },
      { kind: 'mediumSand' as const, thickness_m: [40, 40] as [number, number] },
    ];
    const run = landed({}, { layers, waterTable_m: 2.4 });
    packed(run, 24);
    sealed(run, 'bentoniteGranules', 14);
    steps(run, 4000);
    const dry = cellsOf(run, 'bentoniteGranules').filter(({ cell }) => cell < 8);
    expect(dry.length).toBeGreaterThan(3);
    expect(dry.every(({ spoilt }) => spoilt === 1)).toBe(true);
  });

  it('is spoilt by salt (Oregon: none above 800 ppm)', () => {
    const run = landed({}, { seed: 2 });
    (run.scenario.ground.salinity as { from_m: number; salt_gL: number }[]).splice(0, 9, { from_m: 0, salt_gL: 3 });
    run.work.wallGround.salt_gL.fill(3);
    sealed(packed(run), 'bentoniteGranules', 8);
    steps(run, 4000);
    const wet = cellsOf(run, 'bentoniteGranules').filter(({ cell }) => cell >= 12);
    expect(wet.length).toBeGreaterThan(0);
    expect(wet.every(({ spoilt }) => spoilt === 1)).toBe(true);
  });

  it('suffers when the well is washed before it has swollen, and not after', () => {
    const washed = (after_s: number): number => {
      const run = sealed(packed(landed()), 'bentoniteGranules', 6);
      steps(run, after_s);
      does(run, 'develop', { method: 'bail', time_s: 120 });
      idle(run);
      const below = cellsOf(run, 'bentoniteGranules').filter(({ cell }) => cell > 3);
      return Math.max(...below.map(({ spoilt }) => spoilt));
    };
    expect(washed(60)).toBeGreaterThan(0.6);
    expect(washed(2400)).toBeLessThan(0.4);
    expect(washed(4000)).toBe(0);
  });

  it('in pellets jams in a hand-drilled gap: they are over a fifth of it (Bulletin 74-90)', () => {
    const run = sealed(packed(landed()), 'bentonitePellets', 4);
    expect(told(run, 'packBridged')).toBe(1);
  });
});

describe('cement', () => {
  it('straight on the pack enters it, the deeper the coarser the pack and the higher the slurry', () => {
    // A wide hole, so that the coarse pack goes down as well.
    const entered = (pack: 'pack07' | 'pack1' | 'pack2', volume_L: number): number => {
      const run = sealed(
        packed(landed({ pack }, { kit: { bit_m: 0.125 } }), 30, pack, pack === 'pack07' ? 4 : 6),
        'cement',
        volume_L,
        8,
      );
      expectBalanced(run);
      return annulus(run).clogged_frac.reduce((sum, share) => sum + share, 0) * 0.25;
    };
    expect(entered('pack1', 20)).toBeGreaterThan(0.1);
    expect(entered('pack1', 20)).toBeGreaterThan(1.5 * entered('pack1', 8));
    expect(entered('pack2', 20)).toBeGreaterThan(1.5 * entered('pack1', 20));
    expect(entered('pack07', 20)).toBeLessThan(0.3 * entered('pack1', 20));
  });

  it('with half a metre of bentonite between stays out of it', () => {
    const run = packed(landed(), 16);
    sealed(run, 'bentoniteGranules', 3);
    keptFull(run, 300);
    sealed(run, 'cement', 8, 2);
    expect(annulus(run).clogged_frac.every((share) => share === 0)).toBe(true);
  });

  it('sets in a day; whoever builds the apron before that cracks it', () => {
    const run = sealed(packed(landed(), 20), 'cement', 8, 2);
    does(run, 'waitFor', { until: 'set', cap_s: 172800 });
    const { tick } = run.state;
    while (run.state.wait) steps(run, 1);
    expect(run.state.tick - tick).toBeGreaterThan(86000);
    expect(cellsOf(run, 'cement').every(({ spoilt }) => spoilt === 0)).toBe(true);
    const hasty = sealed(packed(landed(), 20), 'cement', 8, 2);
    does(hasty, 'headWorks', { apron_m: 1, drain_m: 3, cap: true, lift: 'suction' });
    expect(cellsOf(hasty, 'cement').every(({ spoilt }) => spoilt > 0.7)).toBe(true);
  });
});

it('what is not on offer cannot be put in', () => {
  const run = landed();
  const { scenario } = run;
  const bare = { ...run, scenario: { ...scenario, well: { ...scenario.well!, seals: [] } } };
  expect(act(bare, 'placeSeal', { seal: 'cement', volume_L: 5, rate_Lmin: 5 })).toMatchObject({ reason: 'notOffered' });
});
