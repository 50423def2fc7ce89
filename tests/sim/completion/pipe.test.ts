// The pipe: slots weaken it, a hard working crew breaks a thin one, a closed empty one floats.
import { describe, expect, it } from 'vitest';
import { hanging_N } from '../../../sim/completion/buoyancy';
import { collapseHead_m, slottedCollapse_ratio } from '../../../sim/completion/collapse';
import { openPerMetre_m, openShare_frac, sectionLeft_frac } from '../../../sim/completion/slots';
import { axial_N, jointStrength_frac, slotted_N, WORKING_N } from '../../../sim/completion/tension';
import { CASING_NAMES, CASINGS } from '../../../sim/materials/pipes';

const WATER = { outside_kgm3: 998.2, inside_kgm3: 998.2 };
const slots = (slotRows: number, slotArc_mm: number) => ({
  slotRows,
  slotArc_mm,
  slotWidth_mm: 0.8,
  slotSpacing_mm: 10,
});

describe('strength', () => {
  it('more or longer slots never leave more', () => {
    for (const name of CASING_NAMES) {
      const pipe = CASINGS[name];
      let before_N = Infinity;
      for (const arc_mm of [0, 5, 10, 20, 30, 40, 60]) {
        const left_N = slotted_N(pipe, sectionLeft_frac(slots(3, arc_mm), pipe.outside_m));
        expect(left_N).toBeLessThanOrEqual(before_N);
        before_N = left_N;
      }
      expect(before_N).toBeGreaterThanOrEqual(0);
      expect(slotted_N(pipe, 1)).toBe(axial_N(pipe));
    }
  });

  it('three rows of long slots break a thin pipe that is worked hard, a sound one of the same size holds', () => {
    const section = sectionLeft_frac(slots(3, 40), 0.063);
    expect(slotted_N(CASINGS.pvc63thin, section)).toBeCloseTo(991, 0);
    expect(slotted_N(CASINGS.pvc63thin, section)).toBeLessThan(WORKING_N);
    expect(slotted_N(CASINGS.pvc63, section)).toBeGreaterThan(WORKING_N);
    expect(slotted_N(CASINGS.pvc63thin, 1)).toBeGreaterThan(WORKING_N);
  });

  it('a joint grows to the strength of the pipe', () => {
    expect(jointStrength_frac(0, 300)).toBe(0);
    expect(jointStrength_frac(300, 300)).toBeCloseTo(1 / 6, 12);
    expect(jointStrength_frac(1e6, 300)).toBe(1);
  });

  it('slots take .6 and their width out of the collapse pressure', () => {
    expect(slottedCollapse_ratio(slots(3, 40))).toBeCloseTo(0.552, 12);
    expect(slottedCollapse_ratio({ ...slots(3, 40), slotSpacing_mm: 5 })).toBeLessThan(0.552);
    expect(collapseHead_m(1e5, 998.2, 998.2)).toBe(Infinity);
  });

  it('gives the worked values of the slots', () => {
    const two = { slotRows: 2, slotArc_mm: 40, slotWidth_mm: 0.8, slotSpacing_mm: 10 };
    expect(openPerMetre_m(two)).toBeCloseTo(0.0064, 12);
    expect(openShare_frac(two, 0.063)).toBeCloseTo(0.03234, 5);
  });
});

describe('in the hole', () => {
  const pipe = CASINGS.pvc63;
  const metre = { length_m: 1, submerged_m: 1, ...WATER };
  it('an open pipe sinks, a closed empty one floats, a closed full one sinks as an open one does', () => {
    const open_N = hanging_N(pipe, { ...metre, plugged: false, filled_m: 0 });
    expect(open_N).toBeGreaterThan(0);
    expect(hanging_N(pipe, { ...metre, plugged: true, filled_m: 0 })).toBeCloseTo(-22.75, 1);
    expect(hanging_N(pipe, { ...metre, plugged: true, filled_m: 1 })).toBeCloseTo(open_N, 9);
  });
  it('open, in water it weighs 1 - rho/1400 of what it weighs in air', () => {
    const dry_N = hanging_N(pipe, { ...metre, submerged_m: 0, plugged: false, filled_m: 0 });
    expect(hanging_N(pipe, { ...metre, plugged: false, filled_m: 0 }) / dry_N).toBeCloseTo(1 - 998.2 / 1400, 12);
  });
  it('heavier mud lifts more', () => {
    const mud = { ...metre, outside_kgm3: 1100, plugged: true, filled_m: 0.5 };
    expect(hanging_N(pipe, mud)).toBeLessThan(hanging_N(pipe, { ...mud, outside_kgm3: 1000 }));
  });
});
