// The signals call for an event exactly when a mode must change, and limits that rise and fall lie apart.
import { describe, expect, it } from 'vitest';
import { edgesInto, FULL_frac, LOST_frac } from '../../../sim/machine/edges';
import { firstValue, type MachineEvent, type MachineValue } from '../../../sim/machine/machine';
import type { Signals } from '../../../sim/machine/signals';

const calm: Signals = {
  priming: false,
  primed: false,
  throttleUp: false,
  strainerShut: false,
  turning: false,
  onBottom: false,
  tight: false,
  stuck: false,
  out: false,
  sloughing: false,
  holeClosed: false,
  returns_frac: 0,
  flowing: false,
  powder: false,
  soaked_frac: 1,
  dose_ratio: 0,
  rotted_frac: 0,
};

function edges(value: Partial<MachineValue>, signals: Partial<Signals>): MachineEvent[] {
  const out: MachineEvent[] = [];
  const count = edgesInto(out, { ...firstValue(), ...value }, { ...calm, ...signals });
  return out.slice(0, count);
}

describe('edges', () => {
  it('a calm start calls for nothing', () => expect(edges({}, {})).toEqual([]));

  it.each<[string, Partial<MachineValue>, Partial<Signals>, MachineEvent[]]>([
    ['a hand on the priming plug', {}, { priming: true }, ['primeBegins']],
    ['the line is full', { pump: 'priming' }, { primed: true }, ['primeEnds']],
    ['throttle up on a full line', {}, { primed: true, throttleUp: true }, ['pumpRuns']],
    ['throttle down', { pump: 'running' }, { primed: true }, ['pumpStops']],
    ['air in the line', { pump: 'running' }, { throttleUp: true }, ['primeLost']],
    [
      'a shut strainer',
      { pump: 'running' },
      { primed: true, throttleUp: true, strainerShut: true },
      ['strainerBlocked'],
    ],
    ['a strainer that is blocked', { pump: 'blocked' }, { primed: true, throttleUp: true, strainerShut: true }, []],
    ['filling again after air', { pump: 'starved' }, { priming: true }, ['primeBegins']],
    ['turning again while rods are pulled out', { job: 'pullingOut' }, { turning: true }, ['stemTurns']],
    ['a casing in the hole, the rods aside', { job: 'casing', stem: 'out' }, { out: true }, []],
    ['the first turn', {}, { turning: true }, ['firstTurn', 'stemTurns']],
    [
      'turning on the bottom',
      { job: 'drilling', stem: 'turning' },
      { turning: true, onBottom: true },
      ['stemOnBottom'],
    ],
    [
      'tight while turning',
      { job: 'drilling', stem: 'onBottom' },
      { turning: true, onBottom: true, tight: true },
      ['stemTight'],
    ],
    ['stuck', { job: 'drilling', stem: 'tight' }, { tight: true, stuck: true }, ['stemStuck']],
    [
      'stuck at once goes tight first',
      { job: 'drilling', stem: 'onBottom' },
      { tight: true, stuck: true },
      ['stemTight'],
    ],
    ['drawn out', { job: 'drilling' }, { out: true }, ['stemOut']],
    ['let down again', { job: 'drilling', stem: 'out' }, {}, ['stemHangs']],
    ['drawn out of a tight place', { job: 'drilling', stem: 'tight' }, { out: true }, ['stemHangs']],
    ['the wall falls in', {}, { sloughing: true }, ['holeSloughs']],
    ['the hole closes', { hole: 'sloughing' }, { sloughing: true, holeClosed: true }, ['holeCloses']],
    ['opened again, still falling', { hole: 'closed' }, { sloughing: true }, ['holeSloughs']],
    ['the wall stands again', { hole: 'sloughing' }, {}, ['holeStands']],
    ['returns in full from none swell first', {}, { flowing: true, returns_frac: 1 }, ['returnsPartial']],
    [
      'too little powder in a rotten fluid',
      { fluid: 'soaking' },
      { powder: true, rotted_frac: 0.9, dose_ratio: 0.1 },
      ['fluidSpent'],
    ],
    ['powder soaks in a rotten fluid', { fluid: 'soaking' }, { powder: true, soaked_frac: 0.5, rotted_frac: 0.9 }, []],
    ['freed', { job: 'drilling', stem: 'stuck' }, {}, ['stemFreed']],
    ['returns come', {}, { flowing: true, returns_frac: 0.5 }, ['returnsPartial']],
    ['returns full', { returns: 'partial' }, { flowing: true, returns_frac: 1 }, ['returnsFull']],
    ['flow stops', { returns: 'full' }, { flowing: false, returns_frac: 1 }, ['returnsNone']],
    ['powder in', {}, { powder: true, soaked_frac: 0.1 }, ['powderIn']],
    ['soaked to the dose', { fluid: 'soaking' }, { powder: true, soaked_frac: 0.95, dose_ratio: 1 }, ['powderSoaked']],
    ['soaked but thin', { fluid: 'soaking' }, { powder: true, soaked_frac: 0.95, dose_ratio: 0.1 }, ['fluidThinned']],
    ['thinned by water', { fluid: 'ready' }, { powder: true, soaked_frac: 1, dose_ratio: 0.2 }, ['fluidThinned']],
    ['rotten', { fluid: 'ready' }, { powder: true, rotted_frac: 0.9, dose_ratio: 0.2 }, ['fluidSpent']],
  ])('%s', (_title, value, signals, wanted) => expect(edges(value, signals)).toEqual(wanted));

  it('returns near a limit do not flicker', () => {
    for (const limit of [LOST_frac, FULL_frac]) {
      for (const returns of ['none', 'partial', 'full'] as const) {
        const [event] = edges({ returns }, { flowing: true, returns_frac: limit });
        if (!event) continue;
        const then = event === 'returnsNone' ? 'none' : event === 'returnsPartial' ? 'partial' : 'full';
        expect(edges({ returns: then }, { flowing: true, returns_frac: limit })).toEqual([]);
      }
    }
  });
});
