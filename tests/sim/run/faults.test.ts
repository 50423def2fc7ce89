// Things that go wrong: each is noticed by its signs within a minute, costs what it costs, and is mended by hand.
import { describe, expect, it } from 'vitest';
import {
  act,
  createRun,
  DEFAULT_KIT,
  sensesOf,
  step,
  type FaultMoment,
  type Run,
  type ScheduledFault,
  type Senses,
} from '../../../sim';
import { does, oneSoil, rigScenario, steps, until } from '../../rig';
import { drilling, lost, told, troubled } from './trouble';

/** Whether the senses of a run and of its twin part within a minute after a tick. */
function partsWithin60(run: Run, twin: Run, tick: number): string[] {
  const parted = new Set<string>();
  while (run.state.tick < tick + 60) {
    step(run);
    step(twin);
    const [here, there] = [sensesOf(run), sensesOf(twin)];
    for (const key of Object.keys(here) as (keyof Senses)[])
      if (JSON.stringify(here[key]) !== JSON.stringify(there[key])) parted.add(key);
    if (run.state.tick <= tick) expect([...parted]).toEqual([]);
  }
  return [...parted];
}

const AT_s = 40;
const at: FaultMoment = { tick: AT_s };

describe('against a twin without it, within a minute', () => {
  const signs: readonly (readonly [ScheduledFault, keyof Senses])[] = [
    [{ fault: 'pumpStops', at }, 'pump'],
    [{ fault: 'hoseBursts', at }, 'returns'],
    [{ fault: 'rainFills', at }, 'sky'],
    [{ fault: 'lostTool', at }, 'stem'],
    [{ fault: 'helperAway', at }, 'hands'],
  ];
  it.each(signs)('$fault shows', (fault, sign) => {
    const parted = partsWithin60(drilling(troubled([fault])), drilling(rigScenario({})), AT_s);
    expect(parted).toContain(sign);
  });

  it('nothing shows of weak powder until the fluid is felt or timed: then it is thin', () => {
    const mixed = (faults: readonly ScheduledFault[]): Run => {
      const run = createRun(troubled(faults));
      steps(run, AT_s + 1);
      does(run, 'addAdditive', { additive: 'polymer', mass_g: 1500, manner: 'sprinkled' });
      steps(run, 3600);
      return run;
    };
    const [weak, good] = [mixed([{ fault: 'weakPowder', at }]), mixed([])];
    expect({ ...sensesOf(weak), felt: [] }).toEqual({ ...sensesOf(good), felt: [] });
    for (const run of [weak, good]) does(run, 'funnelTest');
    expect(partsWithin60(weak, good, weak.state.tick + 1)).toEqual(['funnel']);
    expect(weak.state.funnel!.seconds_s).toBeLessThan(good.state.funnel!.seconds_s);
    expect(lost(weak)).toBeLessThan(1e-9);
  });
});

describe('the engine', () => {
  it('dies under load only, and stays silent until it is mended', () => {
    const run = createRun(troubled([{ fault: 'pumpStops', at }]));
    steps(run, 100);
    expect(run.state.faults.engineDead).toBe(false);
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 2);
    expect(sensesOf(run).pump).toMatchObject({ throttle_frac: 0, dead: true });
    expect(act(run, 'setThrottle', { throttle_frac: 1 })).toMatchObject({ reason: 'engineDead' });
    expect(act(run, 'mend', { what: 'hose' })).toMatchObject({ reason: 'nothingToMend' });
    does(run, 'mend', { what: 'engine' });
    expect(act(run, 'mend', { what: 'engine' })).toMatchObject({ reason: 'beingMended' });
    until(run, () => told(run).includes('mended'), 700);
    does(run, 'setThrottle', { throttle_frac: 1 });
    expect(sensesOf(run).pump.dead).toBe(false);
  });
});

describe('a torn hose', () => {
  const scenario = troubled([{ fault: 'hoseBursts', at, share_frac: 0.5 }]);

  it('throws fluid on the ground, which is counted, and gives the bit less', () => {
    const run = drilling(scenario);
    steps(run, AT_s);
    const whole_m3s = run.state.pump.flow_m3s;
    steps(run, 2);
    const { pump, faults } = run.state;
    // With less to push down the stem the pump gives more, and the stem gets less.
    expect(pump.flow_m3s).toBeGreaterThan(whole_m3s);
    expect(pump.flow_m3s * (1 - faults.hoseLost_frac)).toBeLessThan(0.8 * whole_m3s);
    const before = run.state.boundary.waterOut_m3;
    steps(run, 60);
    expect(run.state.boundary.waterOut_m3 - before).toBeGreaterThan(0.9 * 0.5 * 60 * whole_m3s);
    expect(sensesOf(run).pump.hose).toBe('sprays');
    expect(lost(run)).toBeLessThan(1e-9);
  });

  it('is bound with the pump shut, and only then', () => {
    const run = drilling(scenario);
    steps(run, 60);
    expect(act(run, 'mend', { what: 'hose' })).toMatchObject({ reason: 'pumpRunning' });
    does(run, 'setThrottle', { throttle_frac: 0 });
    does(run, 'setFeed', { feed_frac: 0 });
    steps(run, 1);
    expect(sensesOf(run).pump.hose).toBe('torn');
    const out_m3 = run.state.boundary.waterOut_m3;
    does(run, 'mend', { what: 'hose' });
    until(run, () => told(run).includes('mended'), 400);
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 60);
    expect(sensesOf(run).pump.hose).toBe('whole');
    expect(run.state.boundary.waterOut_m3 - out_m3).toBeLessThan(0.02);
  });
});

describe('a shower', () => {
  const wet = troubled([{ fault: 'rainFills', at, rain_mmh: 60, time_s: 600 }]);
  const rainedIn_m3 = (ditch: boolean): number => {
    const run = createRun(wet);
    if (ditch) does(run, 'mend', { what: 'ditch' });
    // Dug before it rains in earnest, the ditch keeps off what comes later.
    steps(run, 320);
    const before = run.state.boundary.waterIn_m3;
    steps(run, 400);
    expect(lost(run)).toBeLessThan(1e-9);
    expect(told(run).filter((name) => name.startsWith('rain'))).toEqual(['rainBegins', 'rainEnds']);
    return run.state.boundary.waterIn_m3 - before;
  };

  it('sheds the rain of 12 m2 into the pit: 60 mm/h for a minute are a millimetre, 12 litres', () => {
    const { settling, suction } = DEFAULT_KIT;
    const open_m2 = settling.area_m2 + suction.area_m2 + 0.2;
    // It rains on until 641 s: 321 s of the 400 looked at.
    expect(rainedIn_m3(false)).toBeCloseTo((321 / 60) * 0.001 * (12 + open_m2), 3);
  });

  it('is kept out by a ditch, but for what falls into the pit itself', () => {
    expect(rainedIn_m3(true)).toBeLessThan(0.15 * rainedIn_m3(false));
  });
});

describe('a tool in the hole', () => {
  const scenario = troubled([{ fault: 'lostTool', at }], rigScenario({ layers: oneSoil('mediumSand') }));
  const onTool = (): Run => {
    const run = drilling(scenario);
    steps(run, AT_s + 20);
    return run;
  };

  it('knocks under the bit, which goes no deeper', () => {
    const run = onTool();
    const { depth_m } = run.state.hole;
    steps(run, 120);
    expect(run.state.hole.depth_m).toBe(depth_m);
    expect(sensesOf(run).stem.sound).toBe('knock');
    expect(told(run)).toContain('bitRefused');
    expect(run.record.events.find(({ name }) => name === 'toolDropped')).toBeDefined();
    expect(sensesOf(run).felt).not.toContain('toolDropped');
  });

  it('is worked into the wall of sand, or fished with the stem out', () => {
    const worked = onTool();
    does(worked, 'setFeed', { feed_frac: 0 });
    does(worked, 'setTurning', { on: false });
    for (let tries = 0; tries < 12 && worked.state.faults.tool; tries++) {
      does(worked, 'workStem', { time_s: 120 });
      steps(worked, 125);
    }
    expect(told(worked)).toContain('toolGone');

    const fished = onTool();
    does(fished, 'setFeed', { feed_frac: 0 });
    does(fished, 'setTurning', { on: false });
    expect(act(fished, 'mend', { what: 'tool' })).toMatchObject({ reason: 'stemInHole' });
    does(fished, 'lift', { distance_m: 6, speed_ms: 0.2 });
    steps(fished, 30);
    for (let tries = 0; tries < 10 && fished.state.faults.tool; tries++) {
      does(fished, 'mend', { what: 'tool' });
      steps(fished, 605);
    }
    expect(told(fished)).toContain('toolGone');
    // The hook may be let down where there is nothing: nobody can see.
    does(fished, 'mend', { what: 'tool' });
    steps(fished, 605);
    expect(told(fished).at(-2)).toBe('nothingFished');
  });
});

describe('a helper who goes', () => {
  it('lets go of rope and stem, and comes back', () => {
    const run = drilling(troubled([{ fault: 'helperAway', at, time_s: 300 }]));
    steps(run, AT_s + 1);
    expect(sensesOf(run).hands).toMatchObject({ total: 1, free: 0 });
    expect(run.state.stem).toMatchObject({ turning: true, feed_frac: 0 });
    steps(run, 310);
    expect(sensesOf(run).hands.total).toBe(2);
    expect(told(run)).toContain('helperBack');
  });
});
