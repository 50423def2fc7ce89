// Who sits where stands in the log and nowhere else: the run goes on as if nobody had said it.
import { describe, expect, it } from 'vitest';
import { act, canAct, createRun, hashRun, replayRun, step, type Run } from '../../../sim';
import { does, drillRod, rigScenario } from '../../rig';

const scenario = rigScenario({ seed: 7 });

function waiting(): Run {
  const run = createRun(scenario);
  drillRod(run, 0.9);
  does(run, 'setTurning', { on: false });
  does(run, 'waitFor', { time_s: 300 });
  return run;
}

describe('taking a seat', () => {
  it('changes no state, also in the middle of a wait, and stands in the log', () => {
    const run = waiting();
    const before = hashRun(run);
    expect(act(run, 'takeSeat', { seat: 'driller', who: 'T-07' })).toEqual({ kind: 'done' });
    expect(hashRun(run)).toBe(before);
    expect(run.state.wait).not.toBeNull();
    expect(run.log.at(-1)).toEqual([run.state.tick, 'takeSeat', { seat: 'driller', who: 'T-07' }]);
  });

  it('leaves the rest of the run as it is without it', () => {
    const [run, twin] = [waiting(), waiting()];
    act(run, 'takeSeat', { seat: 'logger', who: 'fish' });
    for (let second = 0; second < 400; second++) {
      step(run);
      step(twin);
    }
    expect(hashRun(run)).toBe(hashRun(twin));
    expect(hashRun(replayRun(scenario, run.log, run.state.tick))).toBe(hashRun(run));
  });

  it('is possible when the drilling is over, for the book stays open', () => {
    const run = createRun(scenario);
    does(run, 'stopDrilling');
    expect(act(run, 'takeSeat', { seat: 'pumpHand', who: 'T-07' }).kind).toBe('done');
  });

  it.each([
    [{ seat: 'cook', who: 'T-07' }, 'seat', 'notAllowed'],
    [{ seat: 'driller' }, 'who', 'missing'],
    [{ seat: 'driller', who: 'x'.repeat(61) }, 'who', 'tooLong'],
  ])('is malformed with %j', (payload, field, problem) => {
    expect(canAct(createRun(scenario), 'takeSeat', payload)).toMatchObject({ kind: 'malformed', field, problem });
  });
});
