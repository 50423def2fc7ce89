// Whatever a crew does to a finished well in any order: nothing breaks, the books balance, every number is finite, and it plays again alike.
import { describe, expect, it } from 'vitest';
import {
  act,
  ACTION_SPECS,
  createStream,
  hashRun,
  ledgerOf,
  restoreRun,
  sensesOf,
  snapshotOf,
  step,
  verdictOf,
  type ActionName,
  type FieldSpec,
  type Payload,
  type Run,
  type SoilKind,
  type Snapshot,
  type Stream,
} from '../../../sim';
import { packedAndSealed, setWell } from '../../setWell';
import { fieldsOf } from './fields';

const ACTS: readonly ActionName[] = [
  'develop',
  'breakPolymer',
  'dipWell',
  'yieldTest',
  'disinfect',
  'headWorks',
  'pourPack',
  'placeSeal',
  'backfill',
  'sound',
  'waitFor',
];
const SOILS: readonly SoilKind[] = [
  'mediumSand',
  'fineSand',
  'siltySand',
  'silt',
  'firmClay',
  'coarseSand',
  'fineGravel',
];
/** No act lasts longer than this here, s. */
const LONGEST_s = 900;

const pick = <T>(chance: Stream, list: readonly T[]): T => list[Math.floor(chance.uniform() * list.length)]!;

function valueOf(chance: Stream, field: FieldSpec): number | boolean | string {
  switch (field.type) {
    case 'boolean':
      return chance.uniform() < 0.5;
    case 'word':
      return pick(chance, field.words);
    case 'text':
      return 'x';
    case 'number': {
      const most = field.name.endsWith('_s') ? Math.min(field.max, Math.max(field.min, LONGEST_s)) : field.max;
      const value = field.min + (most - field.min) * chance.uniform();
      return field.whole ? Math.round(value) : value;
    }
  }
}

function payloadOf(chance: Stream, name: ActionName): Payload {
  const payload: Record<string, number | boolean | string> = {};
  for (const field of ACTION_SPECS[name].fields)
    if (!field.optional || chance.uniform() < 0.5) payload[field.name] = valueOf(chance, field);
  return payload;
}

function expectSound(run: Run): void {
  const { water, solids, polymer, additives } = ledgerOf(run);
  expect(Math.max(water, solids, polymer, additives)).toBeLessThanOrEqual(1e-9);
  for (const field of fieldsOf(run.state.well!)) {
    const value = field.get();
    if (typeof value === 'number') expect(Number.isFinite(value), field.path).toBe(true);
  }
  const { water_m3, level_m, bottom_m, chlorine_kg } = run.state.well!;
  expect(water_m3).toBeGreaterThanOrEqual(-1e-12);
  expect(level_m).toBeLessThanOrEqual(bottom_m + 1e-9);
  expect(chlorine_kg).toBeGreaterThanOrEqual(0);
}

function play(run: Run, chance: Stream, acts: number): void {
  for (let n = 0; n < acts; n++) {
    const name = pick(chance, ACTS);
    act(run, name, payloadOf(chance, name));
    for (let left = Math.floor(chance.uniform() * LONGEST_s); left > 0; left--) step(run);
    expectSound(run);
    sensesOf(run);
    const verdict = verdictOf(run)!;
    for (const field of fieldsOf(verdict)) {
      const value = field.get();
      if (typeof value === 'number') expect(Number.isFinite(value) && value >= 0, `${field.path} ${value}`).toBe(true);
    }
  }
}

function wellOf(n: number): Run {
  const chance = createStream(`well ${n}`);
  return setWell({
    layers: [
      { kind: pick(chance, SOILS), thickness_m: [6, 6] },
      { kind: pick(chance, SOILS), thickness_m: [4, 4] },
      { kind: pick(chance, SOILS), thickness_m: [30, 30] },
    ],
    waterTable_m: 1 + 12 * chance.uniform(),
    swing_m: 4 * chance.uniform(),
    invaded_m: 0.05 + 0.2 * chance.uniform(),
    dose_ratio: 2 * chance.uniform(),
    offMiddle_frac: chance.uniform(),
    fill: chance.uniform() < 0.7 ? packedAndSealed() : [],
    plan: {
      slotWidth_mm: 0.2 + 2 * chance.uniform(),
      slotRows: Math.floor(4 * chance.uniform()),
      cap: chance.uniform() < 0.7,
      cloth: pick(chance, ['none', 'fine', 'medium', 'coarse'] as const),
    },
  });
}

describe('random deeds on a well', () => {
  it.each(Array.from({ length: 24 }, (_, n) => n))('%d', (n) => {
    const run = wellOf(n);
    const chance = createStream(`deeds ${n}`);
    play(run, chance, 6);
    const copy = restoreRun(run.scenario, JSON.parse(JSON.stringify(snapshotOf(run))) as Snapshot);
    for (let i = 0; i < 200; i++) {
      step(run);
      step(copy);
    }
    expect(hashRun(copy)).toBe(hashRun(run));
  });
});
