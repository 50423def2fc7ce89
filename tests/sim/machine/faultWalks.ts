// Everything that goes wrong by hand, walked: what it refuses, what is told of it, how it is set right.
import { describe, it } from 'vitest';
import { walkOn } from './walk';

const RUNS = { throttle_frac: 1 };
const SHUT = { throttle_frac: 0 };

export function walksOfTheFaults(): void {
  describe('what goes wrong', () => {
    it('engine, hose and helper', () => {
      const walk = walkOn().refuses('fault', { fault: 'pumpStops' }, 'pumpNotRunning');
      walk.do('setThrottle', RUNS).go(5).do('fault', { fault: 'hoseBursts' }).go();
      walk.refuses('fault', { fault: 'hoseBursts' }, 'faultThere');
      walk.do('fault', { fault: 'pumpStops' }).go(2).refuses('setThrottle', RUNS, 'engineDead');
      walk.do('mend', { what: 'engine' }).refuses('mend', { what: 'engine' }, 'beingMended').idle();
      walk.refuses('mend', { what: 'engine' }, 'nothingToMend').do('mend', { what: 'hose' }).idle();
      walk.do('fault', { fault: 'helperAway', time_s: 20 }).go(25).do('setThrottle', SHUT);
    });

    it('rain, powder and a tool', () => {
      const walk = walkOn().do('fault', { fault: 'rainFills', time_s: 20 }).go(25);
      walk.do('mend', { what: 'ditch' }).idle().refuses('mend', { what: 'ditch' }, 'ditchDug');
      walk.do('fault', { fault: 'weakPowder' }).do('fault', { fault: 'lostTool' }).go();
      walk.do('lift', { distance_m: 6, speed_ms: 0.2 }).idle().go(2);
      for (let tries = 0; tries < 20 && walk.run.state.faults.tool; tries++) walk.do('mend', { what: 'tool' }).idle();
      walk.do('mend', { what: 'tool' }).idle();
    });

    it('nothing where no instructor may let it', () => {
      walkOn({}, { practice: false }).refuses('fault', { fault: 'rainFills' }, 'notLive');
    });
  });
}
