// A run frozen as plain JSON and brought back, unchanged to the last bit. Typed arrays are written as { f64: text }.

import { restoreStream, type StreamState } from '../numeric/stream';
import { hashOf } from '../numeric/hash';
import { packed, unpacked } from '../numeric/packed';
import { kitInForce } from './gear';
import { createRecord, type RunRecord } from './record';
import type { Run, RunStreams } from './run';
import { createWork } from './work';
import type { Scenario } from './scenario';
import type { RunState } from './state';
import { SIM_VERSION } from './version';

/** Form of a snapshot; changes when the way of writing does. 2: rows of numbers are packed. */
const FORM = 2;

export interface Snapshot {
  readonly form: number;
  readonly sim: string;
  readonly state: unknown;
  readonly streams: Readonly<Record<keyof RunStreams, StreamState>>;
}

function frozen(value: unknown): unknown {
  if (value instanceof Float64Array) return { f64: packed(value) };
  if (Array.isArray(value)) return value.map(frozen);
  if (typeof value !== 'object' || value === null) return value;
  const copy: Record<string, unknown> = {};
  for (const [key, part] of Object.entries(value)) copy[key] = frozen(part);
  return copy;
}

function thawed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(thawed);
  if (typeof value !== 'object' || value === null) return value;
  const given = value as Record<string, unknown>;
  if (typeof given.f64 === 'string') return unpacked(given.f64);
  const copy: Record<string, unknown> = {};
  for (const [key, part] of Object.entries(given)) copy[key] = thawed(part);
  return copy;
}

export function snapshotOf(run: Run): Snapshot {
  return {
    form: FORM,
    sim: SIM_VERSION,
    state: frozen(run.state),
    streams: { prime: run.streams.prime.state(), senses: run.streams.senses.state(), luck: run.streams.luck.state() },
  };
}

/** Brings a snapshot back. The record starts empty unless the record up to the snapshot is handed in. Throws when the snapshot is of another form or of another version of the physics, or is damaged. */
export function restoreRun(scenario: Scenario, snapshot: Snapshot, record: RunRecord = createRecord()): Run {
  if (snapshot.form !== FORM) throw new Error('This snapshot is written in a form that this version does not read.');
  if (snapshot.sim !== SIM_VERSION)
    throw new Error(`This snapshot was made with version ${snapshot.sim}; this is version ${SIM_VERSION}.`);
  const { prime, senses, luck } = snapshot.streams;
  const state = thawed(snapshot.state) as RunState;
  const kit = kitInForce(scenario, state.gear);
  return {
    scenario,
    kit,
    state,
    streams: { prime: restoreStream(prime), senses: restoreStream(senses), luck: restoreStream(luck) },
    log: [],
    record,
    work: createWork(scenario, kit, state.hole, state.holeNumber),
  };
}

/** Hash of everything that decides what happens next: the state and the random streams. 16 hex digits. */
export function hashRun(run: Run): string {
  const { prime, senses, luck } = run.streams;
  return hashOf({ state: run.state, streams: { prime: prime.state(), senses: senses.state(), luck: luck.state() } });
}
