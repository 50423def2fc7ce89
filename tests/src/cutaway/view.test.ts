// What the drawing is given: true where the level opens it, and nothing at all where the level closes it.
import { beforeAll, describe, expect, it } from 'vitest';
import { act, bedHeight_m, CLASS_COUNT, fluidLevel_m, levelBelowRim_m, type Run } from '$sim';
import { cutawayView, type ViewLevel } from '../../../src/cutaway/view';
import { drillingRun } from './crewRun';

let run: Run;
beforeAll(() => {
  run = drillingRun(1200);
});

/** All that a view says, as text. */
const told = (level: ViewLevel): string => JSON.stringify(cutawayView(run, level));

/** All numbers in a view, wherever they stand. */
const figures = (level: ViewLevel): Set<number> => {
  const found = new Set<number>();
  JSON.stringify(cutawayView(run, level), (_key, value: unknown) => {
    if (typeof value === 'number') found.add(value);
    return value;
  });
  return found;
};

describe('a view', () => {
  it('holds no true layer and no water table unless the ground is open', () => {
    for (const level of ['hole', 'blind'] as const) {
      const view = cutawayView(run, level);
      expect(view.layers).toBeNull();
      expect(view.waterTable_m).toBeNull();
      expect(view.hole?.seep_m2s ?? null).toBeNull();
      for (const layer of run.scenario.ground.layers) expect(told(level)).not.toContain(layer.kind);
      const told_m = figures(level);
      for (const layer of run.scenario.ground.layers.slice(1)) expect(told_m.has(layer.top_m)).toBe(false);
    }
    for (const level of ['open', 'debrief'] as const) {
      expect(cutawayView(run, level).layers).toHaveLength(run.scenario.ground.layers.length);
      expect(cutawayView(run, level).waterTable_m).toBe(run.scenario.ground.waterTable_m);
      expect(cutawayView(run, level).hole!.seep_m2s).not.toBeNull();
    }
  });

  it('does not change with the ground while the ground is closed', () => {
    const before = told('hole');
    const layers = run.scenario.ground.layers;
    const kinds = layers.map((layer) => layer.kind);
    layers.forEach((layer) => (layer.kind = 'peat'));
    expect(told('hole')).toBe(before);
    layers.forEach((layer, i) => (layer.kind = kinds[i]));
  });

  it('does not change with walls, bed or load of the hole in a blind lesson', () => {
    const before = told('blind');
    const open = told('hole');
    const { hole } = run.state;
    const kept = {
      radius: hole.radius_m[2],
      bed: hole.bed_m3[4],
      load: hole.solids_m3[3 * hole.cells + 1],
      gap: hole.shortfall_m3,
    };
    hole.radius_m[2] *= 1.5;
    hole.bed_m3[4] += 1e-3;
    hole.solids_m3[3 * hole.cells + 1] += 1e-5;
    hole.shortfall_m3 += 1e-3;
    expect(told('blind')).toBe(before);
    expect(told('hole')).not.toBe(open);
    hole.radius_m[2] = kept.radius;
    hole.bed_m3[4] = kept.bed;
    hole.solids_m3[3 * hole.cells + 1] = kept.load;
    hole.shortfall_m3 = kept.gap;
    expect(cutawayView(run, 'blind').hole).toBeNull();
  });

  it('says what the state says of the hole', () => {
    const { hole } = cutawayView(run, 'hole');
    const { state, scenario } = run;
    const place = { bit_m: state.stem.bit_m, rodOutside_m: scenario.kit.rodOutside_m };
    expect(hole!.depth_m).toBe(state.hole.depth_m);
    expect(hole!.level_m).toBe(fluidLevel_m(state.hole, place));
    expect(hole!.bed_m).toBe(bedHeight_m(state.hole, place));
    for (let i = 0; i < hole!.cells; i++) {
      expect(hole!.radius_m[i]).toBe(state.hole.radius_m[i]);
      expect(hole!.cake_m[i]).toBe(state.hole.wall.cake_m[i]);
      expect(hole!.falling[i]).toBe(state.hole.wall.sloughing[i]);
    }
  });

  it('spreads over the cells the same grain volume that the state holds', () => {
    const view = cutawayView(run, 'hole').hole!;
    const { hole, stem } = run.state;
    const steel_m2 = (Math.PI / 4) * run.scenario.kit.rodOutside_m ** 2;
    for (let k = 0; k < CLASS_COUNT; k++) {
      let drawn_m3 = 0;
      let held_m3 = 0;
      for (let i = 0; i < hole.used; i++) {
        const top_m = i * hole.dz_m;
        const bottom_m = i === hole.used - 1 ? hole.depth_m - view.bed_m : top_m + hole.dz_m;
        const steel_m = Math.max(0, Math.min(bottom_m, stem.bit_m) - top_m);
        const room_m3 = Math.PI * hole.radius_m[i] ** 2 * (bottom_m - top_m) - steel_m2 * steel_m;
        drawn_m3 += view.solids_frac[k * view.stride + i] * room_m3;
        held_m3 += hole.solids_m3[k * hole.cells + i];
      }
      expect(drawn_m3).toBeCloseTo(held_m3, 12);
    }
  });

  it('gives the fluid the speed that carries the flow past the steel', () => {
    const view = cutawayView(run, 'hole');
    const { kit } = run.scenario;
    const area_m2 = (Math.PI / 4) * (kit.bit_m ** 2 - kit.rodOutside_m ** 2);
    expect(view.pump.flow_m3s).toBeGreaterThan(0.001);
    // Within a hundredth: a little of it goes into the ground on the way, and what is cut comes along.
    expect((view.hole!.up_ms[1] * area_m2) / view.pump.flow_m3s).toBeCloseTo(1, 2);
    expect(view.pump.bore_ms * (Math.PI / 4) * kit.rodBore_m ** 2).toBeCloseTo(view.pump.flow_m3s, 12);
  });

  it('lets coarse grains fall faster than fine ones, as the last second of the run reckoned', () => {
    const { hole } = cutawayView(run, 'hole');
    for (let k = 1; k < CLASS_COUNT; k++) {
      expect(hole!.slip_ms[k * hole!.stride]).toBeGreaterThan(hole!.slip_ms[(k - 1) * hole!.stride]);
    }
  });

  it('shows pit, stem and notebook at every level', () => {
    act(run, 'logLayer', { from_m: 0, to_m: 0.5, kind: 'topsoil' });
    for (const level of ['open', 'hole', 'blind', 'debrief'] as const) {
      const view = cutawayView(run, level);
      expect(view.pit.settling.level_m).toBe(levelBelowRim_m(run.state.pit.settling));
      expect(view.stem.rods + view.stem.rodsInRack).toBe(run.scenario.opening.rodsInAll);
      expect(view.ownLog).toEqual([{ from_m: 0, to_m: 0.5, kind: 'topsoil' }]);
      expect(view.samples_m).toEqual(run.state.samples.map((sample) => sample.label_m));
    }
  });

  it('changes nothing in the run and keeps its arrays from call to call', () => {
    const before = JSON.stringify(run.state, (_key, value: unknown) =>
      ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value,
    );
    const first = cutawayView(run, 'hole');
    const arrays = [first.hole!.radius_m, first.hole!.solids_frac, first.returns.grains_frac];
    const second = cutawayView(run, 'hole');
    expect(
      [second.hole!.radius_m, second.hole!.solids_frac, second.returns.grains_frac].every(
        (array, i) => array === arrays[i],
      ),
    ).toBe(true);
    expect(
      JSON.stringify(run.state, (_key, value: unknown) =>
        ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value,
      ),
    ).toBe(before);
  });
});
