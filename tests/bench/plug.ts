// One transport problem in two ways: a pulse and a continuous load carried 20 m up an annulus, on one grid, judged by one norm
// against the answer of plug flow. Ours: a sweep a second. The other: the method of lines with the same limited slopes, its
// equations handed to a general solver (Hairer & Wanner's ODEX, npm package odex).
import { createRequire } from 'node:module';
import { carryField, createFieldWork, fullColumn, type Entry } from '../../sim/hole/field';

interface OdexSolver {
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  solve(f: (t: number, y: number[]) => number[], from: number, y: number[], to: number): { y: number[] };
}
// Its own sources carry no declarations that our settings accept.
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => OdexSolver };

const CELLS = 80;
const DZ_m = 0.25;
const DEPTH_m = CELLS * DZ_m;
/** Climb of the class with the pulse and of the class with the load; seconds carried. */
const PULSE_ms = 0.287;
const LOAD_ms = 0.24;
export const CARRIED_s = 50;
/** The pulse fills this stretch at the start; both have one unit a metre. */
const PULSE_m = [17, 19] as const;

/** Share of cell i that lies between two depths, times its height. */
const overlap_m = (i: number, from_m: number, to_m: number): number =>
  Math.max(0, Math.min(to_m, (i + 1) * DZ_m) - Math.max(from_m, i * DZ_m));

function startPulse(): Float64Array {
  return Float64Array.from({ length: CELLS }, (_, i) => overlap_m(i, PULSE_m[0], PULSE_m[1]));
}

/** Mean error of both fields against plug flow, as a share of what there is. */
export function errorOf(pulse: ArrayLike<number>, load: ArrayLike<number>): number {
  let off = 0;
  for (let i = 0; i < CELLS; i++) {
    const moved_m = PULSE_ms * CARRIED_s;
    off += Math.abs(pulse[i] - overlap_m(i, PULSE_m[0] - moved_m, PULSE_m[1] - moved_m));
    off += Math.abs(load[i] - overlap_m(i, DEPTH_m - LOAD_ms * CARRIED_s, DEPTH_m));
  }
  return off / (PULSE_m[1] - PULSE_m[0] + LOAD_ms * CARRIED_s);
}

/** Our own way. Returns a function that does it all once and says how far it is off. */
export function bySweeps(): () => number {
  const column = fullColumn(CELLS, DZ_m, DEPTH_m);
  const work = createFieldWork(CELLS);
  const none: Entry = { face: CELLS, amount: 0, moment: 0, up_frac: 1 };
  const entry: Entry = { face: CELLS, amount: LOAD_ms, moment: LOAD_ms * DEPTH_m, up_frac: 1 };
  const start = startPulse();
  const pulse = new Float64Array(CELLS);
  const load = new Float64Array(CELLS);
  const pulseMoment = new Float64Array(CELLS);
  const loadMoment = new Float64Array(CELLS);
  return () => {
    pulse.set(start);
    load.fill(0);
    pulseMoment.fill(0);
    loadMoment.fill(0);
    for (let t = 0; t < CARRIED_s; t++) {
      work.way.fill(PULSE_ms / DZ_m, 0, CELLS);
      carryField(pulse, pulseMoment, 0, column, none, work);
      work.way.fill(LOAD_ms / DZ_m, 0, CELLS);
      carryField(load, loadMoment, 0, column, entry, work);
    }
    return errorOf(pulse, load);
  };
}

/** Amount per second that a cell sends up through its upper face: from the limited slope within it, as our sweep has it. */
function sent(y: number[], base: number, i: number, speed_ms: number): number {
  const here = y[base + i];
  const above = i > 0 ? y[base + i - 1] : here;
  const below = i < CELLS - 1 ? y[base + i + 1] : here;
  const rise = (below - here) * (here - above);
  const slope = rise > 0 ? (2 * rise) / (below - above) : 0;
  return (speed_ms / DZ_m) * (here - slope / 2);
}

/** The method of lines with odex at a tolerance. Returns a function that does it all once and says how far it is off. */
export function byLines(tolerance: number): () => number {
  const start = [...startPulse(), ...new Array<number>(CELLS).fill(0)];
  const rate = (_t: number, y: number[]): number[] => {
    const out = new Array<number>(2 * CELLS);
    let pulseIn = 0;
    let loadIn = LOAD_ms;
    for (let i = CELLS - 1; i >= 0; i--) {
      const pulseOut = sent(y, 0, i, PULSE_ms);
      const loadOut = sent(y, CELLS, i, LOAD_ms);
      out[i] = pulseIn - pulseOut;
      out[CELLS + i] = loadIn - loadOut;
      pulseIn = pulseOut;
      loadIn = loadOut;
    }
    return out;
  };
  return () => {
    const solver = new Solver(2 * CELLS);
    solver.relativeTolerance = tolerance;
    solver.absoluteTolerance = tolerance * DZ_m;
    solver.maxSteps = 1e6;
    const { y } = solver.solve(rate, 0, start, CARRIED_s);
    return errorOf(y.slice(0, CELLS), y.slice(CELLS));
  };
}
