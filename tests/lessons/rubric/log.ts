// Hand-made cases of lessons/rubric/log.ts: a sample a rod, labels, names. Bands as in first-rods; `rod_m` alone as in open-well.

import { caught, cleanView, inTray, withEvents } from '../handMade';
import type { RunView } from '$lessons';
import { halfway, type HandMade } from './cases';

const SILT = [0.1, 0.8, 0.1, 0, 0, 0, 0, 0];
const COARSE = [0, 0, 0.05, 0.25, 0.6, 0.1, 0, 0];

/** In place of the clean job's three samples those at these labels; the grains came from so much higher up. */
const labelled = (...samples: [label_m: number, origin_m: number][]): RunView =>
  withEvents(
    ({ name }) => name === 'sampleCaught',
    samples.map(([label_m, origin_m], i) => caught(600 * (i + 1), i + 1, label_m, origin_m)),
  );
const labels = (...label_m: number[]) => label_m.map((depth_m, i) => ({ tick: 600 * (i + 1), depth_m }));

const CLEAN_LABELS = [
  { tick: 600, depth_m: 1.2 },
  { tick: 1200, depth_m: 2.6 },
  { tick: 2000, depth_m: 4.2 },
];
const CLEAN_ORIGINS = [
  { tick: 600, depth_m: 1.1, value: 0.1, unit: 'm' },
  { tick: 1200, depth_m: 2.5, value: 0.1, unit: 'm' },
  { tick: 2000, depth_m: 4.1, value: 0.1, unit: 'm' },
];
const CLEAN_TRAY = [
  { tick: 600, depth_m: 1.2 },
  { tick: 1200, depth_m: 2.6 },
  { tick: 1800, depth_m: 4.2 },
];

const named = (...names: (string | null)[]): RunView =>
  cleanView({
    tray: cleanView().tray.map((sample, i) => inTray(sample.sample, sample.label_m, [...sample.shares], names[i]!)),
  });

/** The learner took over at 3 m and 1000 s. */
const LATER = { start_tick: 1000, startDepth_m: 3 };

export const log: HandMade = {
  sampleEachRod: {
    bands: { rods: 3, rod_m: 1.5 },
    nothing: { reason: 'lost', data: { have: 0, rods: 3 } },
    cases: [
      {
        kind: 'full',
        says: 'three of three',
        view: cleanView(),
        share: 1,
        reason: 'full',
        data: { have: 3, rods: 3 },
        evidence: CLEAN_LABELS,
      },
      {
        kind: 'full',
        says: 'without a number of rods: those that were drilled down; 4.45 m are two of 1.5 m',
        view: labelled([1.2, 1.1], [2.6, 2.5]),
        bands: { rod_m: 1.5 },
        share: 1,
        reason: 'full',
        data: { have: 2, rods: 2 },
        evidence: labels(1.2, 2.6),
      },
      {
        kind: 'full',
        says: 'rods that were down at the take-over want none',
        view: { ...labelled([4.2, 4.1]), ...LATER, depth_m: 4.6 },
        bands: { rod_m: 1.5 },
        share: 1,
        reason: 'full',
        data: { have: 1, rods: 1 },
        evidence: labels(4.2),
      },
      {
        kind: 'between',
        says: 'two of one rod count once; a little beyond the last mark is still the last rod\u2019s',
        view: labelled([1.2, 1.1], [1.3, 1.2], [4.55, 4.4]),
        share: 2 / 3,
        reason: 'lost',
        data: { have: 2, rods: 3 },
        evidence: labels(1.2, 1.3, 4.55),
      },
      {
        kind: 'between',
        says: 'one sample just beyond a mark speaks for one rod, not for two',
        view: labelled([1.55, 1.5]),
        share: 1 / 3,
        reason: 'lost',
        data: { have: 1, rods: 3 },
        evidence: labels(1.55),
      },
      {
        kind: 'none',
        says: 'a sample from below the rods that are asked for',
        view: labelled([5, 4.9]),
        share: 0,
        reason: 'lost',
        data: { have: 0, rods: 3 },
        evidence: labels(5),
      },
      {
        kind: 'unfinished',
        says: 'one rod of three',
        view: halfway(),
        share: 1 / 3,
        reason: 'lost',
        data: { have: 1, rods: 3 },
        evidence: [{ tick: 600, depth_m: 1.2 }],
      },
    ],
  },
  labelsTrue: {
    bands: { rods: 3, limit_m: 0.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a decimetre off',
        view: cleanView(),
        share: 1,
        reason: 'full',
        data: { limit_m: 0.5 },
        evidence: CLEAN_ORIGINS,
      },
      {
        kind: 'between',
        says: 'one of three a metre off',
        view: labelled([1.2, 1.1], [2.6, 2.5], [4.2, 3.2]),
        share: 2 / 3,
        reason: 'lost',
        data: { label_m: 4.2, origin_m: 3.2 },
        evidence: [
          { tick: 600, depth_m: 1.1, value: 0.1, unit: 'm' },
          { tick: 1200, depth_m: 2.5, value: 0.1, unit: 'm' },
          { tick: 1800, depth_m: 3.2, value: 1, unit: 'm' },
        ],
      },
      {
        kind: 'none',
        says: 'a rod off',
        view: labelled([3, 1.5]),
        share: 0,
        reason: 'lost',
        data: { label_m: 3, origin_m: 1.5 },
        evidence: [{ tick: 600, depth_m: 1.5, value: 1.5, unit: 'm' }],
      },
      {
        kind: 'unfinished',
        says: 'one good label of three',
        view: halfway(),
        share: 1 / 3,
        reason: 'few',
        data: { have: 1, rods: 3 },
        evidence: CLEAN_ORIGINS.slice(0, 1),
      },
      {
        kind: 'unfinished',
        says: 'where the lesson gives no number: of the rods that were drilled',
        view: halfway(),
        bands: { rod_m: 1.5, limit_m: 0.5 },
        share: 1,
        reason: 'full',
        data: { limit_m: 0.5 },
        evidence: CLEAN_ORIGINS.slice(0, 1),
      },
    ],
  },
  namedRight: {
    bands: { rods: 3 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'silt, fine sand, coarse sand, as they lie in the tray',
        view: cleanView(),
        share: 1,
        reason: 'full',
        data: {},
        evidence: CLEAN_TRAY,
      },
      {
        kind: 'full',
        says: 'samples of a crew before want no name',
        view: cleanView({
          ...LATER,
          depth_m: 4.6,
          tray: [inTray(1, 1.2, SILT, null), inTray(3, 4.2, COARSE, 'coarseSand')],
        }),
        bands: { rod_m: 1.5 },
        share: 1,
        reason: 'full',
        data: {},
        evidence: CLEAN_TRAY.slice(2),
      },
      {
        kind: 'between',
        says: 'the second has a wrong name',
        view: named('silt', 'gravel', 'coarseSand'),
        share: 2 / 3,
        reason: 'lost',
        data: { sample: 2 },
        evidence: CLEAN_TRAY,
      },
      {
        kind: 'between',
        says: 'the second has none',
        view: named('silt', null, 'coarseSand'),
        share: 2 / 3,
        reason: 'unnamed',
        data: { sample: 2 },
        evidence: CLEAN_TRAY,
      },
      {
        kind: 'none',
        says: '"unknown" fits nothing',
        view: named('unknown', 'unknown', 'unknown'),
        share: 0,
        reason: 'lost',
        data: { sample: 1 },
        evidence: CLEAN_TRAY,
      },
      {
        kind: 'unfinished',
        says: 'one of three',
        view: halfway(),
        share: 1 / 3,
        reason: 'few',
        data: { have: 1, rods: 3 },
        evidence: CLEAN_TRAY.slice(0, 1),
      },
    ],
  },
};
