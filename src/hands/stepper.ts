// A hand for a share from nothing to all, a step at a time: feed in tenths, throttle in quarters.
import type { ActionName, Payload, Senses } from '$sim';
import type { KeyedMessage, MessageKey } from '../words';
import type { Desk } from './desk.svelte';
import type { Press, StepperHand } from './hand';

interface Share {
  readonly id: 'feed' | 'throttle';
  readonly action: ActionName;
  readonly field: string;
  shareNow(senses: Senses): number;
  /** Steps from nothing to all. */
  readonly steps: number;
  readonly label: MessageKey;
  readonly detail: KeyedMessage;
  readonly more: MessageKey;
  readonly less: MessageKey;
}

/** The next step above or below a share, or null at the end. */
export function nextShare(share_frac: number, way: 1 | -1, steps: number): number | null {
  // A share between two steps goes to the next one in that direction.
  const at = share_frac * steps;
  const next = way === 1 ? Math.floor(at + 1e-6) + 1 : Math.ceil(at - 1e-6) - 1;
  return next < 0 || next > steps ? null : next / steps;
}

export function shareStepper(desk: Desk, share: Share): StepperHand {
  const share_frac = share.shareNow(desk.session.senses);
  const step = (way: 1 | -1): Payload | null => {
    const next = nextShare(share.shareNow(desk.session.senses), way, share.steps);
    return next === null ? null : { [share.field]: next };
  };
  const to = (way: 1 | -1): Press => {
    const payload = step(way);
    const id = way === 1 ? `${share.id}More` : `${share.id}Less`;
    const label = way === 1 ? share.more : share.less;
    const limit = { key: way === 1 ? 'work.limit.most' : 'work.limit.least' };
    return {
      name: { key: label },
      whyNot: payload ? desk.whyNot(share.action, payload) : limit,
      press: () => (payload ? desk.step(share.id, share.action, payload) : desk.refuse(share.id, limit)),
      shortcut: id,
      hold: { id, hand: share.id, label, action: share.action, pace: 'steady', step: () => step(way) },
    };
  };
  return {
    form: 'stepper',
    id: share.id,
    drawing: share.id,
    label: share.label,
    detail: share.detail,
    level_frac: share_frac,
    marks: share.steps,
    less: to(-1),
    more: to(1),
  };
}
