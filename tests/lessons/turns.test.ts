// Several people at one screen: whose work each act was, and for how long everybody sat where.
import { describe, expect, it } from 'vitest';
import { ACTION_NAMES, createRun, SEAT_WORDS } from '../../sim';
import { seatOf, seatsOf, sharesOf } from '../../lessons';
import { does, rigScenario, steps } from '../rig';

function shared() {
  const run = createRun(rigScenario({ seed: 7 }));
  does(run, 'note', { text: 'before anybody sat down' });
  for (const [seat, who] of [
    ['driller', 'T-07'],
    ['pumpHand', 'fish'],
    ['logger', 'fish'],
  ])
    does(run, 'takeSeat', { seat, who });
  does(run, 'setThrottle', { throttle_frac: 0 });
  does(run, 'note', { text: 'by fish' });
  does(run, 'setFeed', { feed_frac: 0 });
  steps(run, 100);
  does(run, 'takeSeat', { seat: 'driller', who: 'fish' });
  does(run, 'takeSeat', { seat: 'pumpHand', who: 'T-07' });
  does(run, 'setFeed', { feed_frac: 0 });
  does(run, 'readCaution', { caution: 'rods' });
  steps(run, 50);
  return run;
}

describe('turns', () => {
  it('gives every act to one seat, and to none what is no work', () => {
    for (const action of ACTION_NAMES) expect([null, ...SEAT_WORDS], action).toContain(seatOf(action));
    expect(seatOf('lift')).toBe('driller');
    expect(seatOf('addAdditive')).toBe('pumpHand');
    expect(seatOf('catchSample')).toBe('logger');
    expect(seatOf('planWell')).toBe('logger');
    expect(seatOf('pourPack')).toBe('driller');
    expect(seatOf('fault')).toBeNull();
  });

  it('counts acts and time by person and seat; what came before anybody sat down is nobody’s', () => {
    const [seven, fish, ...others] = sharesOf(shared());
    expect(others).toEqual([]);
    expect(seven).toEqual({
      who: 'T-07',
      acts: { driller: 1, pumpHand: 0, logger: 0 },
      time_s: { driller: 100, pumpHand: 50, logger: 0 },
    });
    expect(fish).toEqual({
      who: 'fish',
      acts: { driller: 1, pumpHand: 1, logger: 1 },
      time_s: { driller: 50, pumpHand: 100, logger: 150 },
    });
  });

  it('leaves out what was refused', () => {
    const run = shared();
    run.record.events.length = 0;
    const before = sharesOf(run)[1]!.acts.driller;
    run.record.events.push({ tick: 100, name: 'refused', data: { action: 'setFeed', reason: 'handsBusy' } });
    expect(sharesOf(run)[1]!.acts.driller).toBe(before - 1);
  });

  it('knows who sits where now, and nobody where nobody sat down', () => {
    expect(seatsOf(shared().log)).toEqual({ driller: 'fish', pumpHand: 'T-07', logger: 'fish' });
    const alone = createRun(rigScenario({ seed: 7 }));
    expect(seatsOf(alone.log)).toEqual({});
    expect(sharesOf(alone)).toEqual([]);
  });
});
