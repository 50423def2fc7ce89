// Every item of the rubric on records made by hand: share, reason, figures and evidence as said in advance; and that no item is without its cases.

import { describe, expect, test } from 'vitest';
import { format, ITEM_IDS, ITEMS, LESSONS, lessonWords, type ItemId, type Judged, type RunView } from '$lessons';
import { book } from './book';
import { casing } from './casing';
import { noHole, noWell, type HandMade, type HandMadeItem, type ItemCase } from './cases';
import { clay } from './clay';
import { economy } from './economy';
import { fit } from './fitForPeople';
import { fluid } from './fluid';
import { hole } from './hole';
import { layers } from './layers';
import { log } from './log';
import { loop } from './loop';
import { loss } from './loss';
import { lowering } from './lowering';
import { mending } from './mending';
import { additives } from './additives';
import { safety } from './safety';
import { screen } from './screen';
import { screenPlan } from './screenPlan';
import { seal } from './seal';
import { sealing } from './sealing';
import { site } from './site';
import { stop } from './stop';
import { wall } from './wall';
import { water } from './water';

const TABLES: readonly HandMade[] = [
  additives,
  book,
  casing,
  clay,
  economy,
  fit,
  fluid,
  hole,
  layers,
  log,
  loop,
  loss,
  lowering,
  mending,
  safety,
  screen,
  screenPlan,
  seal,
  sealing,
  site,
  stop,
  wall,
  water,
];

const handMade = Object.assign({}, ...TABLES) as HandMade;

/** The view in words, its trace by length and last row only. */
const told = ({ trace, ...rest }: RunView): string =>
  JSON.stringify([rest, trace.length, Object.values(trace.columns).map((column) => column[trace.length - 1])]);

/** Nothing lies between all and nothing. */
const YES_OR_NO: readonly ItemId[] = ['liftFits'];

/** An item without bands of its own does not look at any. */
const judgedBy = (id: ItemId, { bands }: HandMadeItem, own: ItemCase): Judged =>
  ITEMS[id](own.view, own.bands ?? bands);

describe.each(Object.entries(handMade) as [ItemId, HandMadeItem][])('%s', (id, item) => {
  test.each(item.cases.map((own) => [own.kind, own.says, own] as const))('%s: %s', (_kind, _says, own) => {
    const before = told(own.view);
    const judged = judgedBy(id, item, own);
    expect(judged.share_frac).toBeCloseTo(own.share, 9);
    expect(judged.reason).toEqual({ key: `reason.${id}.${own.reason}`, data: own.data });
    expect(judged.evidence).toEqual(own.evidence ?? []);
    expect(format(judged.reason.key, judged.reason.data)).not.toMatch(/[{}]|NaN|undefined|Infinity/);
    expect(told(own.view)).toBe(before);
  });

  test.each([
    ['hole', noHole],
    ['well', noWell],
  ] as const)('of a %s in which nothing happened: nothing', (_job, view) => {
    const judged = ITEMS[id](view(), item.bands);
    expect(judged.share_frac).toBe(0);
    expect(judged.reason).toEqual({ key: `reason.${id}.${item.nothing.reason}`, data: item.nothing.data ?? {} });
    for (const { value = 0, tick = 0, depth_m = 0 } of judged.evidence)
      expect([value, tick, depth_m].every(Number.isFinite)).toBe(true);
  });
});

test('every item has its cases: all, some, none, and a job that ended before', () => {
  const wanting = ITEM_IDS.flatMap((id) => {
    const cases = handMade[id]?.cases ?? [];
    const has = (kind: ItemCase['kind']): boolean => cases.some((own) => own.kind === kind);
    return [
      ...(has('full') ? [] : [`${id}: all`]),
      ...(has('between') || YES_OR_NO.includes(id) ? [] : [`${id}: some`]),
      ...(has('none') ? [] : [`${id}: none`]),
      ...(has('unfinished') ? [] : [`${id}: ended before`]),
      ...(cases.some(({ evidence = [] }) => evidence.length > 0) ? [] : [`${id}: evidence`]),
    ];
  });
  expect(wanting).toEqual([]);
});

test('a case is what its kind says', () => {
  for (const [id, { cases }] of Object.entries(handMade))
    for (const { kind, says, share } of cases) {
      const fits =
        kind === 'full' ? share === 1 : kind === 'none' ? share === 0 : kind !== 'between' || share % 1 !== 0;
      expect([id, says, fits]).toEqual([id, says, true]);
    }
});

test('every sentence that gives an item\u2019s reason is shown by a case', () => {
  const shown = new Set(
    (Object.entries(handMade) as [ItemId, HandMadeItem][]).flatMap(([id, { cases, nothing }]) =>
      [...cases.map(({ reason }) => reason), nothing.reason].map((reason) => `reason.${id}.${reason}`),
    ),
  );
  const sentences = Object.keys(lessonWords).filter((key) => key.startsWith('reason.'));
  expect(sentences.filter((key) => !shown.has(key))).toEqual([]);
});

test('the cases take the figures that the lessons take', () => {
  for (const { id, rubric } of LESSONS)
    for (const { item, bands } of rubric)
      for (const name of Object.keys(bands)) {
        const known = [handMade[item]!.bands, ...handMade[item]!.cases.map((own) => own.bands ?? {})];
        expect([id, item, name, known.some((figures) => name in figures)]).toEqual([id, item, name, true]);
      }
});
