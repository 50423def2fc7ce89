// Hand-made cases of lessons/rubric/casing.ts: the level, casing at once, down and strong. Bands as in open-well.

import type { RunEvent } from '$sim';
import { traceOf, type Row } from '../handMade';
import { cameTo, cleanWell, withWellEvents } from '../handMadeWell';
import type { RunView } from '$lessons';
import { leftAfterPlan, told, type HandMade } from './cases';

/** Drilled to its end at 7300 s, pulled at 8000, cased at 8200; a row a minute, the level at these depths around it. */
function level(before_m: number, open_m: number, after_m: number): RunView {
  const rows: Row[] = [];
  for (let i = 0; i <= 200; i++) {
    const time_s = i * 60;
    const holeLevel_m = time_s < 7300 ? before_m : time_s <= 8200 ? (time_s === 7800 ? open_m : 0.1) : after_m;
    rows.push({ time_s, depth_m: 12, holeLevel_m });
  }
  return cleanWell({ trace: traceOf(rows) });
}
const low = (depth_m: number) => [{ tick: 7800, depth_m }];

/** The casing came to rest this long after the last rod, which was out at 8000 s. */
const cased = (after_s: number, name: RunEvent['name'] = 'casingLanded', ...more: RunEvent[]): RunView =>
  withWellEvents((event) => event.name === 'casingLanded', [told(8000 + after_s, name), ...more]);
const open = (after_s: number) => [{ tick: 8000 }, { tick: 8000 + after_s }];

/** Planned to 11.5 m: screen to 11, sump .5. */
const down = (depth_m: number) => cameTo({ casing: { depth_m } });
const ran = (depth_m: number) => [{ tick: 8100, depth_m }];

const strength = (collapse: number, section: number) => [
  { value: collapse, unit: '' },
  { value: section, unit: '' },
];

export const casing: HandMade = {
  levelKept: {
    bands: { full_m: 0.5, none_m: 2 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'half a metre at most, from the end of drilling until the casing was in',
        view: level(3, 0.5, 3),
        share: 1,
        reason: 'full',
        data: { level_m: 0.5 },
        evidence: low(0.5),
      },
      {
        kind: 'between',
        says: '1.25 m is the middle of the band',
        view: level(0, 1.25, 0),
        share: (2 - 1.25) / (2 - 0.5),
        reason: 'lost',
        data: { level_m: 1.3 },
        evidence: low(1.25),
      },
      {
        kind: 'none',
        says: 'three metres',
        view: level(0, 3, 0),
        share: 0,
        reason: 'lost',
        data: { level_m: 3 },
        evidence: low(3),
      },
      {
        kind: 'unfinished',
        says: 'no casing came: nothing shows',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'full',
        says: 'another crew had stopped and pulled: from the take-over on',
        view: {
          ...level(3, 0.4, 3),
          start_tick: 7320,
          events: cased(200).events.filter(({ name }) => name === 'casingLanded'),
        },
        share: 1,
        reason: 'full',
        data: { level_m: 0.4 },
        evidence: low(0.4),
      },
    ],
  },
  casingSoon: {
    bands: { full_s: 900, none_s: 3600 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a quarter of an hour',
        view: cased(900),
        share: 1,
        reason: 'full',
        data: { open_min: 15 },
        evidence: open(900),
      },
      {
        kind: 'full',
        says: 'one that hangs is in, and may be worked down later',
        view: cased(600, 'casingHung', told(12000, 'casingLanded')),
        share: 1,
        reason: 'full',
        data: { open_min: 10 },
        evidence: open(600),
      },
      {
        kind: 'between',
        says: '37 and a half minutes are the middle of the band',
        view: cased(2250),
        share: (3600 - 2250) / (3600 - 900),
        reason: 'lost',
        data: { open_min: 38 },
        evidence: open(2250),
      },
      {
        kind: 'none',
        says: 'an hour and a half',
        view: cased(5400),
        share: 0,
        reason: 'lost',
        data: { open_min: 90 },
        evidence: open(5400),
      },
      {
        kind: 'unfinished',
        says: 'no casing came: nothing shows',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
  casingDown: {
    bands: { full_m: 0.15, none_m: 1 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a decimetre above its place',
        view: down(11.4),
        share: 1,
        reason: 'full',
        data: { depth_m: 11.4, above_m: 0.1 },
        evidence: ran(11.4),
      },
      {
        kind: 'between',
        says: '.575 m is the middle of the band',
        view: down(10.925),
        share: (1 - 0.575) / (1 - 0.15),
        reason: 'lost',
        data: { depth_m: 10.9, above_m: 0.6 },
        evidence: ran(10.9),
      },
      {
        kind: 'none',
        says: 'two metres above',
        view: down(9.5),
        share: 0,
        reason: 'lost',
        data: { depth_m: 9.5, above_m: 2 },
        evidence: ran(9.5),
      },
      {
        kind: 'none',
        says: 'a snapped one, wherever it lies',
        view: cameTo({ casing: { snapped: true } }),
        share: 0,
        reason: 'snapped',
        data: {},
        evidence: ran(11.5),
      },
      {
        kind: 'unfinished',
        says: 'planned and never run',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
  casingStrong: {
    bands: { full_ratio: 2, none_ratio: 1, section_frac: 0.4 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a margin of two (P-F3), four tenths of section (P-F6)',
        view: cameTo({ casing: { collapse_ratio: 2, section_frac: 0.4 } }),
        share: 1,
        reason: 'full',
        data: { margin: 2 },
        evidence: strength(2, 0.4),
      },
      {
        kind: 'between',
        says: 'a margin of 1.5',
        view: cameTo({ casing: { collapse_ratio: 1.5, section_frac: 0.4 } }),
        share: (1.5 - 1) / (2 - 1),
        reason: 'folds',
        data: { margin: 1.5 },
        evidence: strength(1.5, 0.4),
      },
      {
        kind: 'between',
        says: 'the worse counts: three tenths of section are half, between four tenths and two',
        view: cameTo({ casing: { collapse_ratio: 1.8, section_frac: 0.3 } }),
        share: (0.3 - 0.2) / (0.4 - 0.2),
        reason: 'slots',
        data: { section_pct: 30 },
        evidence: strength(1.8, 0.3),
      },
      {
        kind: 'none',
        says: 'it folds',
        view: cameTo({ casing: { collapse_ratio: 0.8 } }),
        share: 0,
        reason: 'folds',
        data: { margin: 0.8 },
        evidence: strength(0.8, 0.6),
      },
      {
        kind: 'unfinished',
        says: 'planned and never run',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
};
