// Senses of a finished well: every field of it stands in one list; what is hidden changes nothing that a crew reads, what is sensed does.
import { describe, expect, it } from 'vitest';
import { restoreRun, sensesOf, snapshotOf, type Run, type Snapshot } from '../../../sim';
import { does } from '../../rig';
import { packedAndSealed, seconds, setWell } from '../../setWell';
import { fieldsOf, type Field, type Plain } from './fields';
import { WELL_HIDDEN, WELL_SENSED } from './sensedWell';

/** Fields of the well itself: nobody writes the record here, and what goes wrong is judged with the drilling. */
const isOfWell = (kind: string): boolean => /^(well|completion)\./.test(kind);
const SENSED = WELL_SENSED.filter(isOfWell);
const HIDDEN = WELL_HIDDEN.filter(isOfWell);

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
const fields = fieldsOf(run.state).filter((field) => isOfWell(field.kind) && field.get() !== null);
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
