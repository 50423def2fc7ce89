// Hand-made cases of lessons/rubric/fluid.ts: the dose where it works, and the fluid tried. Bands as in first-rods and slick-fluid.

import { stop, type Row } from '../handMade';
import { cleanView } from '../handMade';
import { drilled, halfway, told, withActs, type HandMade } from './cases';

/** One dose all the way down; the row of 3.0 m is that of minute 30, and fifteen rows of .1 m lie from there to 4.4 m. */
const dose = (soaked_gL: number) => (): Row => ({ soaked_gL });
const first = (value: number) => [{ tick: 1800, depth_m: 3, value, unit: 'g/L' }];
const figures = { least_gL: 0.5, most_gL: 1.6 };

/** A fit of half everywhere, in a band from .2 to .95. */
const HALF_FITS = (0.5 - 0.2) / (0.95 - 0.2);

export const fluid: HandMade = {
  doseFits: {
    bands: { depth_m: 3, ...figures, full_frac: 0.95, none_frac: 0.2 },
    nothing: { reason: 'none', data: { depth_m: 3 } },
    cases: [
      {
        kind: 'full',
        says: 'from the least to the most all is right',
        view: drilled((_row, i) => ({ soaked_gL: i % 2 === 0 ? 0.5 : 1.6 })),
        share: 1,
        reason: 'full',
        data: { ...figures, wrong_m: 0 },
      },
      {
        kind: 'full',
        says: 'above 3 m the dose is not asked for',
        view: drilled((_row, i) => ({ soaked_gL: i < 30 ? 0 : 1 })),
        share: 1,
        reason: 'full',
        data: { ...figures, wrong_m: 0 },
      },
      {
        kind: 'between',
        says: 'a quarter too little fits half',
        view: drilled(dose(0.375)),
        share: HALF_FITS,
        reason: 'thin',
        data: { ...figures, wrong_m: 1.5 },
        evidence: first(0.38),
      },
      {
        kind: 'between',
        says: 'a quarter too much fits half',
        view: drilled(dose(2)),
        share: HALF_FITS,
        reason: 'thick',
        data: { ...figures, wrong_m: 1.5 },
        evidence: first(2),
      },
      {
        kind: 'between',
        says: 'nothing on five metres of fifteen, too thick by half on three: seven fit; thin is said',
        view: drilled((_row, i) => ({ soaked_gL: i < 35 ? 0 : i < 38 ? 2.4 : 1 })),
        share: (7 / 15 - 0.2) / (0.95 - 0.2),
        reason: 'thin',
        data: { ...figures, wrong_m: 0.8 },
        evidence: first(0),
      },
      {
        kind: 'none',
        says: 'water',
        view: drilled(dose(0)),
        share: 0,
        reason: 'thin',
        data: { ...figures, wrong_m: 1.5 },
        evidence: first(0),
      },
      {
        kind: 'none',
        says: 'half as much again as the most',
        view: drilled(dose(2.4)),
        share: 0,
        reason: 'thick',
        data: { ...figures, wrong_m: 1.5 },
        evidence: first(2.4),
      },
      {
        kind: 'unfinished',
        says: 'who never came to 3 m has shown nothing',
        view: halfway(dose(1)),
        share: 0,
        reason: 'none',
        data: { depth_m: 3 },
      },
    ],
  },
  fluidTried: {
    bands: { soak_s: 600, times: 1 },
    nothing: { reason: 'lost' },
    cases: [
      {
        kind: 'full',
        says: 'ten minutes after the powder it is felt',
        view: withActs([[601, 'feelFluid', {}]]),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 601 }],
      },
      {
        kind: 'full',
        says: 'the funnel tells as well',
        view: withActs([[900, 'funnelTest', {}]]),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 900 }],
      },
      {
        kind: 'between',
        says: 'one telling trial of two that are wanted',
        view: withActs([[900, 'funnelTest', {}]]),
        bands: { soak_s: 600, times: 2 },
        share: 1 / 2,
        reason: 'lost',
        data: {},
        evidence: [{ tick: 900 }],
      },
      {
        kind: 'none',
        says: 'a second before its time',
        view: withActs([[600, 'feelFluid', {}]]),
        share: 0,
        reason: 'soon',
        data: {},
        evidence: [{ tick: 600 }],
      },
      {
        kind: 'none',
        says: 'more powder begins the time anew',
        view: withActs([
          [850, 'addAdditive', { additive: 'polymer', mass_g: 200, manner: 'sprinkled' }],
          [900, 'feelFluid', {}],
        ]),
        share: 0,
        reason: 'soon',
        data: {},
        evidence: [{ tick: 900 }],
      },
      {
        kind: 'none',
        says: 'a trial that was refused is none',
        view: withActs([[900, 'feelFluid', {}]], [told(900, 'refused', { action: 'feelFluid', reason: 'handsBusy' })]),
        share: 0,
        reason: 'lost',
        data: {},
      },
      {
        kind: 'none',
        says: 'water without powder tells nothing',
        view: cleanView({ log: [[900, 'feelFluid', {}]], events: [stop(700, 1.48)] }),
        share: 0,
        reason: 'soon',
        data: {},
        evidence: [{ tick: 900 }],
      },
      {
        kind: 'unfinished',
        says: 'tried is tried, however deep the hole',
        view: { ...halfway(), log: [...cleanView().log, [900, 'feelFluid', {}]] },
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 900 }],
      },
    ],
  },
};
