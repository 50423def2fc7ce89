// Hand-made cases of lessons/rubric/site.ts: the spot against the best that the plan offers. Bands as in open-well.
// Latrine at 20 east, 10 north; line along 15 north; highest flood half a metre over the ground's level. Spot B has all: 50 m, .5 m over it, 25 m off.

import type { Spot } from '$sim';
import { cleanWell } from '../handMadeWell';
import { noWell, told, type HandMade } from './cases';

const { site: SITE } = cleanWell().well!;
const B = SITE.spots[1]!;

const at = (spot: Omit<Spot, 'id'>, others: readonly Spot[] = [B]) =>
  cleanWell({}, { spot: 'X', site: { ...SITE, spots: [...others, { id: 'X', ...spot }] } });
const stands = (dirt: number, dry: number) => [
  { value: dirt, unit: 'm' },
  { value: dry, unit: 'm' },
];

export const site: HandMade = {
  siteChosen: {
    bands: { away_m: 30, line_m: 10 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'thirty metres and a little from the latrine (Q-01), at the flood line (Q-09), ten metres from the wire',
        view: at({ east_m: 50, north_m: 5, rise_m: 0.5 }),
        share: 1,
        reason: 'full',
        data: { dirt_m: 30 },
        evidence: stands(30.4, 0),
      },
      {
        kind: 'full',
        says: 'the best that is offered earns all',
        view: at({ east_m: 20, north_m: 30, rise_m: 1 }, [SITE.spots[0]!]),
        share: 1,
        reason: 'full',
        data: { dirt_m: 20 },
        evidence: stands(20, 0.5),
      },
      {
        kind: 'between',
        says: 'twenty metres from the latrine is half way to far enough, whatever else is well',
        view: at({ east_m: 20, north_m: 30, rise_m: 1 }),
        share: (20 - 10) / (30 - 10),
        reason: 'dirt',
        data: { dirt_m: 20 },
        evidence: stands(20, 0.5),
      },
      {
        kind: 'between',
        says: 'a quarter of a metre under the flood is half lost',
        view: at({ east_m: 60, north_m: 40, rise_m: 0.25 }),
        share: (0.5 - 0.25) / 0.5,
        reason: 'flood',
        data: { under_m: 0.3 },
        evidence: stands(50, -0.2),
      },
      {
        kind: 'between',
        says: 'eight metres from the wire is three fifths of the way out',
        view: at({ east_m: 60, north_m: 7, rise_m: 1 }),
        share: (8 - 5) / (10 - 5),
        reason: 'line',
        data: { line_m: 8 },
        evidence: stands(40.1, 0.5),
      },
      {
        kind: 'none',
        says: 'none was chosen: it is the first, by the latrine, in the flood, under the wire',
        view: cleanWell({}, { spot: '' }),
        share: 0,
        reason: 'line',
        data: { line_m: 5 },
        evidence: stands(10, -0.5),
      },
      {
        kind: 'none',
        says: 'a well-chosen spot at which nothing was begun',
        view: { ...noWell(), well: { ...noWell().well!, spot: 'B' } },
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'the water ran once: the spot stands',
        view: { ...noWell(), events: [told(10, 'flowStarted')], well: { ...noWell().well!, spot: 'B' } },
        share: 1,
        reason: 'full',
        data: { dirt_m: 50 },
        evidence: stands(50, 0.5),
      },
    ],
  },
};
