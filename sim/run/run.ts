// A run: its scenario, its state, its random streams, its log and record, and the scratch memory of a tick.

import { createStream, type Stream } from '../numeric/stream';
import { openLedger } from './ledger';
import type { LogEntry } from './log';
import { createRecord, type RunRecord } from './record';
import { openingState } from './opening';
import type { Kit } from '../materials/kit';
import { kitInForce } from './gear';
import type { Scenario } from './scenario';
import type { RunState } from './state';
import { createWork, type Work } from './work';

/** One random stream per use, so that one use never disturbs another. */
export interface RunStreams {
  readonly prime: Stream;
  readonly senses: Stream;
  readonly luck: Stream;
}

export interface Run {
  readonly scenario: Scenario;
  /** The kit in force: that of the scenario with what was chosen when setting out. */
  kit: Kit;
  state: RunState;
  readonly streams: RunStreams;
  readonly log: LogEntry[];
  readonly record: RunRecord;
  /** Made anew with each hole. */
  work: Work;
}

/** A run at its first tick. The same scenario always gives the same run. */
export function createRun(scenario: Scenario): Run {
  const state = openingState(scenario);
  openLedger(state);
  const { id } = scenario;
  const course = scenario.noise ?? scenario.seed;
  const kit = kitInForce(scenario, state.gear);
  return {
    scenario,
    kit,
    state,
    streams: {
      prime: createStream(`${id}/prime/${course}`),
      senses: createStream(`${id}/senses/${course}`),
      luck: createStream(`${id}/luck/${course}`),
    },
    log: [],
    record: createRecord(),
    work: createWork(scenario, kit, state.hole, state.holeNumber),
  };
}
