// A hand for a share from nothing to all, a tenth at a time: feed and throttle.
import type { ActionName } from '$sim';
import type { MessageKey } from '../words';
import type { Desk } from './desk.svelte';
import type { Press, StepperHand } from './hand';

const TENTHS = 10;

interface Share {
  readonly id: 'feed' | 'throttle';
  readonly action: ActionName;
  readonly field: string;
  readonly share_frac: number;
  readonly label: MessageKey;
  readonly value: MessageKey;
  readonly more: MessageKey;
  readonly less: MessageKey;
}

/** The next tenth above or below a share, or null at the end. */
export function nextTenth(share_frac: number, way: 1 | -1): number | null {
  const tenths = Math.round(share_frac * TENTHS) + way;
  return tenths < 0 || tenths > TENTHS ? null : tenths / TENTHS;
}

export function shareStepper(desk: Desk, share: Share): StepperHand {
  const to = (way: 1 | -1): Press => {
    const next = nextTenth(share.share_frac, way);
    const payload = { [share.field]: next ?? share.share_frac };
    const limit = { key: way === 1 ? 'work.limit.most' : 'work.limit.least' };
    return {
      name: { key: way === 1 ? share.more : share.less },
      whyNot: next === null ? limit : desk.whyNot(share.action, payload),
      press: () => (next === null ? desk.refuse(share.id, limit) : void desk.act(share.id, share.action, payload)),
      shortcut: way === 1 ? `${share.id}More` : `${share.id}Less`,
    };
  };
  return {
    form: 'stepper',
    id: share.id,
    drawing: share.id,
    label: share.label,
    detail: { key: share.value, data: { share: share.share_frac } },
    level_frac: share.share_frac,
    value: { key: share.value, data: { share: share.share_frac } },
    less: to(-1),
    more: to(1),
  };
}
