// Senses of a finished well: every field of it stands in one list; what is hidden changes nothing that a crew reads, what is sensed does.
import { describe, expect, it } from 'vitest';
import { restoreRun, sensesOf, snapshotOf, type Run, type Snapshot } from '../../../sim';
import { does } from '../../rig';
import { packedAndSealed, seconds, setWell } from '../../setWell';
import { fieldsOf, type Field, type Plain } from './fields';
import { WELL_HIDDEN, WELL_SENSED } from './sensedWell';

/** The buckets that went down, the line let down after them; the jar, the dipper, the test sheet, the nose, the finished head. */
const SENSED: readonly string[] = [
  ...WELL_SENSED,
  'completion.poured[].fill',
  'completion.poured[].volume_m3',
  'completion.seals[].seal',
  'completion.seals[].volume_m3',
  'completion.seals[].placed_tick',
  'completion.seals[].ready_tick',
  'completion.sounded.top_m',
  'completion.sounded.tick',
  'well.jar.tick',
  'well.jar.turbidity_NTU',
  'well.jar.sand_gL',
  'well.dip.level_m',
  'well.dip.tick',
  'well.test.lift',
  'well.test.rows[].time_s',
  'well.test.rows[].rate_Lmin',
  'well.test.rows[].level_m',
  'well.test.static_m',
  'well.test.lowest_m',
  'well.test.recovered_m',
  'well.test.over',
  // A smell: so much chlorine in so much water.
  'well.chlorine_kg',
  'well.water_m3',
  'well.headWorks.apron_m',
  'well.headWorks.drain_m',
  'well.headWorks.cap',
  'well.headWorks.lift',
];

/** What nobody on site can know at once, and what the crew knows because it did it. */
const HIDDEN: readonly string[] = [
  ...WELL_HIDDEN,
  'completion.seals[].told',
  // The ring round the casing: only the line on its weight tells of it.
  ...['K_Pasn', 'n_ratio', 'density_kgm3', 'salt_gL', 'dz_m', 'cells', 'used', 'caves', 'entered_m3', 'looked_m'].map(
    (name) => `completion.annulus.${name}`,
  ),
  ...['bridged', 'clogged_frac', 'fall_ms', 'falling_m3', 'fill_m3', 'inFlight_m3', 'offMiddle_frac', 'put_m3'].map(
    (name) => `completion.annulus.${name}[]`,
  ),
  ...['radius_m', 'spoilt_frac', 'support_frac'].map((name) => `completion.annulus.${name}[]`),
  'well.closed',
  'well.closedTick',
  'well.casing',
  'well.section_m2',
  'well.bottom_m',
  'well.level_m',
  'well.chlorineIn_m3',
  'well.ring.count',
  ...['top_m', 'height_m', 'hole_m', 'invaded_m', 'dose_ratio', 'whole_frac', 'mud_frac', 'cake_s', 'caked_frac'].map(
    (name) => `well.ring.${name}[]`,
  ),
  ...['clay_frac', 'washed_frac', 'flow_frac', 'bridged_frac'].map((name) => `well.ring.${name}[]`),
  ...['T_m2s', 'S_ratio', 'radius_m', 'skin_ratio', 'wellLoss_s2m5', 'freeThickness_m'].map(
    (name) => `well.intake.${name}`,
  ),
  'well.rest_m',
  'well.rates.count',
  'well.rates.from_s[]',
  'well.rates.rate_m3s[]',
  'well.ground_m3s',
  'well.drawn_m3s',
  'well.still',
  'well.stirred',
  'well.sand_gL',
  'well.turbidity_NTU',
  'well.sandClass_frac[]',
  'well.washed_s[]',
  'well.out_m3',
  'well.in_m3',
  'well.sand_kg',
  'well.clearTold',
  'well.brokenTold',
  'well.test.tick',
  'well.test.rates_Lmin[]',
  'well.test.step_s',
  'well.test.recovery_s',
  'well.disinfection.tick',
  'well.disinfection.dose_gL',
  'well.disinfection.contact_s',
  'well.disinfection.ct_mgminL',
  'well.disinfection.turbidity_NTU',
  'well.headWorks.tick',
];

/** A well in which everything has been done once. */
function wellDone(): Run {
  const [, ...below] = packedAndSealed()!;
  const run = setWell({ fill: below, invaded_m: 0.13, dose_ratio: 1 });
  does(run, 'placeSeal', { seal: 'bentoniteGranules', volume_L: 2, rate_Lmin: 2 });
  seconds(run, 61);
  does(run, 'sound');
  seconds(run, 301);
  does(run, 'develop', { method: 'surge', time_s: 600 });
  seconds(run, 601);
  does(run, 'yieldTest', { lift: 'suction', rate1_Lmin: 15, step_s: 600, recovery_s: 300 });
  seconds(run, 931);
  does(run, 'dipWell');
  seconds(run, 31);
  does(run, 'headWorks', { apron_m: 1.5, drain_m: 4, cap: true, lift: 'suction' });
  seconds(run, 14401);
  does(run, 'disinfect', { dose_mgL: 75, contact_s: 600 });
  seconds(run, 300);
  return restoreRun(run.scenario, JSON.parse(JSON.stringify(snapshotOf(run))) as Snapshot);
}

const run = wellDone();
const fields = fieldsOf(run.state).filter((field) => /^(well|completion)\./.test(field.kind) && field.get() !== null);
const sensed = (): string => JSON.stringify(sensesOf(run));

function other(field: Field): Plain {
  const value = field.get();
  // A jar that is clear tells another story.
  if (field.kind.startsWith('well.jar.')) return 0;
  // A seal that shall be ready some day is not set now.
  if (field.kind === 'completion.seals[].ready_tick') return 1e9;
  if (typeof value === 'number') return value === 0 ? 1 : value * 3;
  return typeof value === 'boolean' ? !value : `${String(value)}?`;
}

/** Whether the senses change with another value of the field; it is put back. */
function isSensed(field: Field): boolean {
  const before = field.get();
  const seen = sensed();
  // Chlorine is smelt or not: only a small dose tells.
  field.set(field.kind === 'well.chlorine_kg' ? 0 : field.kind === 'well.water_m3' ? 1e9 : other(field));
  const changed = sensed() !== seen;
  field.set(before);
  return changed;
}

describe('a finished well', () => {
  it('has every field in one list, and none twice', () => {
    const found = [...new Set(fields.map(({ kind }) => kind))].sort();
    expect([...SENSED, ...HIDDEN].sort()).toEqual(found);
  });
  it('tells the crew what it can sense', () => {
    expect(SENSED.filter((kind) => !fields.some((field) => field.kind === kind && isSensed(field)))).toEqual([]);
  });
  it('and nothing else', () => {
    expect(
      [...new Set(fields.filter(isSensed).map(({ kind }) => kind))].filter((kind) => HIDDEN.includes(kind)),
    ).toEqual([]);
  });
});
