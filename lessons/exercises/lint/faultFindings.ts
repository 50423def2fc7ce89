// What is said of the faults of an exercise.

import type { FaultId } from '../../faultSchema';
import type { WordData } from '../../words/index';
import type { FaultLook } from './faultLook';
import type { Finding, Level, LintKey } from './finding';

export const FAULT_WORDS: Readonly<Record<FaultId, LintKey>> = {
  pumpStops: 'lint.fault.pumpStops',
  hoseBursts: 'lint.fault.hoseBursts',
  rainFills: 'lint.fault.rainFills',
  lostTool: 'lint.fault.lostTool',
  weakPowder: 'lint.fault.weakPowder',
  helperAway: 'lint.fault.helperAway',
  cobbles: 'lint.fault.cobbles',
  saltyLayer: 'lint.fault.saltyLayer',
};

const SAID: Readonly<Record<FaultLook, readonly [Level, LintKey]>> = {
  shows: ['good', 'lint.fault.shows'],
  silent: ['wrong', 'lint.fault.silent'],
  hidden: ['warning', 'lint.fault.hidden'],
  tried: ['good', 'lint.fault.tried'],
  unmet: ['warning', 'lint.fault.unmet'],
  never: ['warning', 'lint.fault.never'],
  noRoom: ['warning', 'lint.fault.noRoom'],
  before: ['warning', 'lint.fault.before'],
};
/** Of the grounds that were looked at, the one that says most about the fault. */
const TELLING: readonly FaultLook[] = ['shows', 'tried', 'silent', 'hidden', 'unmet', 'before', 'noRoom', 'never'];
const ABSENT: readonly FaultLook[] = ['never', 'noRoom'];

/** `looks`: one for each ground that was looked at, at least one; `begin_s`: where the learner takes over. */
export function faultFindings(id: FaultId, i: number, looks: readonly FaultLook[], begin_s: number): Finding[] {
  const told = TELLING.find((look) => looks.includes(look))!;
  const [level, key] = SAID[told];
  const fault = FAULT_WORDS[id];
  const field = `faults.${i}`;
  const data: WordData = told === 'before' ? { fault, begin_min: Math.ceil(begin_s / 60) } : { fault };
  const found: Finding[] = [{ level, key, data, field }];
  const came = looks.filter((look) => !ABSENT.includes(look)).length;
  if (came > 0 && came < looks.length)
    found.push({ level: 'warning', key: 'lint.fault.some', data: { fault, came, n: looks.length }, field });
  return found;
}
