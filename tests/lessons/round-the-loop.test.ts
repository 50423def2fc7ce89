// Round the loop: the strainer, the water and the pump, each once got wrong.

import { neverDoing, testDecisions, type Spoil } from './decisions';

/** Twice somebody lifts the strainer out to look at it while the pump runs. */
function lookedAt(): Spoil {
  let times = 0;
  let last_s = 0;
  return (deed, { time_s, pump, hands, returns }) => {
    const now = times < 2 && time_s > last_s + 400 && pump.throttle_frac > 0 && returns.running && hands.free >= 1;
    if (!now) return deed;
    times++;
    last_s = time_s;
    return { action: 'clearStrainer', payload: {} };
  };
}

/** The strainer is let down to the floor again, and nobody heeds the labouring pump. */
const inTheMud: Spoil = (deed, { pump, pit, hands }) => {
  if (pump.throttle_frac > 0 && pit.strainer_m > 0.05 && hands.free >= 1)
    return { action: 'setStrainer', payload: { height_m: 0.02 } };
  const heeded = deed?.action === 'setThrottle' && pump.sound !== 'steady' && pump.sound !== 'off';
  return deed?.action === 'clearStrainer' || heeded ? null : deed;
};

testDecisions('round-the-loop', 2, [
  {
    name: 'strainer-in-the-mud',
    item: 'strainerOpen',
    reason: 'reason.strainerOpen.lost',
    spoil: inTheMud,
  },
  {
    name: 'pit-not-filled',
    item: 'pitStood',
    reason: 'reason.pitStood.lost',
    spoil: neverDoing('fillPit', 'addWater'),
  },
  {
    name: 'strainer-out-while-pumping',
    item: 'pumpKeptWater',
    reason: 'reason.pumpKeptWater.lost',
    spoil: lookedAt(),
  },
]);
