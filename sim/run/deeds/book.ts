// Acts of the notebook and the tray that take no hands of the crew: naming, logging, noting, waiting, reading cautions and hints.

import { ACTION_SPECS, type RecordField } from '../actions';
import { DURATION_s } from '../../materials/durations';
import { darkAt } from '../daylight';
import { flowing } from '../flowing';
import { jobOver } from '../jobOver';
import { groundsLeft } from '../ground';
import { beginNewHole } from '../newHole';
import type { KindWord, RefusalKey } from '../names';
import type { Run } from '../run';
import type { Wait } from '../state';
import { tell } from '../tell';
import { send } from '../modes';
import type { ColourWord } from '../names';
import type { Deeds } from './deed';

/** Longest wait when no cap is given, s. */
const WAIT_CAP_s = 3600;
/** Longest night, s. */
const NIGHT_CAP_s = 86400;

/** A stuck stem stays in the ground. */
const lostRods = ({ state }: Run): number => (state.machine.stem === 'stuck' ? state.stem.rods : 0);

function moveRefusal(run: Run): RefusalKey | null {
  const { state, scenario } = run;
  if (jobOver(run)) return 'ended';
  if (groundsLeft(run) < 1) return 'noMoreGround';
  if (state.rodsInAll - lostRods(run) < scenario.opening.rods) return 'noMoreRods';
  if (state.stem.turning) return 'turningOn';
  if (flowing(state) || state.pump.throttle_frac > 0) return 'flowOn';
  return state.stem.motion_m !== 0 ? 'stemMoving' : null;
}

export const bookDeeds: Deeds = {
  nameSample: {
    refusal: (run, payload) => (run.state.samples.some((s) => s.sample === payload.sample) ? null : 'noSuchSample'),
    begin: (run, payload) => {
      const sample = run.state.samples.find((s) => s.sample === payload.sample)!;
      sample.named = {
        main: payload.main as KindWord,
        secondary: (payload.secondary as KindWord | undefined) ?? null,
        colour: (payload.colour as ColourWord | undefined) ?? null,
        feel: (payload.feel as string | undefined) ?? null,
      };
    },
  },
  note: {
    begin: (run, payload) => {
      run.state.notes.push({ tick: run.state.tick, text: payload.text as string });
    },
  },
  logLayer: {
    refusal: (_run, payload) => ((payload.to_m as number) > (payload.from_m as number) ? null : 'badInterval'),
    begin: (run, payload) => {
      // A new entry replaces what it covers, so that a mistake in the book can be put right.
      const from_m = payload.from_m as number;
      const to_m = payload.to_m as number;
      const kept = [];
      for (const layer of run.state.ownLog) {
        if (layer.from_m < from_m) kept.push({ ...layer, to_m: Math.min(layer.to_m, from_m) });
        if (layer.to_m > to_m) kept.push({ ...layer, from_m: Math.max(layer.from_m, to_m) });
      }
      kept.push({ from_m, to_m, kind: payload.kind as KindWord });
      run.state.ownLog = kept.sort((a, b) => a.from_m - b.from_m);
    },
  },
  record: {
    begin: (run, payload) => {
      // Writing a field anew replaces what stood there; an empty text rubs it out.
      const { [payload.field as RecordField]: _before, ...others } = run.state.recordFields ?? {};
      const text = (payload.text as string).trim();
      run.state.recordFields = text === '' ? others : { ...others, [payload.field as RecordField]: text };
    },
  },
  waitFor: {
    refusal: (run, payload) =>
      payload.until === 'morning' && !darkAt(run.scenario, run.state.tick) ? 'notDark' : null,
    begin: (run, payload) => {
      const { tick } = run.state;
      const until = payload.until as Exclude<Wait['until'], 'time'> | undefined;
      const most_s = until === 'morning' ? NIGHT_CAP_s : WAIT_CAP_s;
      const length_s = until ? ((payload.cap_s as number | undefined) ?? most_s) : (payload.time_s as number);
      run.state.wait = { until: until ?? 'time', endTick: tick + length_s };
    },
  },
  readCaution: {
    begin: (run, payload) => {
      const caution = payload.caution as string;
      if (!run.state.cautions.includes(caution)) run.state.cautions.push(caution);
    },
  },
  useHint: {
    begin: (run, payload) => {
      run.state.hints.push({ hint: payload.hint as string, level: payload.level as number, tick: run.state.tick });
    },
  },
  goBack: {
    refusal: (run) => (run.scenario.practice ? null : 'practiceOnly'),
    begin: (run) => {
      run.state.wentBack += 1;
    },
  },
  stopDrilling: {
    refusal: (run) => (run.state.machine.stem === 'stuck' ? 'stemStuck' : run.state.stem.turning ? 'turningOn' : null),
    begin: (run) => {
      const { job } = run.state.machine;
      if (job !== 'siteSetup' && job !== 'drilling') return;
      send(run, 'stopDrilling');
      tell(run, 'drillingStopped', { depth_m: run.state.hole.depth_m, rods: run.state.stem.rods });
    },
  },
  abandon: {
    hands: (payload) => (payload.move === true ? 2 : 0),
    refusal: (run, payload) => (payload.move === true ? moveRefusal(run) : null),
    time_s: (run, payload) => {
      if (payload.move !== true) return 0;
      const drawn = run.state.machine.stem === 'stuck' ? 0 : run.state.stem.rods;
      return DURATION_s.backfill + drawn * DURATION_s.removeRod;
    },
    begin: (run, payload, task) => {
      if (payload.move !== true) {
        send(run, 'giveUp');
        tell(run, 'ended', { depth_m: run.state.hole.depth_m });
      } else if (task) task.data.rodsLost = lostRods(run);
    },
    end: (run, task) => beginNewHole(run, task.data.rodsLost),
  },
};

/** Acts of the notebook, and the driller's record, stay possible when the drilling is over. */
export function isBookAct(action: keyof typeof ACTION_SPECS): boolean {
  const { group } = ACTION_SPECS[action];
  return group === 'book' || action === 'nameSample' || action === 'record';
}
