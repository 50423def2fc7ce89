// A bad day: what broke was left as it was; weak powder and rain were never noticed.

import { testDecisions, type Spoil } from './decisions';

/** So long nobody mends, s; the bit stays where it was. */
const LEFT_s = 3000;

function leftBroken(): Spoil {
  let broken_s = -1;
  return (deed, senses) => {
    const broken = senses.pump.dead || senses.pump.hose !== 'whole';
    if (!broken) broken_s = -1;
    else if (broken_s < 0) broken_s = senses.time_s;
    const left = broken && senses.time_s < broken_s + LEFT_s;
    return left && deed !== null && ['mend', 'lift', 'topUp'].includes(deed.action) ? null : deed;
  };
}

/** The first mix is made as on any day; nobody feels what it became, nobody keeps the rain out. */
function neverFelt(): Spoil {
  let soaked = false;
  return (deed, senses) => {
    soaked ||= senses.felt.includes('soaked');
    if (deed === null) return deed;
    const more = soaked && deed.action === 'addAdditive' && deed.payload.additive === 'polymer';
    const ditch = deed.action === 'mend' && deed.payload.what === 'ditch';
    return more || ditch || deed.action === 'feelFluid' ? null : deed;
  };
}

testDecisions('bad-day', 1, [
  { name: 'left-broken', item: 'mendedSoon', reason: 'reason.mendedSoon.lost', spoil: leftBroken() },
  { name: 'never-felt', item: 'fluidTried', reason: 'reason.fluidTried.lost', spoil: neverFelt() },
]);
