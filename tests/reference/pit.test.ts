// The settling pit and the volumes of the job.
import { describe } from 'vitest';
import { createHole, holeVolume_m3 } from '../../sim/hole/hole';
import { createHoleWork, sweepHole } from '../../sim/hole/sweep';
import { cutGround } from '../../sim/hole/cut';
import { createParcel, emptyParcel, parcelVolume_m3 } from '../../sim/hole/parcel';
import { terminalVelocity_ms } from '../../sim/hole/fall';
import { dragLawOf } from '../../sim/hole/drag';
import { pourInto } from '../../sim/pit/exchange';
import { levelBelowRim_m } from '../../sim/pit/level';
import { createPit } from '../../sim/pit/pit';
import { seepage_m3s } from '../../sim/pit/seep';
import { outflowShare } from '../../sim/pit/settle';
import { SOILS } from '../../sim/materials/soils';
import { row } from './row';

const HAZEN = 'Hazen 1904, Camp 1946: n mixed tanks in a row keep 1 - (1 + x/n)^-n, x = w/v_o';
const L_PER_MIN = 60000;

/** What a mixed body of fluid keeps that settles w A per second and gives off outflowShare of its mean. */
const kept = (x: number, tanks: number): number => x / (x + outflowShare(x, tanks));

describe('removal by overflow rate', () => {
  const RATIOS = [0.25, 0.5, 1, 2, 3];
  const ROWS = [
    { tanks: 1, expected: [0.2, 0.3333, 0.5, 0.6667, 0.75] },
    { tanks: 3, expected: [0.2135, 0.3703, 0.5781, 0.784, 0.875] },
    { tanks: 5, expected: [0.2165, 0.3791, 0.5981, 0.8141, 0.9046] },
  ];
  for (const r of ROWS) {
    row({
      id: `OV-1/${r.tanks}`,
      mark: 'D',
      about: `share kept by ${r.tanks} tank(s) at w/v_o .25, .5, 1, 2, 3`,
      source: HAZEN,
      expected: r.expected,
      tolerance: { abs: 1e-4 },
      compute: () => RATIOS.map((x) => kept(x, r.tanks)),
    });
  }
  row({
    id: 'OV-2',
    mark: 'D',
    about: '150 L/min over 1.2 m2: a grain of 50 um in water falls about as fast as the overflow rate, 2.083 mm/s',
    source: 'derived with Ferguson & Church 2004; 12 % for the other fall law',
    expected: 150 / L_PER_MIN / 1.2,
    tolerance: { rel: 0.12 },
    compute: () => terminalVelocity_ms(dragLawOf(0.8), 50e-6, 2650, 998.2, { K_Pasn: 1.002e-3, n_ratio: 1 }, 0),
  });
});

describe('volumes', () => {
  const bare = (depth_m: number, diameter_m: number): number =>
    holeVolume_m3(createHole({ dz_m: 0.25, maxDepth_m: depth_m, bit_m: diameter_m, starter_m: depth_m }));
  row({
    id: 'PIT-1',
    mark: 'V',
    about: 'hole of 7.875 in and 400 ft: twice its volume asks for a pit of at least 2000 US gal',
    source: 'public drilling guide: pit at least twice the volume of the hole, its example',
    expected: { from: 2000, to: 2050 },
    compute: () => (2 * bare(121.92, 0.200025)) / 3.785411784e-3,
  });
  row({
    id: 'PIT-2',
    mark: 'D',
    about: 'hole of 100 mm at 10, 20, 30 m, L',
    source: 'pi/4 D^2 L',
    expected: [78.5, 157.1, 235.6],
    tolerance: { abs: 0.05 },
    compute: () => [10, 20, 30].map((d) => bare(d, 0.1) * 1000),
  });
  row({
    id: 'PIT-3',
    mark: 'D',
    about: 'hole of 150 mm at 10, 20, 30 m, L',
    source: 'pi/4 D^2 L',
    expected: [176.7, 353.4, 530.1],
    tolerance: { abs: 0.05 },
    compute: () => [10, 20, 30].map((d) => bare(d, 0.15) * 1000),
  });
  row({
    id: 'PIT-4',
    mark: 'D',
    about: 'a pit of 1.2 m2 falls .833 mm in a minute for each L/min lost',
    source: 'volume over area',
    expected: 0.833e-3,
    tolerance: { rel: 0.001 },
    compute: () => {
      const pit = createPit({
        settling: { area_m2: 1.2, depth_m: 0.8 },
        suction: { area_m2: 0.5, depth_m: 0.8 },
        notch_m: 0.15,
        strainer_m: 0.2,
      });
      const water = createParcel();
      water.water_m3 = 0.5;
      pourInto(pit.settling, water);
      const before_m = levelBelowRim_m(pit.settling);
      emptyParcel(water);
      water.water_m3 = -0.001;
      pourInto(pit.settling, water);
      return levelBelowRim_m(pit.settling) - before_m;
    },
  });
});

describe('cuttings in the returns', () => {
  const CASES = [
    { id: 'CUT-1', rate_mh: 20, flow_Lmin: 100, expected: 0.017 },
    { id: 'CUT-2', rate_mh: 60, flow_Lmin: 100, expected: 0.0511 },
    { id: 'CUT-3', rate_mh: 20, flow_Lmin: 200, expected: 0.0085 },
  ];
  for (const c of CASES) {
    row({
      id: c.id,
      mark: 'D',
      about: `hole of 100 mm, porosity .35, ${c.rate_mh} m/h, ${c.flow_Lmin} L/min: grains over flow at the mouth once the stream is steady`,
      source: '(1 - porosity) R A / Q, derived; fine grains so that nothing lags, rate and flow kept for ten minutes',
      expected: c.expected,
      tolerance: { rel: 0.01 },
      compute: () => {
        const hole = createHole({ dz_m: 0.25, maxDepth_m: 20, bit_m: 0.1, starter_m: 2 });
        const work = createHoleWork(hole);
        const none = new Float64Array(hole.cells);
        const inflow = createParcel();
        const mouth = createParcel();
        const cut = createParcel();
        const flow_m3s = c.flow_Lmin / L_PER_MIN;
        let grains_m3 = 0;
        for (let t = 0; t < 600; t++) {
          emptyParcel(inflow);
          inflow.water_m3 = flow_m3s;
          const soil = { porosity_frac: 0.35, saturation_frac: 1, fractions: [0.5, 0.5, 0, 0, 0, 0, 0, 0], salt_gL: 0 };
          cutGround(hole, c.rate_mh / 3600, 0.1, soil, cut);
          const input = {
            dt_s: 1,
            bit_m: hole.depth_m,
            rodOutside_m: 0.0337,
            temperature_C: 20,
            inflow,
            ambient_1s: 30,
            leave_m3: none,
            leaveFines_frac: none,
            saltIn_gL: none,
          };
          sweepHole(hole, work, input, mouth);
          if (t >= 540) grains_m3 += parcelVolume_m3(mouth) - mouth.water_m3;
        }
        // The bit runs away from the stream: brought to a bit that stands.
        const upward_ms = flow_m3s / ((Math.PI / 4) * (0.1 * 0.1 - 0.0337 * 0.0337));
        return (grains_m3 / 60 / flow_m3s) * (1 + c.rate_mh / 3600 / upward_ms);
      },
    });
  }
});

describe('seepage through the floor', () => {
  /** mm an hour through a floor alone, water of 20 C, water table far below. */
  function floor_mmh(K_ms: number): number {
    const size = { area_m2: 0.6, depth_m: 0.8 };
    const pit = createPit({ settling: size, suction: size, notch_m: 0.15, strainer_m: 0.2 });
    pit.settling.water_m3 = 0.48;
    const ground = { wallK_ms: new Float64Array(0), floorK_ms: K_ms, waterTable_m: 10 };
    return (seepage_m3s(pit.settling, ground, 1.002e-3) / size.area_m2) * 3.6e6;
  }
  row({
    id: 'PIT-6',
    mark: 'D',
    about: 'K 1e-5 m/s under a gradient of 1, mm/h',
    source: 'Darcy 1856: 1e-5 x 3.6e6',
    expected: 36,
    tolerance: { rel: 1e-9 },
    compute: () => floor_mmh(1e-5),
  });
  row({
    id: 'PIT-7',
    mark: 'M',
    about: 'steady infiltration into fine and medium sand, mm/h',
    source: 'irrigation training manuals, from memory: sand takes more than 30 mm/h',
    expected: { from: 30, to: 5000 },
    compute: () => [floor_mmh(SOILS.fineSand.K_ms), floor_mmh(SOILS.mediumSand.K_ms)],
  });
});
