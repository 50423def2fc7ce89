// A hand for a share from nothing to all, a step at a time: feed in tenths, throttle in quarters.
import type { ActionName } from '$sim';
import type { KeyedMessage, MessageKey } from '../words';
import type { Desk } from './desk.svelte';
import type { Press, StepperHand } from './hand';

interface Share {
  readonly id: 'feed' | 'throttle';
  readonly action: ActionName;
  readonly field: string;
  readonly share_frac: number;
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
  const to = (way: 1 | -1): Press => {
    const next = nextShare(share.share_frac, way, share.steps);
    const payload = { [share.field]: next ?? share.share_frac };
    const limit = { key: way === 1 ? 'work.limit.most' : 'work.limit.least' };
    return {
      name: { key: way === 1 ? share.more : share.less },
      whyNot: next === null ? limit : desk.whyNot(share.action, payload),
      press: () => (next === null ? desk.refuse(share.id, limit) : desk.step(share.id, share.action, payload)),
      shortcut: way === 1 ? `${share.id}More` : `${share.id}Less`,
    };
  };
  return {
    form: 'stepper',
    id: share.id,
    drawing: share.id,
    label: share.label,
    detail: share.detail,
    level_frac: share.share_frac,
    marks: share.steps,
    less: to(-1),
    more: to(1),
  };
}
