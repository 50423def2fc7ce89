// What each part of a tick costs on a full load.
import { medianTime_s, type Bench } from './bench';
import { SUBMODELS } from './submodels';

const RUNS = 9;
const TICKS = 2000;

const bench: Bench = {
  title: `parts of one tick on a full load, middle of ${RUNS} x ${TICKS} ticks`,
  run: () =>
    SUBMODELS.map(({ what, once }) => {
      const time_s = medianTime_s(RUNS, () => {
        for (let t = 0; t < TICKS; t++) once();
      });
      return { what, value: (time_s / TICKS) * 1e6, unit: 'us' };
    }),
};
export default bench;
