// Hand-made cases of lessons/rubric/additives.ts: fluid ready in time, not too thick, powder without lumps. Bands as in first-rods.

import type { LogEntry } from '$sim';
import { cleanView, stop, type Row } from '../handMade';
import { drilled, halfway, withActs, type HandMade } from './cases';

const dose = (soaked_gL: number) => (): Row => ({ soaked_gL });

/** The third and last stop, at 4.45 m, lets so much bed lie; it is ten seconds before the end. */
const leaving = (bed_m: number, soaked_gL: number) => {
  const view = drilled(dose(soaked_gL));
  return { ...view, events: view.events.map((event) => (event.tick === 2500 ? stop(2500, 4.45, { bed_m }) : event)) };
};

/** 3 m are reached in minute 30; only the stop at 4.45 m lies more than half a metre below. */
const seen = (dose_gL: number, left_m: number) => [
  { tick: 1800, depth_m: 3, value: dose_gL, unit: 'g/L' },
  { tick: 2500, depth_m: 4.45, value: left_m, unit: 'm' },
];

const powder = (mass_g: number, manner: string): LogEntry => [
  2,
  'addAdditive',
  { additive: 'polymer', mass_g, manner },
];
const noPowder = cleanView().log.filter(([, action]) => action !== 'addAdditive');

export const additives: HandMade = {
  fluidReady: {
    bands: { depth_m: 3, full_gL: 0.5, none_gL: 0.1, bedFull_m: 0.02, bedNone_m: 0.05 },
    nothing: { reason: 'none', data: { depth_m: 3 } },
    cases: [
      {
        kind: 'full',
        says: 'soaked in time, whatever lies below later',
        view: leaving(0.3, 0.5),
        share: 1,
        reason: 'soaked',
        data: { depth_m: 3, dose_gL: 0.5 },
        evidence: seen(0.5, 0.3),
      },
      {
        kind: 'full',
        says: 'or the grains come up without it',
        view: leaving(0.02, 0),
        share: 1,
        reason: 'lifted',
        data: { left_cm: 2 },
        evidence: seen(0, 0.02),
      },
      {
        kind: 'between',
        says: '.3 g/L is the middle of its band',
        view: leaving(0.3, 0.3),
        share: (0.3 - 0.1) / (0.5 - 0.1),
        reason: 'lost',
        data: { depth_m: 3, dose_gL: 0.3 },
        evidence: seen(0.3, 0.3),
      },
      {
        kind: 'between',
        says: 'the better of the two counts: 3.5 cm left is the middle of that band',
        view: leaving(0.035, 0.2),
        share: (0.05 - 0.035) / (0.05 - 0.02),
        reason: 'lifted',
        data: { left_cm: 4 },
        evidence: seen(0.2, 0.035),
      },
      {
        kind: 'none',
        says: 'neither soaked nor lifted',
        view: leaving(0.3, 0.05),
        share: 0,
        reason: 'lost',
        data: { depth_m: 3, dose_gL: 0.05 },
        evidence: seen(0.05, 0.3),
      },
      {
        kind: 'unfinished',
        says: 'who never came to 3 m has shown nothing',
        view: halfway(dose(0.8)),
        share: 0,
        reason: 'none',
        data: { depth_m: 3 },
      },
    ],
  },
  notTooThick: {
    bands: { full_gL: 1.4, none_gL: 2.4 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '1.4 g/L',
        view: drilled(dose(1.4)),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 0, value: 1.4, unit: 'g/L' }],
      },
      {
        kind: 'full',
        says: 'fluid that another crew left too thick, and that grew no thicker',
        view: { ...drilled((_row, i) => ({ soaked_gL: i === 0 ? 3 : 2 })), log: noPowder, powderBefore_kg: 2 },
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 0, value: 3, unit: 'g/L' }],
      },
      {
        kind: 'between',
        says: 'the thickest counts: 1.9 g/L is the middle of the band',
        view: drilled((_row, i) => ({ soaked_gL: i === 10 ? 1.9 : 1 })),
        share: (2.4 - 1.9) / (2.4 - 1.4),
        reason: 'lost',
        data: { dose_gL: 1.9 },
        evidence: [{ tick: 600, value: 1.9, unit: 'g/L' }],
      },
      {
        kind: 'none',
        says: 'three grams',
        view: drilled((_row, i) => ({ soaked_gL: i === 10 ? 3 : 1 })),
        share: 0,
        reason: 'lost',
        data: { dose_gL: 3 },
        evidence: [{ tick: 600, value: 3, unit: 'g/L' }],
      },
      {
        kind: 'none',
        says: 'without powder nothing was shown',
        view: { ...drilled(dose(0)), log: noPowder },
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'half the depth with the right fluid earns all',
        view: halfway(dose(1)),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 0, value: 1, unit: 'g/L' }],
      },
    ],
  },
  noFishEyes: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '700 g, all sprinkled',
        view: cleanView(),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 1, value: 700, unit: 'g' }],
      },
      {
        kind: 'full',
        says: 'the crew before had mixed enough',
        view: cleanView({ log: noPowder, powderBefore_kg: 1 }),
        share: 1,
        reason: 'before',
        data: {},
      },
      {
        kind: 'between',
        says: '350 g of 1050 dumped cost a third',
        view: withActs([powder(350, 'dumped')]),
        share: 1 - 350 / 1050,
        reason: 'lost',
        data: { lump_g: 350 },
        evidence: [
          { tick: 1, value: 700, unit: 'g' },
          { tick: 2, value: 350, unit: 'g' },
        ],
      },
      {
        kind: 'none',
        says: 'chlorine is no powder',
        view: cleanView({ log: [[2, 'addAdditive', { additive: 'chlorine', mass_g: 10, manner: 'sprinkled' }]] }),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'none',
        says: 'all dumped',
        view: cleanView({ log: [powder(700, 'dumped')] }),
        share: 0,
        reason: 'lost',
        data: { lump_g: 700 },
        evidence: [{ tick: 2, value: 700, unit: 'g' }],
      },
      {
        kind: 'unfinished',
        says: 'powder sprinkled is sprinkled, however deep the hole',
        view: halfway(),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 1, value: 700, unit: 'g' }],
      },
    ],
  },
};
