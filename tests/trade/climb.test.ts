// What a driller knows about grains in the returns, on whole runs with the flow, the fluid and the hole as they came out.
import { describe, expect, it } from 'vitest';
import { createRun, type Run } from '../../sim';
import { dragLawOf } from '../../sim/hole/drag';
import { terminalVelocity_ms } from '../../sim/hole/fall';
import { CUTTINGS_SPHERICITY, GRAIN_kgm3 } from '../../sim/hole/slip';
import { does, drillTo, oneSoil, rigScenario, steps } from '../rig';

const L_PER_MIN = 60000;

/** Climb of a grain as a share of the stream's speed, in the fluid and at the flow of the run as it stands. */
function climb_ratio(run: Run, grain_mm: number): number {
  const { hole, flowResult, sweep } = run.work;
  const law = dragLawOf(CUTTINGS_SPHERICITY);
  const slip_ms = terminalVelocity_ms(law, grain_mm / 1000, GRAIN_kgm3, hole.density_kgm3, hole, sweep.ambient_1s);
  return 1 - slip_ms / flowResult.annulusVelocity_ms;
}

/** A hole of 12 m in silt, which drinks little, with so much soaked powder in the water, drilled and then circulated. */
function circulated(powder_g: number, throttle_frac: number): Run {
  const run = createRun(rigScenario({ layers: oneSoil('silt'), rods: 1 }));
  if (powder_g > 0) {
    for (let left = powder_g; left > 0; left -= 500) {
      does(run, 'addAdditive', { additive: 'polymer', mass_g: Math.min(500, left), manner: 'sprinkled' });
      steps(run, 300);
    }
    does(run, 'stir', { time_s: 300 });
    steps(run, 1200);
  }
  drillTo(run, 12);
  does(run, 'setThrottle', { throttle_frac });
  steps(run, 300);
  return run;
}

describe('plain water in a 100 mm hole', () => {
  const run = circulated(0, 0.95);
  it('flows at 120 to 140 L/min', () => {
    expect(run.state.pump.flow_m3s * L_PER_MIN).toBeGreaterThan(120);
    expect(run.state.pump.flow_m3s * L_PER_MIN).toBeLessThan(140);
  });
  it('8 mm stays down', () => expect(climb_ratio(run, 8)).toBeLessThanOrEqual(0));
  it('4 mm climbs below a fifth of the speed of the fluid', () => expect(climb_ratio(run, 4)).toBeLessThan(0.2));
  it('2 mm climbs below two fifths', () => expect(climb_ratio(run, 2)).toBeLessThan(0.4));
});

describe('soaked powder', () => {
  it('at the working dose lifts 2 mm at over 55 %', () => {
    const run = circulated(1250, 0.95);
    expect(run.work.hole.K_Pasn).toBeGreaterThan(0.06);
    expect(run.work.hole.K_Pasn).toBeLessThan(0.12);
    expect(climb_ratio(run, 2)).toBeGreaterThan(0.55);
  });
  it('from K 0.3 on lifts 2 mm at over 80 %', () => {
    const run = circulated(2750, 0.95);
    expect(run.work.hole.K_Pasn).toBeGreaterThanOrEqual(0.3);
    expect(climb_ratio(run, 2)).toBeGreaterThan(0.8);
  });
});
