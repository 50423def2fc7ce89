// A rig for tests: a scenario on ground of one's choice, and a driver that acts and steps.
import {
  act,
  buildGround,
  createRun,
  DEFAULT_KIT,
  step,
  type ActionName,
  type GroundRecipe,
  type Kit,
  type Payload,
  type Run,
  type Scenario,
  type SoilKind,
} from '../sim';

export interface RigOptions {
  layers?: GroundRecipe['layers'];
  seed?: number;
  rods?: number;
  starter_m?: number;
  kit?: Partial<Kit>;
  powder_kg?: number;
  maxDepth_m?: number;
  practice?: boolean;
  waterTable_m?: number;
}

const layer = (kind: SoilKind, thick_m: number) => ({ kind, thickness_m: [thick_m, thick_m] as [number, number] });

export const oneSoil = (kind: SoilKind): GroundRecipe['layers'] => [layer(kind, 40)];

export function rigScenario(options: RigOptions = {}): Scenario {
  const {
    seed = 1,
    rods = 1,
    starter_m = 0.3,
    powder_kg = 20,
    maxDepth_m = 32,
    practice = true,
    waterTable_m = 1,
  } = options;
  const layers = options.layers ?? [layer('silt', 1.5), layer('mediumSand', 40)];
  return {
    id: 'rig',
    version: 1,
    seed,
    practice,
    ground: buildGround({ layers, waterTable_m: [waterTable_m, waterTable_m] }, seed),
    kit: { ...DEFAULT_KIT, ...options.kit },
    opening: {
      rods,
      rodsInAll: 40,
      starter_m,
      pit_L: 880,
      primed: true,
      water_L: 2000,
      powder_kg,
      petrol_L: 20,
      maxDepth_m,
    },
  };
}

/** Acts and insists that the act was done. */
export function does(run: Run, name: ActionName, payload: Payload = {}): void {
  const result = act(run, name, payload);
  if (result.kind !== 'done') throw new Error(`${name} at tick ${run.state.tick}: ${JSON.stringify(result)}`);
}

export function steps(run: Run, count: number): void {
  for (let i = 0; i < count; i++) step(run);
}

/** Steps until the condition holds; throws after `most` seconds. */
export function until(run: Run, condition: (run: Run) => boolean, most = 7200): void {
  for (let i = 0; i < most; i++) {
    if (condition(run)) return;
    step(run);
  }
  throw new Error(`not reached by tick ${run.state.tick}`);
}

/** Drills the rod in hand down with this feed, then lets the stem turn free. */
export function drillRod(run: Run, feed_frac: number): void {
  does(run, 'setThrottle', { throttle_frac: 1 });
  does(run, 'setTurning', { on: true });
  does(run, 'setFeed', { feed_frac });
  until(run, ({ state, scenario }) => state.stem.bit_m >= state.stem.rods * scenario.kit.rodLength_m - 0.005, 20000);
  does(run, 'setFeed', { feed_frac: 0 });
}

/** Keeps the flow and lifts a little until nothing coarse comes up any more, or the time is over. */
export function clearHole(run: Run, seconds = 120): void {
  does(run, 'lift', { distance_m: 0.2, speed_ms: 0.1 });
  steps(run, seconds);
}

export function nextRod(run: Run): void {
  does(run, 'setTurning', { on: false });
  does(run, 'setThrottle', { throttle_frac: 0 });
  steps(run, 2);
  does(run, 'addRod');
  until(run, ({ state }) => state.tasks.length === 0);
}

/** Drills to a depth rod by rod, clearing before each stop; leaves the flow on. */
export function drillTo(run: Run, depth_m: number, feed_frac = 0.5): void {
  for (;;) {
    drillRod(run, feed_frac);
    if (run.state.hole.depth_m >= depth_m - 0.01) return;
    clearHole(run, 60);
    nextRod(run);
  }
}

/** 4.4 m of one soil, three rods, with so much powder soaked before: drilled and run clean, the flow still on, the stem not turning. */
export function drilledIn(kind: SoilKind, waterTable_m: number, dose_g: number): Run {
  const run = createRun(rigScenario({ layers: oneSoil(kind), waterTable_m, rods: 3 }));
  if (dose_g > 0) does(run, 'addAdditive', { additive: 'polymer', mass_g: dose_g, manner: 'sprinkled' });
  steps(run, 1800);
  does(run, 'setThrottle', { throttle_frac: 1 });
  does(run, 'setTurning', { on: true });
  does(run, 'setFeed', { feed_frac: 0.6 });
  until(run, ({ state }) => state.hole.depth_m > 4.4, 7200);
  does(run, 'setFeed', { feed_frac: 0 });
  steps(run, 60);
  does(run, 'setTurning', { on: false });
  return run;
}
