// Doing an act: checked, then refused with a reason or begun, and logged either way. A malformed one is not logged.

import { ACTION_SPECS } from './actions';
import { malformedIn, type Malformed, type Payload } from './check';
import { casingInHole } from './casingPlace';
import { handsFree } from './hands';
import { darkAt } from './daylight';
import { deedOf } from './deeds/all';
import { isBookAct } from './deeds/book';
import { jobOver } from './jobOver';
import type { ActionName, RefusalKey } from './names';
import type { Run } from './run';
import { beginTask } from './tasks';
import { tell } from './tell';

export type ActResult =
  { readonly kind: 'done' } | { readonly kind: 'refused'; readonly reason: RefusalKey } | Malformed;

const DONE: ActResult = { kind: 'done' };

/** When the job is over the book stays open; a hole that is not finished can still be given up. */
function overFor(run: Run, action: ActionName): boolean {
  const { job } = run.state.machine;
  if (!jobOver(run)) return false;
  if (job === 'pullingOut' && action === 'abandon') return false;
  return !isBookAct(action);
}

/** Acts on the pit and its fluid, and on the pump that draws from it, wait until there is a pit. */
const NEEDS_PIT: readonly ActionName[] = ['prime', 'clearStrainer', 'setStrainer'];

/** Acts that need a stem to hang over the hole, unless they only switch something off. */
const NEEDS_STEM: readonly ActionName[] = [
  'setTurning',
  'setFeed',
  'setThrottle',
  'lift',
  'lower',
  'removeRod',
  'workStem',
];

function switchesOff(payload: Payload): boolean {
  return payload.on === false || payload.feed_frac === 0 || payload.throttle_frac === 0;
}

/** With the stem laid aside nothing can be done with it; with the casing in the hole it cannot even come back. */
function stemBar(run: Run, name: ActionName, payload: Payload): RefusalKey | null {
  if (name !== 'addRod' && (!NEEDS_STEM.includes(name) || switchesOff(payload))) return null;
  if (casingInHole(run.state)) return 'casingInHole';
  return run.state.stem.rods === 0 && name !== 'addRod' ? 'noStem' : null;
}

/** Whatever the act: in the dark, without a pit, or in the middle of moving it cannot be done. The book can always be written. */
function barred(run: Run, name: ActionName): RefusalKey | null {
  if (isBookAct(name)) return null;
  if (darkAt(run.scenario, run.state.tick)) return 'dark';
  if (run.state.tasks.some((task) => task.action === 'abandon')) return 'handsBusy';
  if (run.state.site.pitDug || name === 'setOut') return null;
  const { group } = ACTION_SPECS[name];
  return group === 'pit' || group === 'fluid' || NEEDS_PIT.includes(name) ? 'noPit' : null;
}

/** What would become of the act now. Changes nothing. */
export function canAct(run: Run, name: ActionName, payload: Payload): ActResult {
  const malformed = malformedIn(name, payload);
  if (malformed) return malformed;
  if (overFor(run, name)) return { kind: 'refused', reason: 'ended' };
  const deed = deedOf(name);
  const hands = deed.hands?.(payload) ?? ACTION_SPECS[name].hands;
  const reason =
    barred(run, name) ??
    stemBar(run, name, payload) ??
    deed.refusal?.(run, payload) ??
    (handsFree(run) < hands ? 'handsBusy' : null);
  return reason ? { kind: 'refused', reason } : DONE;
}

/** Does the act, or says why not. Every well-formed act enters the log, refused or not, so that a replay meets the same refusals. */
export function act(run: Run, name: ActionName, payload: Payload): ActResult {
  const result = canAct(run, name, payload);
  if (result.kind === 'malformed') return result;
  run.log.push([run.state.tick, name, payload]);
  if (result.kind === 'refused') {
    run.state.lastRefusal = { action: name, reason: result.reason, tick: run.state.tick };
    tell(run, 'refused', { action: name, reason: result.reason });
    return result;
  }
  const deed = deedOf(name);
  // Any new act ends a wait: whoever acts is not waiting. What goes wrong is nobody's act, and who sits where changes nothing.
  if (name !== 'waitFor' && name !== 'fault' && name !== 'takeSeat') run.state.wait = null;
  const task = beginTask(run, name, payload, deed);
  deed.begin?.(run, payload, task);
  return DONE;
}
