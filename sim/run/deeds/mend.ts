// Things going wrong by an instructor's hand, and what a crew does about them: the engine, the hose, a ditch round the pit, a tool in the hole.

import { FISHED_frac, type FaultName, type MendWord } from '../../materials/faults';
import { DURATION_s } from '../../materials/durations';
import { casingInHole } from '../casingPlace';
import type { Payload } from '../check';
import type { FaultFigures } from '../faultState';
import { faultBar, strike } from '../faults';
import { jobOver } from '../jobOver';
import type { RefusalKey } from '../names';
import type { Run } from '../run';
import type { Task } from '../state';
import { tell } from '../tell';
import type { Deeds } from './deed';

const whatOf = (payload: Payload): MendWord => payload.what as MendWord;

const MEND_s: Readonly<Record<MendWord, number>> = {
  engine: DURATION_s.mendEngine,
  hose: DURATION_s.mendHose,
  ditch: DURATION_s.digDitch,
  tool: DURATION_s.fishTool,
};

/** Nobody can see whether a tool lies down there: the hook may be let down in vain. */
function fishRefusal({ state }: Run): RefusalKey | null {
  if (casingInHole(state)) return 'casingInHole';
  return state.stem.rods > 0 && state.machine.stem !== 'out' ? 'stemInHole' : null;
}

function mendRefusal(run: Run, payload: Payload): RefusalKey | null {
  const { faults, pump, site, tasks } = run.state;
  const what = whatOf(payload);
  if (tasks.some((task) => task.action === 'mend' && task.word === what)) return 'beingMended';
  switch (what) {
    case 'engine':
      return faults.engineDead ? null : 'nothingToMend';
    case 'hose':
      if (!(faults.hoseLost_frac > 0)) return 'nothingToMend';
      return pump.throttle_frac > 0 ? 'pumpRunning' : null;
    case 'ditch':
      if (!site.pitDug) return 'noPit';
      return faults.ditch ? 'ditchDug' : null;
    default:
      return fishRefusal(run);
  }
}

/** The hook comes up: with it, if it was there and the hook caught; a stem let down meanwhile spoils the try. */
function fish(run: Run): void {
  const { faults } = run.state;
  if (faults.tool && fishRefusal(run) === null && run.streams.luck.uniform() < FISHED_frac) {
    faults.tool = false;
    tell(run, 'toolGone', { how: 'fished' });
  } else tell(run, 'nothingFished', {});
}

function mended(run: Run, task: Task): void {
  const { faults, pump } = run.state;
  switch (task.word as MendWord) {
    case 'engine':
      faults.engineDead = false;
      break;
    case 'hose':
      // A hose cannot be bound while it is under pressure.
      if (pump.throttle_frac > 0) return;
      faults.hoseLost_frac = 0;
      break;
    case 'ditch':
      faults.ditch = true;
      break;
    default:
      fish(run);
      return;
  }
  tell(run, 'mended', { what: task.word });
}

function faultRefusal(run: Run, payload: Payload): RefusalKey | null {
  if (!run.scenario.practice && run.scenario.live !== true) return 'notLive';
  return jobOver(run) ? 'ended' : faultBar(run, payload.fault as FaultName);
}

export const mendDeeds: Deeds = {
  fault: {
    refusal: faultRefusal,
    begin: (run, payload) => {
      strike(run, payload.fault as FaultName, payload as FaultFigures);
    },
  },
  mend: {
    refusal: mendRefusal,
    hands: (payload) => (whatOf(payload) === 'tool' ? 2 : 1),
    time_s: (_run, payload) => MEND_s[whatOf(payload)],
    begin: (_run, payload, task) => {
      if (task) task.word = whatOf(payload);
    },
    end: mended,
  },
};
