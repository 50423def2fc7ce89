// Hand-made cases of lessons/rubric/economy.ts: hours and supplies, in the measure of what was done. Bands as in first-rods.

import { cleanView } from '../handMade';
import { cleanWell } from '../handMadeWell';
import { halfway, leftAfterPlan, type HandMade } from './cases';

const took = (value: number, start_tick = 0) => [{ tick: start_tick + value, value, unit: 's' }];
const used = (powder_g: number, water_L: number) => [
  { value: powder_g, unit: 'g' },
  { value: water_L, unit: 'L' },
];
const spent = (value: number) => [{ value, unit: 'marks' }];

export const economy: HandMade = {
  jobTime: {
    bands: { full_s: 4500, none_s: 8100 },
    nothing: { reason: 'unfinished', data: { time_min: 10 } },
    cases: [
      {
        kind: 'full',
        says: 'an hour and a quarter',
        view: cleanView({ ticks: 4500 }),
        share: 1,
        reason: 'full',
        data: { time_min: 75 },
        evidence: took(4500),
      },
      {
        kind: 'between',
        says: 'an hour and three quarters is the middle of the band; it counts from the take-over',
        view: cleanView({ ticks: 10300, start_tick: 4000 }),
        share: (8100 - 6300) / (8100 - 4500),
        reason: 'lost',
        data: { time_min: 105, goal_min: 75 },
        evidence: took(6300, 4000),
      },
      {
        kind: 'none',
        says: 'three hours',
        view: cleanView({ ticks: 10800 }),
        share: 0,
        reason: 'lost',
        data: { time_min: 180, goal_min: 75 },
        evidence: took(10800),
      },
      {
        kind: 'unfinished',
        says: 'quick, but half the depth: half',
        view: halfway(),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { time_min: 22 },
        evidence: took(1340),
      },
      {
        kind: 'unfinished',
        says: 'half of the learner\u2019s own part of the way: 2.2 m, from 1.1 m, to 3.3 m',
        view: { ...halfway(), startDepth_m: 1.1, goal_m: 3.3 },
        share: (2.2 - 1.1) / (3.3 - 1.1),
        reason: 'unfinished',
        data: { time_min: 22 },
        evidence: took(1340),
      },
      {
        kind: 'unfinished',
        says: 'a well not handed over earns nothing',
        view: leftAfterPlan(),
        bands: { full_s: 216000, none_s: 259200 },
        share: 0,
        reason: 'unfinished',
        data: { time_min: 123 },
        evidence: took(7400),
      },
    ],
  },
  suppliesUsed: {
    bands: { powderFull_g: 1300, powderNone_g: 2200, waterFull_L: 500, waterNone_L: 1200 },
    nothing: { reason: 'unfinished' },
    cases: [
      {
        kind: 'full',
        says: 'both within what is enough',
        view: cleanView({ powderUsed_kg: 1.3, waterUsed_L: 500 }),
        share: 1,
        reason: 'full',
        data: { powder_g: 1300, water_L: 500 },
        evidence: used(1300, 500),
      },
      {
        kind: 'between',
        says: 'the worse counts: 1.75 kg is the middle of the powder, 640 L four fifths of the water',
        view: cleanView({ powderUsed_kg: 1.75, waterUsed_L: 640 }),
        share: (2200 - 1750) / (2200 - 1300),
        reason: 'powder',
        data: { powder_g: 1750, goal_g: 1300 },
        evidence: used(1750, 640),
      },
      {
        kind: 'between',
        says: '850 L is the middle of the water',
        view: cleanView({ waterUsed_L: 850 }),
        share: (1200 - 850) / (1200 - 500),
        reason: 'water',
        data: { water_L: 850, goal_L: 500 },
        evidence: used(700, 850),
      },
      {
        kind: 'none',
        says: 'three kilograms of powder',
        view: cleanView({ powderUsed_kg: 3 }),
        share: 0,
        reason: 'powder',
        data: { powder_g: 3000, goal_g: 1300 },
        evidence: used(3000, 100),
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: {},
        evidence: used(700, 100),
      },
      {
        kind: 'unfinished',
        says: 'a well not handed over earns nothing',
        view: cleanWell({}, { handedOver: false }),
        share: 0,
        reason: 'unfinished',
        data: {},
        evidence: used(1200, 2000),
      },
    ],
  },
  withinBudget: {
    bands: { full_marks: 200, none_marks: 300 },
    nothing: { reason: 'unfinished', data: { cost_marks: 0, budget_marks: 200 } },
    cases: [
      {
        kind: 'full',
        says: 'to the last mark',
        view: cleanView({ cost_marks: 200 }),
        share: 1,
        reason: 'full',
        data: { cost_marks: 200, budget_marks: 200 },
        evidence: spent(200),
      },
      {
        kind: 'between',
        says: '225 of 200 marks leave three quarters',
        view: cleanView({ cost_marks: 225 }),
        share: (300 - 225) / (300 - 200),
        reason: 'lost',
        data: { cost_marks: 225, budget_marks: 200 },
        evidence: spent(225),
      },
      {
        kind: 'none',
        says: 'half as much again',
        view: cleanView({ cost_marks: 300 }),
        share: 0,
        reason: 'lost',
        data: { cost_marks: 300, budget_marks: 200 },
        evidence: spent(300),
      },
      {
        kind: 'unfinished',
        says: 'half the depth for little money earns half',
        view: { ...halfway(), cost_marks: 90 },
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { cost_marks: 90, budget_marks: 200 },
        evidence: spent(90),
      },
    ],
  },
};
