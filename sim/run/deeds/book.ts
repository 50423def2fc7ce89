// Acts of the notebook and the tray that take no hands of the crew: naming, logging, noting, waiting, reading cautions and hints.

import { ACTION_SPECS } from '../actions';
import type { KindWord } from '../names';
import { tell } from '../tell';
import { send } from '../modes';
import type { ColourWord } from '../names';
import type { Deeds } from './deed';

/** Longest wait when no cap is given, s. */
const WAIT_CAP_s = 3600;

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
  waitFor: {
    begin: (run, payload) => {
      const { tick } = run.state;
      const until = payload.until as 'soaked' | 'clear' | 'taskDone' | undefined;
      const length_s = until ? ((payload.cap_s as number | undefined) ?? WAIT_CAP_s) : (payload.time_s as number);
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
      send(run, 'stopDrilling');
      tell(run, 'drillingStopped', { depth_m: run.state.hole.depth_m, rods: run.state.stem.rods });
    },
  },
  abandon: {
    begin: (run) => {
      send(run, 'giveUp');
      tell(run, 'ended', { depth_m: run.state.hole.depth_m });
    },
  },
};

/** Acts of the notebook stay possible when the drilling is over. */
export function isBookAct(action: keyof typeof ACTION_SPECS): boolean {
  const { group } = ACTION_SPECS[action];
  return group === 'book' || action === 'nameSample';
}
