// Our transport against a general solver of differential equations, on the same problem, grid and norm.
import { medianTime_s, type Bench, type Row } from './bench';
import { CARRIED_s, byLines, bySweeps } from './plug';

const TOLERANCES = [1e-3, 1e-5, 1e-7];
const RUNS = 7;

/** Middle time of one solution, each run repeating it often enough to be timed, and its error. */
function measured(once: () => number, repeats: number): { time_s: number; error: number } {
  let error = 0;
  for (let i = 0; i < 3 * repeats; i++) error = once();
  const time_s = medianTime_s(RUNS, () => {
    for (let i = 0; i < repeats; i++) once();
  });
  return { time_s: time_s / repeats, error };
}

const bench: Bench = {
  title: `a pulse and a continuous load ${CARRIED_s} s up an annulus of 20 m, ours and the method of lines with odex`,
  run: () => {
    const ours = measured(bySweeps(), 200);
    const rows: Row[] = [
      { what: 'ours, a sweep a second', value: ours.time_s * 1000, unit: 'ms' },
      { what: '  off plug flow', value: ours.error * 100, unit: '%' },
    ];
    for (const tolerance of TOLERANCES) {
      const lines = measured(byLines(tolerance), 1);
      rows.push(
        { what: `odex, tolerance ${tolerance}`, value: lines.time_s * 1000, unit: 'ms' },
        { what: '  off plug flow', value: lines.error * 100, unit: '%' },
        { what: '  times our time', value: lines.time_s / ours.time_s, unit: 'x' },
      );
    }
    return rows;
  },
};
export default bench;
