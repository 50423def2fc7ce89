// The driller's record as the crew fills it in by hand: field by field, at any time, kept with the run.
import { describe, expect, it } from 'vitest';
import { act, createRun, hashRun, RECORD_FIELDS, replayRun, restoreRun, snapshotOf } from '../../../sim';
import { rigScenario } from '../../rig';

const begun = () => createRun(rigScenario());

describe('the fields of the record', () => {
  it('keeps the last text of each field, trimmed, and an empty one rubs it out', () => {
    const run = begun();
    act(run, 'record', { field: 'place', text: ' Reedbank, by the well-worn path ' });
    act(run, 'record', { field: 'owner', text: 'Low Ferry' });
    act(run, 'record', { field: 'owner', text: 'Reedbank' });
    expect(run.state.recordFields).toEqual({ place: 'Reedbank, by the well-worn path', owner: 'Reedbank' });
    act(run, 'record', { field: 'place', text: '  ' });
    expect(run.state.recordFields).toEqual({ owner: 'Reedbank' });
  });

  it('is written whenever the book can be: also after the run was given up', () => {
    const run = begun();
    act(run, 'abandon', {});
    expect(act(run, 'record', { field: 'remarks', text: 'given up at 1 m' })).toEqual({ kind: 'done' });
  });

  it('names a field that no record has, and a text that is too long', () => {
    const run = begun();
    expect(act(run, 'record', { field: 'depth', text: '12' })).toMatchObject({ field: 'field', problem: 'notAllowed' });
    expect(act(run, 'record', { field: 'place', text: 'x'.repeat(161) })).toMatchObject({
      field: 'text',
      problem: 'tooLong',
    });
    expect(run.state.recordFields).toBeUndefined();
  });

  it('enters hash, snapshot and replay; a run without it hashes as if there were no record', () => {
    const run = begun();
    const bare = hashRun(run);
    for (const field of RECORD_FIELDS) act(run, 'record', { field, text: `${field}: x` });
    expect(hashRun(run)).not.toBe(bare);
    expect(hashRun(restoreRun(run.scenario, snapshotOf(run)))).toBe(hashRun(run));
    expect(hashRun(replayRun(run.scenario, run.log, run.state.tick))).toBe(hashRun(run));
    expect(hashRun(begun())).toBe(bare);
  });
});
